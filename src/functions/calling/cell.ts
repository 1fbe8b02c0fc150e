/** What hosts hand over and take back: cells, rows of cells, and errors that carry their reason. */

/** Error values that a host knows. Ours are only the first three; the others pass through from input cells. */
export const ERROR_CODES = [
  '#VALUE!',
  '#N/A',
  '#NUM!',
  '#DIV/0!',
  '#REF!',
  '#NAME?',
  '#NULL!',
  '#SPILL!',
  '#CALC!',
  '#BUSY!',
] as const;

export type ErrorCode = (typeof ERROR_CODES)[number];

/** An error value with the sentence that explains it. Data, not an exception. */
export class CellError {
  readonly code: ErrorCode;
  readonly reason: string;

  constructor(code: ErrorCode, reason: string) {
    this.code = code;
    this.reason = reason;
  }
}

/** One input cell. `null` is a blank cell or an argument left out. */
export type Cell = number | string | boolean | null | CellError;

/** Rows of input cells, all of one length. */
export type Rows = readonly (readonly Cell[])[];

/** One argument as a host hands it over. */
export type Argument = Cell | Rows;

/** One output cell. A blank is `""`, never null. */
export type OutCell = number | string | boolean | CellError;

/** What a function answers: one cell, or a table that spills. */
export type Answer = OutCell | OutCell[][];

/** What a host may know of a call beside the values. */
export interface CallNotes {
  /**
   * For each argument whether it was a reference to cells (true) or was typed into the formula or calculated (false). Left out where the host does not tell: then
   * every single value of a call may have come from a cell.
   */
  readonly fromCells?: readonly boolean[];
}

export const isCellError = (x: unknown): x is CellError => x instanceof CellError;

export const isRows = (x: Argument | Answer | undefined): x is Rows & OutCell[][] => Array.isArray(x);
