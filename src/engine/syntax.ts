/** Whether a formula can be read at all, decided before the engine sees it: the engine answers some broken formulas with a value. */

import { bare, type Token, tokens } from './formula-text.ts';

type Bracket = 'call' | 'group' | 'array';

const place = (token: Token): string => `at «${token.text}», character ${token.at + 1}`;

/** A token that can stand beside a reference with only a space between, which means what both have in common. */
const canMeet = (token: Token | undefined): boolean =>
  token !== undefined &&
  (['reference', 'name', 'structured', 'function'].includes(token.kind) || token.text === '(' || token.text === ')');

/**
 * Why a formula cannot be read, or nothing if it can.
 *
 * One walk over the pieces. At each a value or an operator is expected, and the open brackets say what else may stand there.
 */
export function unreadable(formula: string): string | undefined {
  const body = bare(formula);
  if (body === '') return 'the formula is empty';
  const brackets: Bracket[] = [];
  const widths: number[] = [];
  let width = 0;
  let valueNext = true;
  let before: Token | undefined;
  for (const token of tokens(body)) {
    const { kind, text } = token;
    const inside = brackets.at(-1);
    if (kind === 'space') continue;
    if (kind === 'other') {
      if (text === '"') return `a text has no closing quotation mark, ${place(token)}`;
      return `this cannot be read ${place(token)}`;
    }
    if (text === '}' && inside !== 'array') return `a bracket closes that was not opened, ${place(token)}`;
    if (text === ')' && inside !== 'call' && inside !== 'group')
      return `a bracket closes that was not opened, ${place(token)}`;
    if (inside === 'array') {
      const fault = inArray(token, valueNext);
      if (fault !== undefined) return fault;
      if (kind === 'separator') {
        width += 1;
        if (text === ';') {
          widths.push(width);
          width = 0;
        }
        valueNext = true;
      } else if (text === '}') {
        widths.push(width + 1);
        if (new Set(widths).size > 1) return `the rows of an array are not of one length, ${place(token)}`;
        brackets.pop();
        valueNext = false;
      } else if (kind !== 'operator') valueNext = false;
    } else if (valueNext) {
      if (kind === 'separator' || text === ')') {
        if (inside !== 'call') return `a value is missing ${place(token)}`;
        if (text === ';') return `put commas between arguments, not semicolons, ${place(token)}`;
        if (before?.kind === 'operator') return `a value is missing ${place(token)}`;
        if (text === ')') {
          brackets.pop();
          valueNext = false;
        }
      } else if (text === '(') brackets.push(before?.kind === 'function' ? 'call' : 'group');
      else if (text === '{') {
        brackets.push('array');
        widths.length = 0;
        width = 0;
      } else if (kind === 'operator') {
        if (!['+', '-', '@'].includes(text)) return `a value is missing ${place(token)}`;
      } else if (kind !== 'function') valueNext = false;
    } else if (kind === 'operator') {
      if (text !== '%' && text !== '#') valueNext = true;
    } else if (text === ')') brackets.pop();
    else if (text === '(' && before?.text === ')') {
      brackets.push('call');
      valueNext = true;
    } else if (kind === 'separator') {
      if (text === ';') return `put commas between arguments, not semicolons, ${place(token)}`;
      if (inside === undefined) return `a comma stands outside of brackets, ${place(token)}`;
      valueNext = true;
    } else if (canMeet(before) && canMeet(token)) {
      if (text === '(') brackets.push('group');
      valueNext = kind === 'function' || text === '(';
    } else return `an operator or a comma is missing ${place(token)}`;
    before = token;
  }
  if (brackets.length > 0) return 'a bracket is not closed';
  if (valueNext) return 'the end of the formula is missing';
  return undefined;
}

function inArray(token: Token, valueNext: boolean): string | undefined {
  const { kind, text } = token;
  if (kind === 'separator' || text === '}')
    return valueNext ? `an array cannot leave a value out, ${place(token)}` : undefined;
  if (!valueNext) return `a comma or a semicolon is missing ${place(token)}`;
  if (kind === 'operator') return text === '-' || text === '+' ? undefined : `a value is missing ${place(token)}`;
  if (['number', 'text', 'error'].includes(kind)) return undefined;
  if (kind === 'name' && /^(true|false)$/i.test(text)) return undefined;
  return `an array holds numbers, texts, TRUE, FALSE and error values only, ${place(token)}`;
}
