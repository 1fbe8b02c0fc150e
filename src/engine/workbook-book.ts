/** A workbook file as the engine takes it: formulas in the form people type. */

import { functions } from '../functions/index.ts';
import { parseArea } from '../workbook/address.ts';
import { type BookFormula, toEngine, type Workbook } from '../workbook/index.ts';
import { typedName } from './adapter.ts';
import type { Area, Book, SheetFormula, SheetValue } from './book.ts';
import { columnLetters, columnNumber } from './formula-text.ts';

/** Full names of our functions, as formulas use them. */
export const FUNCTION_NAMES: readonly string[] = functions.map(({ id }) => typedName(id));

/** Longest name that spreadsheet programs take [characters]. From their published limits; a longer one keeps the engine busy for minutes. */
const LONGEST_NAME = 255;

/** Two numbers closer than this, as a share of the larger one, are the same: it is the rounding of another program's last digits. */
export const SAME_NUMBER = 1e-12;

/** `B2:C5` as numbers. */
export function areaOf(ref: string): Area {
  const [first = '', last = first] = ref.replaceAll('$', '').split(':');
  const at = (address: string): { row: number; column: number } => {
    const [, letters = 'A', digits = '1'] = /^([A-Z]+)(\d+)$/i.exec(address) ?? [];
    return { row: Number(digits), column: columnNumber(letters) };
  };
  const start = at(first);
  const end = at(last);
  return { firstRow: start.row, firstColumn: start.column, lastRow: end.row, lastColumn: end.column };
}

export const addressOf = (row: number, column: number): string => `${columnLetters(column)}${row}`;

/** The area of so many rows and columns from a cell on, such as `B2:C5`; a single cell is `B2`. */
export const refOf = (row: number, column: number, rows: number, columns: number): string => {
  const first = addressOf(row, column);
  return rows === 1 && columns === 1 ? first : `${first}:${addressOf(row + rows - 1, column + columns - 1)}`;
};

/** Whether two values are the same to a reader. */
export function isSame(a: SheetValue, b: SheetValue): boolean {
  if (typeof a === 'number' && typeof b === 'number')
    return Math.abs(a - b) <= SAME_NUMBER * Math.max(Math.abs(a), Math.abs(b));
  if (typeof a === 'object' && typeof b === 'object' && a !== null && b !== null) return a.error === b.error;
  return a === b;
}

const isArea = (ref: string | undefined): ref is string =>
  ref !== undefined && parseArea(ref.replaceAll('$', '')) !== undefined;

function formulaOf(formula: BookFormula): SheetFormula {
  const text = toEngine(formula.text, FUNCTION_NAMES);
  if (formula.kind === 'array')
    return {
      text,
      fills: formula.dynamic ? 'dynamic' : 'area',
      ...(isArea(formula.ref) ? { area: areaOf(formula.ref) } : {}),
    };
  return { text, fills: 'single', ...(formula.si === undefined ? {} : { group: `file ${formula.si}` }) };
}

/** The workbook as the engine takes it. A what-if table is a value to it; print areas and the like are no names to calculate with. */
export function workbookBook(workbook: Workbook): Book {
  return {
    sheets: workbook.sheets.map((sheet) => ({
      name: sheet.name,
      cells: Array.from(sheet.cells(), ({ row, column, value, formula }) =>
        formula === undefined || formula.kind === 'dataTable'
          ? { row, column, value }
          : { row, column, value, formula: formulaOf(formula) },
      ).filter(({ value, formula }) => value !== null || formula !== undefined),
    })),
    names: workbook.names
      .filter(({ name }) => !name.startsWith('_xlnm.') && name.length <= LONGEST_NAME)
      .map(({ name, text, sheet }) => ({
        name,
        text: toEngine(text, FUNCTION_NAMES),
        ...(sheet === undefined ? {} : { sheet }),
      })),
    tables: workbook.tables
      .filter(({ ref }) => isArea(ref))
      .map(({ ref, ...table }) => ({ ...table, area: areaOf(ref) })),
    ...(workbook.date1904 ? { date1904: true } : {}),
  };
}
