/** How large a sheet of the engine must be: a reference past its edge would be an error there, and a whole column takes time. */

import { LAST_COLUMN, LAST_ROW, reach } from './formula-text.ts';

/** Room for tables that spill. */
export const SPARE_ROWS = 10_000;
export const SPARE_COLUMNS = 500;

export interface Extent {
  readonly rowCount: number;
  readonly columnCount: number;
}

/** Rows and columns for cells up to `row` and `column`, every reference of the formulas, and room to spill. */
export function extent(formulas: Iterable<string>, row = 0, column = 0): Extent {
  let lastRow = row;
  let lastColumn = column;
  for (const formula of formulas) {
    const end = reach(formula);
    lastRow = Math.max(lastRow, end.row);
    lastColumn = Math.max(lastColumn, end.column);
  }
  return {
    rowCount: Math.min(LAST_ROW, lastRow + SPARE_ROWS),
    columnCount: Math.min(LAST_COLUMN, lastColumn + SPARE_COLUMNS),
  };
}
