/**
 * Reads the calls of our functions out of a cell's formula, in the form in which files keep formulas.
 *
 * Only what "this cell" can show is told apart: calls of ours, plain values, array constants and references. Everything else stays text.
 */
import { type Cell, CellError, type ErrorCode } from '../functions/calling/cell.ts';

/** A piece of a formula: an argument, or a whole call. `text` is how it stands in the formula. */
export type Part =
  | { readonly kind: 'nothing'; readonly text: '' }
  | { readonly kind: 'value'; readonly text: string; readonly value: Cell }
  | { readonly kind: 'rows'; readonly text: string; readonly rows: readonly (readonly Cell[])[] }
  | { readonly kind: 'reference'; readonly text: string }
  | CallPart
  | { readonly kind: 'other'; readonly text: string };

/** A call of one of our functions. */
export interface CallPart {
  readonly kind: 'call';
  readonly text: string;
  /** The function's name without the namespace, in capitals. */
  readonly id: string;
  readonly arguments: readonly Part[];
}

/** Where the piece that opens at `from` ends: just after its closing mark, or at the end of the text. */
const afterQuoted = (text: string, from: number): number => {
  const mark = text[from]!;
  for (let at = from + 1; at < text.length; at++) {
    if (text[at] !== mark) continue;
    if (text[at + 1] === mark) at += 1;
    else return at + 1;
  }
  return text.length;
};

/** Column names of tables stand in square brackets, may hold such brackets, and set an apostrophe before odd signs. */
const afterBrackets = (text: string, from: number): number => {
  let depth = 0;
  for (let at = from; at < text.length; at++) {
    if (text[at] === "'") at += 1;
    else if (text[at] === '[') depth += 1;
    else if (text[at] === ']') {
      depth -= 1;
      if (depth === 0) return at + 1;
    }
  }
  return text.length;
};

/** Calls `each` with every place of the text that is not inside quotation marks or square brackets. It may answer where to go on. */
const walk = (text: string, each: (sign: string, at: number) => number | undefined): void => {
  for (let at = 0; at < text.length; ) {
    const sign = text[at]!;
    if (sign === '"' || sign === "'") at = afterQuoted(text, at);
    else if (sign === '[') at = afterBrackets(text, at);
    else at = each(sign, at) ?? at + 1;
  }
};

/** Splits at a sign that stands outside of all brackets. */
const split = (text: string, separator: string): string[] => {
  const parts: string[] = [];
  let depth = 0;
  let start = 0;
  walk(text, (sign, at) => {
    if (sign === '(' || sign === '{') depth += 1;
    else if (sign === ')' || sign === '}') depth -= 1;
    else if (sign === separator && depth === 0) {
      parts.push(text.slice(start, at));
      start = at + 1;
    }
    return undefined;
  });
  return [...parts, text.slice(start)];
};

/** The closing bracket that belongs to the round bracket at `from`, or undefined. */
const closing = (text: string, from: number): number | undefined => {
  let depth = 0;
  let found: number | undefined;
  walk(text.slice(from), (sign, at) => {
    if (sign === '(') depth += 1;
    else if (sign === ')') {
      depth -= 1;
      if (depth === 0) {
        found ??= from + at;
        return text.length;
      }
    }
    return undefined;
  });
  return found;
};

/** The name of one of our functions with its bracket: as people type it, or as files keep it. */
const OURS = /(?:_xldudf_JACKET_|JACKET\.)([A-Z][A-Z0-9_.]*)\s*\(/iy;

/** Calls of ours that stand in no other call of ours, from left to right. */
export const callsIn = (formula: string): CallPart[] => {
  const calls: CallPart[] = [];
  walk(formula, (_, at) => {
    if (at > 0 && /[\p{L}\p{N}_.]/u.test(formula[at - 1]!)) return undefined;
    OURS.lastIndex = at;
    const match = OURS.exec(formula);
    if (!match) return undefined;
    const open = at + match[0].length - 1;
    const end = closing(formula, open);
    if (end === undefined) return undefined;
    const inside = formula.slice(open + 1, end);
    calls.push({
      kind: 'call',
      text: formula.slice(at, end + 1),
      id: match[1]!.toUpperCase(),
      arguments: inside.trim() === '' ? [] : split(inside, ',').map(part),
    });
    return end + 1;
  });
  return calls;
};

const NUMBER = /^[-+]?(?:\d+\.?\d*|\.\d+)(?:E[-+]?\d+)?%?$/i;
const TEXT = /^"(?:[^"]|"")*"$/;
const ERROR = /^#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!)$/i;
const SHEET = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}\p{N}_.]+)!)?`;
const CELL = String.raw`\$?[A-Z]{1,3}\$?\d+`;
const AREA = String.raw`(?:${CELL}(?::${CELL}|#)?|\$?[A-Z]{1,3}:\$?[A-Z]{1,3}|\$?\d+:\$?\d+)`;
const REFERENCE = new RegExp(`^${SHEET}(?:${AREA}|[\\p{L}_\\\\][\\p{L}\\p{N}_.\\\\?]*)$`, 'iu');

/** A number, text, TRUE, FALSE or an error as it is typed, or undefined. */
const plainValue = (text: string): Cell | undefined => {
  if (NUMBER.test(text)) return text.endsWith('%') ? Number(text.slice(0, -1)) / 100 : Number(text);
  if (TEXT.test(text)) return text.slice(1, -1).replaceAll('""', '"');
  if (/^true$/i.test(text)) return true;
  if (/^false$/i.test(text)) return false;
  return ERROR.test(text) ? new CellError(text.toUpperCase() as ErrorCode, '') : undefined;
};

const constantRows = (text: string): Cell[][] | undefined => {
  const rows = split(text.slice(1, -1), ';').map((row) => split(row, ',').map((cell) => plainValue(cell.trim())));
  return rows.every((row) => row.every((cell) => cell !== undefined)) ? (rows as Cell[][]) : undefined;
};

/** One argument. */
export const part = (written: string): Part => {
  const text = written.trim();
  if (text === '') return { kind: 'nothing', text: '' };
  const value = plainValue(text);
  if (value !== undefined) return { kind: 'value', text, value };
  if (text.startsWith('{') && text.endsWith('}')) {
    const rows = constantRows(text);
    return rows ? { kind: 'rows', text, rows } : { kind: 'other', text };
  }
  if (REFERENCE.test(text)) return { kind: 'reference', text };
  const [call] = callsIn(text);
  return call?.text === text ? call : { kind: 'other', text };
};

/** The parts of a formula that are calls of ours, and whether such a call is the whole formula. */
export const readFormula = (formula: string): { readonly calls: readonly CallPart[]; readonly whole: boolean } => {
  const body = formula.trim().replace(/^=/, '').trim();
  const calls = callsIn(body);
  return { calls, whole: calls.length === 1 && calls[0]!.text === body };
};
