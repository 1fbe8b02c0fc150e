/**
 * Formulas as the engine needs them: three things that it reads wrongly (version 0.25.1) are written in another way that means the same.
 *
 * - Numbers with an exponent or with more than 15 digits are taken for texts.
 * - A minus in front of a text, a name or an array gives #NAME?; in front of brackets it is understood.
 * - A plain value, an operator and an array, `2*{1,2}`, cannot be read at all; `(2)*{1,2}` can.
 */

import { bare, type Token, tokens } from './formula-text.ts';

/** Spreadsheet programs keep so many digits of a typed number. */
const DIGITS = 15;

function plainNumber(text: string, inArray: boolean): string {
  if (!/e/i.test(text) && text.replace(/\D/g, '').length <= DIGITS) return text;
  const value = Number(Number(text).toPrecision(DIGITS));
  const plain = String(value);
  if (!plain.includes('e') || inArray) return plain;
  const [mantissa, exponent] = plain.split('e');
  return `(${mantissa}*10^${Number(exponent)})`;
}

const isPrefix = (before: Token | undefined): boolean =>
  before === undefined ||
  before.kind === 'separator' ||
  before.text === '(' ||
  (before.kind === 'operator' && before.text !== '%' && before.text !== '#');

const PLAIN_VALUES: ReadonlySet<Token['kind']> = new Set([
  'number',
  'text',
  'error',
  'reference',
  'name',
  'structured',
]);

/** Operators that belong to the reference or number in front of them. */
const SUFFIXES: ReadonlySet<string> = new Set([':', '#', '%']);

/** Plain values that stand left of an operator, in a formula where an array stands right of one. */
function leftOfArrays(solid: readonly Token[]): Set<Token> {
  const isRightOfOperator = (token: Token, i: number): boolean => {
    let before = i - 1;
    while (solid[before]?.text === '(') before -= 1;
    return token.text === '{' && solid[before]?.kind === 'operator';
  };
  if (!solid.some(isRightOfOperator)) return new Set();
  return new Set(
    solid.filter(({ kind }, i) => {
      const next = solid[i + 1];
      return (
        PLAIN_VALUES.has(kind) && next?.kind === 'operator' && !SUFFIXES.has(next.text) && solid[i - 1]?.text !== ':'
      );
    }),
  );
}

/** Index of the token that closes the array opened at `from`. */
function endOfArray(all: readonly Token[], from: number): number {
  const end = all.findIndex((token, i) => i > from && token.text === '}');
  return end < 0 ? all.length - 1 : end;
}

/** A formula, without `=`, written so that the engine reads it rightly. Answers what it was given where there is nothing to change. */
export function forEngine(formula: string): string {
  const all = tokens(bare(formula));
  const solid = all.filter((token) => token.kind !== 'space');
  const before = new Map(solid.map((token, i) => [token, solid[i - 1]]));
  const bracketed = leftOfArrays(solid);
  let arrayEnd = -1;
  let minusEnd = -1;
  let written = '';
  for (const [i, token] of all.entries()) {
    const { kind, text } = token;
    const previous = before.get(token);
    const minus = previous?.text === '-' && isPrefix(before.get(previous)) && i > arrayEnd;
    if (text === '{') arrayEnd = endOfArray(all, i);
    let piece = text;
    if (kind === 'number') piece = plainNumber(text, i < arrayEnd);
    if (minus && text === '{') {
      minusEnd = arrayEnd;
      piece = `(${piece}`;
    } else if (bracketed.has(token) || (minus && (kind === 'text' || kind === 'name'))) piece = `(${piece})`;
    if (i === minusEnd) piece += ')';
    written += piece;
  }
  return written;
}
