/** Array formulas of the older kind: typed over an area, which they fill exactly, however large their answer is. */

import type { Injector } from '@univerjs/core';
import {
  type ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  IFunctionService,
} from '@univerjs/engine-formula';
import type { FormulaPlace } from './values.ts';
import { arrayOf } from './values.ts';

/** Name of the function that cuts and fills an answer to an area. Nobody types it. */
const FUNCTION = '_JACKET_AREA';

/** A formula, without `=`, whose answer fills an area of so many rows and columns. */
export const overArea = (formula: string, rows: number, columns: number): string =>
  `${FUNCTION}(${formula},${rows},${columns})`;

/** A single value fills the whole area, a single row or column is repeated, a larger answer is cut, and what is missing is #N/A. */
class ArrayArea extends BaseFunction {
  override minParams = 3;
  override maxParams = 3;

  override calculate(answer: BaseValueObject, rows: BaseValueObject, columns: BaseValueObject): BaseValueObject {
    const rowCount = Number(rows.getValue());
    const columnCount = Number(columns.getValue());
    const at = (row: number, column: number): BaseValueObject => {
      if (!answer.isArray()) return answer;
      const array = answer as ArrayValueObject;
      const r = array.getRowCount() === 1 ? 0 : row;
      const c = array.getColumnCount() === 1 ? 0 : column;
      const beyond = r >= array.getRowCount() || c >= array.getColumnCount();
      return (beyond ? undefined : array.get(r, c)) ?? ErrorValueObject.create(ErrorType.NA);
    };
    if (rowCount === 1 && columnCount === 1) return at(0, 0);
    const place: FormulaPlace = {
      unitId: this.unitId ?? '',
      sheetId: this.subUnitId ?? '',
      row: this.row,
      column: this.column,
    };
    const filled = Array.from({ length: rowCount }, (_, row) =>
      Array.from({ length: columnCount }, (_, column) => at(row, column)),
    );
    return arrayOf(filled, place);
  }
}

export function registerArrayArea(injector: Injector): void {
  injector.get(IFunctionService).registerExecutors(new ArrayArea(FUNCTION));
}
