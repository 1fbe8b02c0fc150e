/** Between the engine's value objects and our cells, both ways. */

import type { ICellData, Nullable } from '@univerjs/core';
import {
  ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  BooleanValueObject,
  type ErrorType,
  ErrorValueObject,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import {
  type Answer,
  type Cell,
  CellError,
  type ErrorCode,
  type OutCell,
  type Rows,
} from '../functions/calling/cell.ts';

/**
 * What a cell of the grid carries beside an error value of ours.
 *
 * The engine merges these into the cell and never takes them away again, when the cell gets well or another formula. So the code lies beside
 * the reason, and the reason is believed only while the cell shows that code.
 */
interface ReasonNote {
  readonly jacketReason: string;
  readonly jacketCode: string;
}

/** Why a cell of the grid shows an error value, if a function of ours gave it. */
export function reasonOf(cell: Nullable<ICellData>): string | undefined {
  const note = cell?.custom as Partial<ReasonNote> | null | undefined;
  return typeof note?.jacketReason === 'string' && note.jacketCode === cell?.v ? note.jacketReason : undefined;
}

/** One value of the engine as a cell. */
export function toCell(value: Nullable<BaseValueObject>): Cell {
  if (!value || value.isNull()) return null;
  if (value.isError()) {
    const error = value as ErrorValueObject;
    return new CellError(error.getErrorType() as ErrorCode, error.getErrorContent());
  }
  if (value.isLambda()) return new CellError('#VALUE!', 'a LAMBDA is not a value; call it, or type a number');
  return value.getValue() as Cell;
}

/** The rows of an array of the engine. */
export function toRows(array: ArrayValueObject): Cell[][] {
  const rows: Cell[][] = Array.from({ length: array.getRowCount() }, () => []);
  array.iterator((value, row, column) => {
    rows[row]![column] = toCell(value);
    return undefined;
  });
  return rows;
}

/** Arrays are shared by all formulas of one pass that read the same cells, and never change: each is turned into rows once. */
const rowsOfArrays = new WeakMap<ArrayValueObject, Rows>();

/** The cells a reference points at, with the reason of each error that has one. */
export function cellsOf(reference: BaseReferenceObject): Rows {
  const array = reference.toArrayValueObject();
  const known = rowsOfArrays.get(array);
  if (known !== undefined) return known;
  const rows = toRows(array);
  const { startRow, startColumn } = reference.getRangePosition();
  rows.forEach((cells, row) => {
    cells.forEach((cell, column) => {
      if (!(cell instanceof CellError) || cell.reason !== '') return;
      const reason = reasonOf(reference.getCellData(startRow + row, startColumn + column));
      if (reason !== undefined) cells[column] = new CellError(cell.code, reason);
    });
  });
  rowsOfArrays.set(array, rows);
  return rows;
}

/** An error value of the engine that carries its reason, through a formula and into the cell. */
export function toError({ code, reason }: CellError): ErrorValueObject {
  const error = ErrorValueObject.create(code as ErrorType, reason);
  if (reason === '') return error;
  const note: ReasonNote = { jacketReason: reason, jacketCode: code };
  return error.withCustomData({ ...note }) as ErrorValueObject;
}

function toValue(cell: OutCell): BaseValueObject {
  if (cell instanceof CellError) return toError(cell);
  if (typeof cell === 'number') return NumberValueObject.create(cell);
  if (typeof cell === 'boolean') return BooleanValueObject.create(cell);
  return StringValueObject.create(cell);
}

/** Where the formula stands, which the engine wants to know of an array. */
export interface FormulaPlace {
  readonly unitId: string;
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
}

/** Rows of values as an array of the engine. */
export const arrayOf = (rows: BaseValueObject[][], place: FormulaPlace): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    ...place,
  });

/** An answer of ours as a value of the engine; a table spills. */
export const toEngine = (answer: Answer, place: FormulaPlace): BaseValueObject =>
  Array.isArray(answer)
    ? arrayOf(
        answer.map((row) => row.map(toValue)),
        place,
      )
    : toValue(answer);
