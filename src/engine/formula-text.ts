/**
 * Formulas as text: their pieces, the same formula as seen from another row, and how far their references reach.
 *
 * The engine has its own reader, but it answers a formula it cannot read in several ways and tells nothing about the pieces of one it can.
 */

export type TokenKind =
  | 'space'
  | 'text'
  | 'error'
  | 'reference'
  | 'function'
  | 'structured'
  | 'name'
  | 'number'
  | 'operator'
  | 'separator'
  | 'bracket'
  | 'other';

export interface Token {
  readonly kind: TokenKind;
  readonly text: string;
  /** Where the token starts in the formula, from 0. */
  readonly at: number;
}

/** Last row and column a worksheet can have. */
export const LAST_ROW = 1_048_576;
export const LAST_COLUMN = 16_384;

const WORD = String.raw`[\p{L}_\\][\p{L}\p{N}_.\\?]*`;
const SHEET = String.raw`(?:(?:'(?:[^']|'')+'|[\p{L}\p{N}_.[\]\\]+(?::[\p{L}\p{N}_.]+)?)!)?`;
const CELL = String.raw`\$?[A-Z]{1,3}\$?[1-9]\d{0,6}`;
const COLUMNS = String.raw`\$?[A-Z]{1,3}:\$?[A-Z]{1,3}`;
const ROWS = String.raw`\$?[1-9]\d{0,6}:\$?[1-9]\d{0,6}`;
const NOT_IN_A_WORD = String.raw`(?![\p{L}\p{N}_.([!])`;
const COLUMN_NAME = String.raw`\[(?:[^[\]']|'.|\[(?:[^[\]']|'.)*\])*\]`;

const sticky = (source: string): RegExp => new RegExp(source, 'iuy');

/** Tried in this order; the last one takes any character. */
const RULES: readonly (readonly [TokenKind, RegExp])[] = [
  ['space', sticky(String.raw`\s+`)],
  ['text', sticky('"(?:[^"]|"")*"')],
  ['error', sticky(String.raw`#(?:N/A|NULL!|DIV/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!)`)],
  ['reference', sticky(`${SHEET}(?:${CELL}(?::${CELL})?|${COLUMNS}|${ROWS})${NOT_IN_A_WORD}`)],
  ['function', sticky(String.raw`${SHEET}${WORD}(?=\()`)],
  ['structured', sticky(`(?:${WORD})?${COLUMN_NAME}`)],
  ['name', sticky(`${SHEET}${WORD}`)],
  ['number', sticky(String.raw`(?:\d+\.?\d*|\.\d+)(?:E[-+]?\d+)?`)],
  ['operator', sticky('<=|>=|<>|[-+*/^&=<>%:@#]')],
  ['separator', sticky('[,;]')],
  ['bracket', sticky('[(){}]')],
  ['other', sticky('[^]')],
];

/** A formula without its leading `=` and the space around it. */
export const bare = (formula: string): string => formula.trim().replace(/^=/, '').trim();

/** The pieces of a formula, in order; together they are the whole text. */
export function tokens(formula: string): Token[] {
  const found: Token[] = [];
  for (let at = 0; at < formula.length; ) {
    for (const [kind, rule] of RULES) {
      rule.lastIndex = at;
      const text = rule.exec(formula)?.[0];
      if (text === undefined) continue;
      found.push({ kind, text, at });
      at += text.length;
      break;
    }
  }
  return found;
}

/** Number of a column, `A` is 1. */
export function columnNumber(letters: string): number {
  let n = 0;
  for (const letter of letters.toUpperCase()) n = n * 26 + letter.charCodeAt(0) - 64;
  return n;
}

/** Letters of a column, 1 is `A`. */
export function columnLetters(column: number): string {
  let letters = '';
  for (let n = column; n > 0; n = Math.floor((n - 1) / 26))
    letters = String.fromCharCode(65 + ((n - 1) % 26)) + letters;
  return letters;
}

