import { describe, expect, test } from 'vitest';
import { type Cell, CellError } from '../../../src/functions/calling/cell.ts';
import {
  COLUMN_NAMES,
  type ColumnName,
  isBlankRow,
  readRow,
} from '../../../src/functions/calling/collection-inputs.ts';
import { settings } from '../../calculation/kit.ts';

const columns = new Map(COLUMN_NAMES.map((name, i) => [name, i]));
const cells = (given: Partial<Record<ColumnName, Cell>>): Cell[] => COLUMN_NAMES.map((name) => given[name] ?? null);
const SIZES = { length: 60, width: 40, height: 30 };
const read = (given: Partial<Record<ColumnName, Cell>>, system: 'metric' | 'us' = 'metric') =>
  readRow(cells({ ...SIZES, ...given }), columns, settings(), system);

test('a row in SI, with what it does not say left out', () => {
  expect(read({ weight: 20 })).toEqual({
    specimen: { length: 0.6, width: 0.4, height: 0.3, weight: 20 },
    padding: 'felt',
  });
});

test('all that a row can say', () => {
  expect(
    read({ weight: 60, shape: 'box', 'surface area': 0.7, 'relief factor': 1.2, fragile: true, relief: 'low' }),
  ).toEqual({
    specimen: { length: 0.6, width: 0.4, height: 0.3, weight: 60, surface: 0.7 },
    padding: 'felt',
    shape: 'box',
    reliefFactor: 1.2,
  });
});

test('sizes and weights in the units of the table', () => {
  const row = read({ length: 10, width: 10, height: 10, volume: 1, material: 2 }, 'us') as { specimen: object };
  expect(row.specimen).toMatchObject({ length: 0.254, height: 0.254 });
  // A cubic foot of twice the density of water.
  expect((row.specimen as { weight: number }).weight).toBeCloseTo(2000 * 0.3048 ** 3, 12);
});

describe('the first column that cannot be used is named', () => {
  test.each<[Partial<Record<ColumnName, Cell>>, string]>([
    [{ width: 'x', weight: null }, 'width is text; type a number, or use JACKET.MEASURE'],
    [{ volume: 'x', material: 'y' }, 'volume is text; type a number'],
    [{ weight: 20, padding: 3 }, 'padding is 3; type felt or foam'],
  ])('%j', (given, reason) => {
    expect(read(given)).toEqual(new CellError('#VALUE!', reason));
  });
});

test('a row shorter than the first one lacks its last cells', () => {
  expect(readRow([60, 40], columns, settings(), 'metric')).toMatchObject({
    reason: 'height is blank; type the height as it lies in the jacket in cm',
  });
});

test('blank rows hold nothing but blanks, noughts and boxes that are not ticked', () => {
  expect(isBlankRow(cells({ length: 0, weight: '', fragile: false, relief: false }), columns)).toBe(true);
  expect(isBlankRow([], columns)).toBe(true);
  expect(isBlankRow(cells({ fragile: true }), columns)).toBe(false);
  expect(isBlankRow(cells({ padding: 'felt' }), columns)).toBe(false);
  expect(isBlankRow(cells({ length: new CellError('#N/A', '') }), columns)).toBe(false);
});
