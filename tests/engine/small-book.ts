/** Workbooks written by hand for tests: `sheet('Data', { A1: 1, B1: '=A1*2' })`. */

import type { Book, Sheet, SheetFormula, SheetValue } from '../../src/engine/book.ts';
import type { SheetResult } from '../../src/engine/calculate-book.ts';
import { columnLetters, columnNumber } from '../../src/engine/formula-text.ts';

/** A value, a formula with `=`, or a formula with what else is known of it. */
export type SmallCell = SheetValue | (Partial<SheetFormula> & { readonly text: string; readonly value?: SheetValue });

export function sheet(name: string, cells: Readonly<Record<string, SmallCell>>): Sheet {
  return {
    name,
    cells: Object.entries(cells).map(([address, cell]) => {
      const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
      const place = { row: Number(digits), column: columnNumber(letters) };
      if (typeof cell === 'string' && cell.startsWith('='))
        return { ...place, value: null, formula: { text: cell.slice(1), fills: 'single' } };
      if (typeof cell !== 'object' || cell === null || 'error' in cell) return { ...place, value: cell };
      const { value = null, ...formula } = cell;
      return { ...place, value, formula: { fills: 'single', ...formula } };
    }),
  };
}

export const book = (sheets: readonly Sheet[], more: Partial<Book> = {}): Book => ({
  sheets,
  names: [],
  tables: [],
  ...more,
});

/** Calculated values by address, of cells that spill by the first address: a single value or rows. */
export function valuesOf({ calculated }: SheetResult): Record<string, unknown> {
  return Object.fromEntries(
    calculated.map(({ cell, rows }) => [
      `${columnLetters(cell.column)}${cell.row}`,
      rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0] : rows,
    ]),
  );
}

/** Reasons why formulas were not checked, by address. */
export const keptOf = ({ notChecked }: SheetResult): Record<string, string> =>
  Object.fromEntries(notChecked.map(({ cell, reason }) => [`${columnLetters(cell.column)}${cell.row}`, reason]));
