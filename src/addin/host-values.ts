/**
 * Between the values of the spreadsheet host and our cells, both ways.
 *
 * The host hands over numbers, text, TRUE and FALSE, null for what is blank or left out, error objects with a code, and objects with a type and a
 * plain value for its richer kinds. It takes back rows of numbers, text, TRUE, FALSE and error objects; null, NaN and infinity would be shown as 0.
 */
import {
  type Answer,
  type Argument,
  type Cell,
  CellError,
  ERROR_CODES,
  type ErrorCode,
} from '../functions/calling/cell.ts';

const CODES: ReadonlySet<string> = new Set(ERROR_CODES);

const CARD = 'a cell holds a data card; point at a cell with a plain number or text';
const UNKNOWN = 'a cell holds something that is neither a number nor text; type a number or text';

const error = (code: unknown): CellError =>
  typeof code === 'string' && CODES.has(code)
    ? new CellError(code as ErrorCode, '')
    : new CellError('#VALUE!', `a cell holds the error ${String(code)}; mend that cell first`);

interface HostObject {
  readonly type?: unknown;
  readonly code?: unknown;
  readonly basicType?: unknown;
  readonly basicValue?: unknown;
}

const fromObject = (value: HostObject): Cell => {
  if (value.code !== undefined && value.code !== null) return error(value.code);
  if (value.type === 'Empty') return null;
  const plain = value.basicValue;
  if (value.type === 'Error') return error(plain);
  if (value.basicType === 'Error' || typeof plain === 'object') return new CellError('#VALUE!', CARD);
  return plain === undefined ? new CellError('#VALUE!', UNKNOWN) : toCell(plain);
};

/** One value of the host as a cell. */
export const toCell = (value: unknown): Cell => {
  switch (typeof value) {
    case 'number':
    case 'string':
    case 'boolean':
      return value;
    case 'undefined':
      return null;
    case 'object':
      if (value === null) return null;
      return Array.isArray(value) ? new CellError('#VALUE!', UNKNOWN) : fromObject(value);
    default:
      return new CellError('#VALUE!', UNKNOWN);
  }
};

/** One argument of the host: a single value, or rows of values that are made equally long. */
export const toArgument = (value: unknown): Argument => {
  if (!Array.isArray(value)) return toCell(value);
  const rows: unknown[][] = value.some(Array.isArray)
    ? value.map((row) => (Array.isArray(row) ? row : [row]))
    : [value as unknown[]];
  let width = 0;
  for (const row of rows) width = Math.max(width, row.length);
  return rows.map((row) => {
    const cells = row.map(toCell);
    while (cells.length < width) cells.push(null);
    return cells;
  });
};

/** Makes an error object of the host. */
export type MakeError = (code: CustomFunctions.ErrorCode, message?: string) => unknown;

/** Codes that the host takes as a result. It sends the others only in. */
const OUT: ReadonlySet<ErrorCode> = new Set<ErrorCode>(['#VALUE!', '#N/A', '#NUM!', '#DIV/0!', '#NULL!']);

/** Codes with which the host shows a reason. */
const TELLS: ReadonlySet<ErrorCode> = new Set<ErrorCode>(['#VALUE!', '#N/A']);

/**
 * An error for the host. What it does not take as a result becomes #VALUE!, with the code in the reason.
 */
export const toHostError = ({ code, reason }: CellError, make: MakeError): unknown => {
  if (!OUT.has(code)) {
    const told = reason.includes(code) ? reason : reason ? `${code}: ${reason}` : `the input holds the error ${code}`;
    return make('#VALUE!' as CustomFunctions.ErrorCode, told);
  }
  const hostCode = code as CustomFunctions.ErrorCode;
  return TELLS.has(code) && reason ? make(hostCode, reason) : make(hostCode);
};

const TOO_LARGE = new CellError('#NUM!', '');

const toHostCell = (cell: unknown, make: MakeError): unknown => {
  if (cell instanceof CellError) return toHostError(cell, make);
  if (typeof cell === 'number') return cell > -Infinity && cell < Infinity ? cell : toHostError(TOO_LARGE, make);
  return cell ?? '';
};

/** An answer as the rows that the host spills. */
export const toHostRows = (answer: Answer, make: MakeError): unknown[][] =>
  Array.isArray(answer) ? answer.map((row) => row.map((cell) => toHostCell(cell, make))) : [[toHostCell(answer, make)]];
