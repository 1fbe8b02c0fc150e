/** Tables of values: typed ones, and those that do not fit together. */

import { ArrayValueObject, type BaseValueObject, ErrorType, ValueObjectFactory } from '@univerjs/engine-formula';
import { faulty } from './amend.ts';

/** What the engine keeps to itself of a table, as far as it is put right here. */
interface Inside {
  _rowCount: number;
  _columnCount: number;
  _formatValue(raw: unknown): BaseValueObject[][];
  _batchOperator(other: BaseValueObject, ...how: unknown[]): ArrayValueObject;
}

let areRepaired = false;

const PIECE = /"(?:[^"]|"")*"|[^,;"]+|[,;]/g;

/** Rows of the pieces of `{1,"a,b";2,TRUE}`. */
function typedRows(text: string): string[][] {
  const rows: string[][] = [[]];
  for (const [piece] of text.slice(1, -1).matchAll(PIECE))
    if (piece === ';') rows.push([]);
    else if (piece !== ',' && piece.trim() !== '') rows.at(-1)!.push(piece.trim());
  return rows;
}

/** One row or column of the tables stands for all; otherwise both must reach as far. */
const isMissing = (size: number, index: number): boolean => size > 1 && index >= size;

/**
 * As shipped a comma or semicolon within a text splits a typed table, and `{1,2,3}*{1,2}` is 0 at its end, where a spreadsheet program says #N/A. One
 * repair is for all engines of a process.
 */
export function repairArrays(): void {
  if (areRepaired) return;
  areRepaired = true;
  const inside = ArrayValueObject.prototype as unknown as Inside;
  const { _formatValue: format, _batchOperator: operate } = inside;
  inside._formatValue = function formatValue(this: Inside, raw) {
    if (typeof raw !== 'string' || !raw.includes('"')) return format.call(this, raw);
    const rows = typedRows(raw);
    this._rowCount = rows.length;
    this._columnCount = Math.max(...rows.map((row) => row.length));
    return rows.map((row) => row.map((piece) => ValueObjectFactory.create(piece, true)));
  };
  inside._batchOperator = function batchOperator(this: Inside, other, ...how) {
    const result = operate.call(this, other, ...how);
    if (!other.isArray()) return result;
    const table = other as ArrayValueObject;
    const [rows, columns] = [table.getRowCount(), table.getColumnCount()];
    const fits = (a: number, b: number): boolean => a === b || a === 1 || b === 1;
    if (fits(rows, this._rowCount) && fits(columns, this._columnCount)) return result;
    const values = Array.from({ length: result.getRowCount() }, (_, r) =>
      Array.from({ length: result.getColumnCount() }, (__, c) => {
        const missing =
          isMissing(rows, r) ||
          isMissing(this._rowCount, r) ||
          isMissing(columns, c) ||
          isMissing(this._columnCount, c);
        return missing ? faulty(ErrorType.NA) : result.get(r, c);
      }),
    );
    result.setArrayValue(values as BaseValueObject[][]);
    return result;
  };
}
