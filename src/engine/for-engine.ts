/**
 * Formulas as the engine needs them: what it reads wrongly (version 0.25.1) is written in another way that means the same.
 *
 * - Numbers with an exponent or with more than 15 digits are taken for texts, and so is `-0`.
 * - A minus in front of a text, a name or an array gives #NAME?; in front of brackets it is understood.
 * - A plain value, an operator and an array, `2*{1,2}`, cannot be read at all; `(2)*{1,2}` can.
 * - `200%%` cannot be read; `(200%)%` can.
 * - `A1#` and `@A1:A9` are written as files store them, with functions, and so is `T[@a]`.
 * - What two references share, `A1:B9 B2:C3`, is written as the reference that it is.
 */

import { bare, columnLetters, endsOf, functionName, type Token, tokens } from './formula-text.ts';

/** Spreadsheet programs keep so many digits of a typed number. */
const DIGITS = 15;

/** A typed number with the digits beyond the 15th made 0, which is what spreadsheet programs do. Zeros in front are no digits. */
function cutDigits(text: string): string {
  let digits = 0;
  return text.replace(/\d/g, (digit) => {
    if (digit !== '0' || digits > 0) digits += 1;
    return digits > DIGITS ? '0' : digit;
  });
}

function plainNumber(text: string, inArray: boolean): string {
  if (!/e/i.test(text) && text.replace(/\D/g, '').length <= DIGITS) return text;
  const [typed = '', power = '0'] = text.split(/e/i);
  const value = Number(`${cutDigits(typed)}e${power}`);
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

/** Index of the token that closes the bracket opened at `from`. */
function closing(all: readonly Token[], from: number): number {
  let depth = 0;
  for (let i = from; i < all.length; i += 1) {
    if (all[i]!.text === '(') depth += 1;
    if (all[i]!.text === ')') depth -= 1;
    if (depth === 0) return i;
  }
  return all.length - 1;
}

const nextSolid = (all: readonly Token[], from: number): number =>
  all.findIndex((token, i) => i >= from && token.kind !== 'space');

/** Index of the last token of the value that starts at `from`: a reference, a name, a call, or brackets. */
function endOfValue(all: readonly Token[], from: number): number {
  const token = all[from]!;
  let end = from;
  if (token.kind === 'function') end = closing(all, from + 1);
  else if (token.text === '(') end = closing(all, from);
  while (all[end + 1]?.text === '#') end += 1;
  return all[end + 1]?.text === ':' && all[end + 2] !== undefined ? endOfValue(all, end + 2) : end;
}

const textOf = (all: readonly Token[]): string => all.map(({ text }) => text).join('');

/** `A1#` as ANCHORARRAY(A1). */
function withSpills(formula: string): string {
  const all = tokens(formula);
  const isAnchor = (i: number): boolean =>
    (all[i]?.kind === 'reference' || all[i]?.kind === 'name') &&
    all[i + 1]?.kind === 'operator' &&
    all[i + 1]?.text === '#';
  return all
    .map(({ text }, i) => {
      if (isAnchor(i)) return `ANCHORARRAY(${text})`;
      return isAnchor(i - 1) ? '' : text;
    })
    .join('');
}

/** `@A1:A9` as SINGLE(A1:A9). */
function withSingles(formula: string): string {
  const all = tokens(formula);
  const at = all.findIndex(({ kind, text }) => kind === 'operator' && text === '@');
  if (at < 0) return formula;
  const from = nextSolid(all, at + 1);
  if (from < 0) return formula;
  const end = endOfValue(all, from);
  const value = textOf(all.slice(from, end + 1));
  return `${textOf(all.slice(0, at))}SINGLE(${withSingles(value)})${withSingles(textOf(all.slice(end + 1)))}`;
}

/** `T[@a]` as `T[[#This Row],[a]]`, and function names without what files put in front. */
function asStored({ kind, text }: Token): string {
  if (kind === 'function') return /^_xl/i.test(text) ? functionName(text) : text;
  if (kind !== 'structured') return text;
  const [, table, inside] = /^([^[]*)\[\s*@(.*)\]$/su.exec(text) ?? [];
  if (table === undefined || inside === undefined) return text;
  const columns = inside.trim();
  if (columns === '') return `${table}[#This Row]`;
  return `${table}[[#This Row],${columns.startsWith('[') ? columns : `[${columns}]`}]`;
}

/** `20%%` as `(20%)%`. */
function withPercents(formula: string): string {
  const all = tokens(formula).filter(({ kind }) => kind !== 'space');
  const at = all.findIndex(({ text }, i) => text === '%' && all[i - 1]?.text === '%');
  if (at < 2) return formula;
  let start = at - 2;
  if (all[start]!.text === ')') {
    while (start > 0 && closing(all, start) !== at - 2) start -= 1;
    if (all[start - 1]?.kind === 'function') start -= 1;
  }
  return withPercents(`${textOf(all.slice(0, start))}(${textOf(all.slice(start, at))})${textOf(all.slice(at))}`);
}

/** The reference that two plain ones have in common, or #NULL!. Nothing where one of them is no plain reference of the same sheet. */
function shared(left: string, right: string): string | undefined {
  const [sheet, other] = [left, right].map((text) => text.slice(0, text.lastIndexOf('!') + 1));
  if (other !== '' && other?.toLowerCase() !== sheet?.toLowerCase()) return undefined;
  const [a, b] = [endsOf(left), endsOf(right)];
  const first = (x: number | undefined, y: number | undefined): number => Math.max(x ?? 1, y ?? 1);
  const last = (x: number | undefined, y: number | undefined): number | undefined =>
    x === undefined || y === undefined ? (x ?? y) : Math.min(x, y);
  const [top, bottom] = [first(a.firstRow, b.firstRow), last(a.lastRow, b.lastRow)];
  const [start, end] = [first(a.firstColumn, b.firstColumn), last(a.lastColumn, b.lastColumn)];
  if ((bottom !== undefined && bottom < top) || (end !== undefined && end < start)) return '#NULL!';
  if (bottom === undefined || end === undefined) return undefined;
  const cell = (row: number, column: number): string => `$${columnLetters(column)}$${row}`;
  return top === bottom && start === end
    ? `${sheet}${cell(top, start)}`
    : `${sheet}${cell(top, start)}:${cell(bottom, end)}`;
}

/** Whether a formula says what two references share. */
export const hasShared = (formula: string): boolean => /\s/.test(formula) && withShared(formula) !== formula;

/** `A1:B9 B2:C3` as `$B$2:$B$3`. */
function withShared(formula: string): string {
  const all = tokens(formula);
  const at = all.findIndex(
    ({ kind }, i) => kind === 'space' && all[i - 1]?.kind === 'reference' && all[i + 1]?.kind === 'reference',
  );
  if (at < 0) return formula;
  const common = shared(all[at - 1]!.text, all[at + 1]!.text);
  const rest = textOf(all.slice(at + 2));
  if (common === undefined) return `${textOf(all.slice(0, at + 2))}${withShared(rest)}`;
  return withShared(`${textOf(all.slice(0, at - 1))}${common}${rest}`);
}

/** The same formula in a form that the engine can read. */
function readable(formula: string): string {
  let text = formula;
  if (/[@]|_xl/i.test(text)) text = tokens(text).map(asStored).join('');
  if (text.includes('#')) text = withSpills(text);
  if (text.includes('@')) text = withSingles(text);
  if (/%\s*%/.test(text)) text = withPercents(text);
  return /\s/.test(text) ? withShared(text) : text;
}

/** A formula, without `=`, written so that the engine reads it rightly. Answers what it was given where there is nothing to change. */
export function forEngine(formula: string): string {
  const all = tokens(readable(bare(formula)));
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
    if (kind === 'number' && minus && Number(text) === 0) piece = `(${piece})`;
    if (minus && text === '{') {
      minusEnd = arrayEnd;
      piece = `(${piece}`;
    } else if (bracketed.has(token) || (minus && (kind === 'text' || kind === 'name'))) piece = `(${piece})`;
    if (i === minusEnd) piece += ')';
    written += piece;
  }
  return written;
}
