/** Fields of a file as cells of a table, and back. */
import {
  type Cell,
  CellError,
  ERROR_CODES,
  type ErrorCode,
  isCellError,
  type OutCell,
} from '../functions/calling/cell.ts';
import { csvText, isNumberText } from './csv.ts';

/** Error values that a spreadsheet writes into a file. */
const ERRORS: ReadonlySet<string> = new Set(ERROR_CODES);

/** What a spreadsheet would have in the cell: a number, TRUE or FALSE, an error, text, or nothing. */
export const cellOf = (field: string): Cell => {
  const text = field.trim();
  if (text === '') return null;
  if (isNumberText(text)) return Number(text);
  const upper = text.toUpperCase();
  if (upper === 'TRUE' || upper === 'FALSE') return upper === 'TRUE';
  return ERRORS.has(upper) ? new CellError(upper as ErrorCode, '') : text;
};

/** A cell as a field. */
export const fieldOf = (cell: OutCell): string => {
  if (typeof cell === 'number') return String(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return isCellError(cell) ? cell.code : csvText(cell);
};
