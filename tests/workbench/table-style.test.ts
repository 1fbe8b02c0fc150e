import { expect, test } from 'vitest';
import type { Table } from '../../src/engine/book.ts';
import { tableStyle } from '../../src/workbench/table-style.ts';

const table: Table = {
  name: 'T',
  sheet: 'S',
  area: { firstRow: 4, firstColumn: 1, lastRow: 9, lastColumn: 3 },
  columns: ['a', 'b', 'c'],
  headerRows: 1,
  totalsRows: 1,
};

test('a bold heading over a clay line', () => {
  expect(tableStyle(table, true, 4)).toMatchObject({ bl: 1, bd: { b: { cl: { rgb: '#8A4B2F' } } } });
});

test('every other row is tinted where the file asks for stripes', () => {
  expect([5, 6, 7, 8].map((row) => tableStyle(table, true, row) !== undefined)).toEqual([true, false, true, false]);
  expect(tableStyle(table, false, 5)).toBeUndefined();
});

test('a line above the totals', () => {
  expect(tableStyle(table, true, 9)).toMatchObject({ bl: 1, bd: { t: { cl: { rgb: '#8A4B2F' } } } });
});
