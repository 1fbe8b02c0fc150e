import { expect, test } from 'vitest';
import { cellOf, fieldOf } from '../../src/cli/csv-cells.ts';
import { CellError } from '../../src/functions/calling/cell.ts';

test.each([
  ['', null],
  ['  ', null],
  [' 12.50 ', 12.5],
  ['-3', -3],
  ['1e400', Number.POSITIVE_INFINITY],
  ['true', true],
  ['FALSE', false],
  ['#n/a', new CellError('#N/A', '')],
  [' felt ', 'felt'],
  ['12,5', '12,5'],
])('the field %j is the cell %j', (field, cell) => {
  expect(cellOf(field)).toEqual(cell);
});

test.each([
  [12.5, '12.5'],
  [true, 'TRUE'],
  [new CellError('#N/A', 'no room'), '#N/A'],
  ['a, b', '"a, b"'],
  ['=1', "'=1"],
  ['', ''],
])('the cell %j is the field %j', (cell, field) => {
  expect(fieldOf(cell)).toBe(field);
});