const afterSheet = (reference: string): string => reference.slice(reference.lastIndexOf('!') + 1);

/** Each end of a reference: `$B$3:C4` has two, `A:A` two without a row. */
interface ReferenceEnd {
  readonly column: number | undefined;
  readonly columnFixed: boolean;
  readonly row: number | undefined;
  readonly rowFixed: boolean;
}

function ends(reference: string): ReferenceEnd[] {
  return afterSheet(reference)
    .split(':')
    .map((end) => {
      const [, columnSign, letters, rowSign, digits] = /^(\$?)([A-Z]*)(\$?)(\d*)$/i.exec(end) ?? [];
      return {
        column: letters ? columnNumber(letters) : undefined,
        columnFixed: columnSign === '$' && letters !== '',
        row: digits ? Number(digits) : undefined,
        rowFixed: rowSign === '$' || (columnSign === '$' && letters === ''),
      };
    });
}

/**
 * A formula with its references written as distances from the cell that holds it.
 *
 * Two cells whose formulas are equal in this form hold one formula that was filled from one to the other.
 */
export function seenFrom(formula: string, row: number, column: number): string {
  const distance = (value: number | undefined, fixed: boolean, from: number): string =>
    value === undefined ? '' : fixed ? `${value}` : `[${value - from}]`;
  return tokens(formula)
    .map(({ kind, text }) => {
      if (kind !== 'reference') return text;
      const sheet = text.slice(0, text.lastIndexOf('!') + 1);
      const parts = ends(text).map(
        (end) => `R${distance(end.row, end.rowFixed, row)}C${distance(end.column, end.columnFixed, column)}`,
      );
      return sheet + parts.join(':');
    })
    .join('');
}

/** First and last row and column of a reference; those of whole columns or rows are undefined. */
export function endsOf(reference: string): {
  firstRow: number | undefined;
  lastRow: number | undefined;
  firstColumn: number | undefined;
  lastColumn: number | undefined;
} {
  const [first, last = first] = ends(reference);
  const [firstRow, lastRow] = inOrder(first?.row, last?.row);
  const [firstColumn, lastColumn] = inOrder(first?.column, last?.column);
  return { firstRow, lastRow, firstColumn, lastColumn };
}

const inOrder = (a: number | undefined, b: number | undefined): readonly [number | undefined, number | undefined] =>
  a !== undefined && b !== undefined && a > b ? [b, a] : [a, b];

/** How many rows and columns a reference spans; undefined where it has whole columns or whole rows. */
export function spanOf(reference: string): { rows: number | undefined; columns: number | undefined } {
  const [first, last = first] = ends(reference);
  const span = (from: number | undefined, to: number | undefined): number | undefined =>
    from === undefined || to === undefined ? undefined : Math.abs(to - from) + 1;
  return { rows: span(first?.row, last?.row), columns: span(first?.column, last?.column) };
}

/** How far the references of a formula reach: last row and last column, 0 where there is none. */
export function reach(formula: string): { row: number; column: number } {
  let row = 0;
  let column = 0;
  for (const { kind, text } of tokens(formula)) {
    if (kind !== 'reference') continue;
    for (const end of ends(text)) {
      row = Math.max(row, end.row ?? 0);
      column = Math.max(column, end.column ?? 0);
    }
  }
  return { row, column };
}

/** The sheet that a reference, name or function has in front, without its quotation marks. */
export function sheetIn(text: string): string | undefined {
  const end = text.lastIndexOf('!');
  if (end < 0) return undefined;
  const sheet = text.slice(0, end);
  return sheet.startsWith("'") ? sheet.slice(1, -1).replaceAll("''", "'") : sheet;
}

/** Where a file holds a newer function, its name has one of these in front. */
const FILE_PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/** A function's name as the engine knows it: capitals, without what files put in front. */
export const functionName = (token: string): string => token.replace(/^.*!/, '').replace(FILE_PREFIX, '').toUpperCase();
