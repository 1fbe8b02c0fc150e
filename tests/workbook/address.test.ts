import { expect, test } from 'vitest';
import { addressOf, areaText, columnName, isInside, parseAddress, parseArea } from '../../src/workbook/address.ts';
import { COLUMNS } from '../../src/workbook/limits.ts';

test.each([
  ['A1', 1, 1],
  ['Z9', 9, 26],
  ['AA10', 10, 27],
  ['AZ1', 1, 52],
  ['ZZ1', 1, 702],
  ['AAA1', 1, 703],
  ['XFD1048576', 1_048_576, 16_384],
])('%s', (address, row, column) => {
  expect(parseAddress(address)).toEqual({ row, column });
  expect(addressOf(row, column)).toBe(address);
});

test.each(['', 'A', '1', 'A0', 'A01', 'a1', '$A$1', 'A1B', 'XFE1', 'A1048577', 'A1:B2', 'É1'])(
  '%j is no address',
  (text) => {
    expect(parseAddress(text)).toBeUndefined();
  },
);

test('every column comes back from its letters', () => {
  for (let column = 1; column <= COLUMNS; column++) expect(parseAddress(`${columnName(column)}1`)?.column).toBe(column);
});

test('areas', () => {
  const area = { top: 2, left: 2, bottom: 4, right: 3 };
  expect(parseArea('B2:C4')).toEqual(area);
  expect(areaText(area)).toBe('B2:C4');
  expect(areaText(parseArea('B2')!)).toBe('B2');
  expect(parseArea('C4:B2')).toBeUndefined();
  expect(parseArea('B2:')).toBeUndefined();
  expect([
    isInside(area, 2, 2),
    isInside(area, 4, 3),
    isInside(area, 5, 3),
    isInside(area, 4, 4),
    isInside(area, 1, 2),
  ]).toEqual([true, true, false, false, false]);
});
