import { columnName, parseAddress } from './address.ts';
import { type Token, tokenise } from './formula-tokens.ts';
import { COLUMNS, ROWS } from './limits.ts';

/** One end of a reference: `B7`, `$B` of whole columns, `$7` of whole rows. */
interface End {
  readonly column?: number;
  readonly row?: number;
  readonly columnFixed: boolean;
  readonly rowFixed: boolean;
}

type Piece = string | readonly [End] | readonly [End, End];

const CELL = /^(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})$/;
const COLUMN = /^(\$?)([A-Za-z]{1,3})$/;
const ROW = /^(\$?)([1-9]\d{0,6})$/;

function cellEnd(text: string): End | undefined {
  const found = CELL.exec(text);
  const place = found ? parseAddress(found[2]!.toUpperCase() + found[4]!) : undefined;
  return place && { ...place, columnFixed: found![1] !== '', rowFixed: found![3] !== '' };
}

function columnEnd(text: string): End | undefined {
  const found = COLUMN.exec(text);
  const column = found ? parseAddress(`${found[2]!.toUpperCase()}1`)?.column : undefined;
  return column === undefined ? undefined : { column, columnFixed: found![1] !== '', rowFixed: true };
}

function rowEnd(text: string): End | undefined {
  const found = ROW.exec(text);
  const row = found ? Number(found[2]) : 0;
  return found && row <= ROWS ? { row, columnFixed: true, rowFixed: found[1] !== '' } : undefined;
}

/** The reference that starts at token `i`, with the number of tokens it takes. */
function referenceAt(
  tokens: readonly Token[],
  i: number,
): { ends: readonly [End] | readonly [End, End]; count: number } | undefined {
  const first = tokens[i]!;
  if (first.kind !== 'word') return undefined;
  const second = tokens[i + 1]?.text === ':' && tokens[i + 2]?.kind === 'word' ? tokens[i + 2]!.text : undefined;
  const after = tokens[i + (second === undefined ? 1 : 3)];
  const isName = (next: Token | undefined): boolean =>
    next?.text === '(' || next?.text === '!' || (next?.kind === 'bracket' && next.text.startsWith('['));
  if (second !== undefined && !isName(after)) {
    for (const read of [cellEnd, columnEnd, rowEnd]) {
      const from = read(first.text);
      const to = read(second);
      if (from && to) return { ends: [from, to], count: 3 };
    }
  }
  // The ends of `A1:name(…)` are read one by one; of `First:Last!A1` neither is a reference.
  if (second !== undefined && after?.text === '!') return undefined;
  const cell = isName(tokens[i + 1]) ? undefined : cellEnd(first.text);
  return cell && { ends: [cell], count: 1 };
}

function piecesOf(formula: string): Piece[] {
  const tokens = tokenise(formula);
  const pieces: Piece[] = [];
  for (let i = 0; i < tokens.length; ) {
    const reference = referenceAt(tokens, i);
    if (reference) pieces.push(reference.ends);
    // The second sheet of `First:Last!A1` is followed by `!` and so is never taken for a reference.
    else pieces.push(tokens[i]!.text);
    i += reference?.count ?? 1;
  }
  return pieces;
}

/** The shifted end, or undefined where it leaves the sheet. */
function shifted(end: End, rows: number, columns: number): string | undefined {
  let text = '';
  if (end.column !== undefined) {
    const column = end.column + (end.columnFixed ? 0 : columns);
    if (!(column >= 1 && column <= COLUMNS)) return undefined;
    text += (end.columnFixed ? '$' : '') + columnName(column);
  }
  if (end.row !== undefined) {
    const row = end.row + (end.rowFixed ? 0 : rows);
    if (!(row >= 1 && row <= ROWS)) return undefined;
    text += (end.rowFixed ? '$' : '') + row;
  }
  return text;
}

/** Reads a formula once; the answer shifts it as often as needed. For shared formulas with many members. */
export function translator(formula: string): (rows: number, columns: number) => string {
  const pieces = piecesOf(formula);
  return (rows, columns) => {
    if (rows === 0 && columns === 0) return formula;
    let text = '';
    for (const piece of pieces) {
      if (typeof piece === 'string') text += piece;
      else {
        const ends = piece.map((end) => shifted(end, rows, columns));
        text += ends.includes(undefined) ? '#REF!' : ends.join(':');
      }
    }
    return text;
  };
}

/**
 * Shifts the relative references of a formula by rows and columns, as filling down and across does.
 *
 * Texts, quoted sheet names, columns of tables, names and functions such as `LOG10(` stay. A reference that leaves the sheet becomes `#REF!`.
 *
 * @example translateFormula('A1*$B$1', 1, 0) // 'A2*$B$1'
 */
export const translateFormula = (formula: string, rows: number, columns: number): string =>
  translator(formula)(rows, columns);

/** True for the address of a cell, in any letter case, with or without `$`. */
export const isCellText = (text: string): boolean => cellEnd(text) !== undefined;
