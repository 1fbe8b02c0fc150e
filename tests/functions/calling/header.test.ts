import { describe, expect, test } from 'vitest';
import { Refusal } from '../../../src/functions/calling/arguments.ts';
import { CellError } from '../../../src/functions/calling/cell.ts';
import { columnName, findColumns, isHeader } from '../../../src/functions/calling/header.ts';

test('names are compared without letter case and spaces around them', () => {
  expect(['  Surface   AREA ', 1990, null, undefined, new CellError('#N/A', '')].map(columnName)).toEqual([
    'surface area',
    '1990',
    '',
    '',
    '',
  ]);
});

describe('a row of names', () => {
  test.each([
    [['no', 'length'], true],
    [['no', null, ''], true],
    [['no', 12], false],
    [[null, ''], false],
    [['no', true], false],
  ])('%j: %s', (row, expected) => {
    expect(isHeader(row)).toBe(expected);
  });
});

test('columns by name, others left alone', () => {
  const found = findColumns(['x', 'Width', null, 'length'], ['length', 'width', 'height']);
  expect(found).toEqual(
    new Map([
      ['width', 1],
      ['length', 3],
    ]),
  );
});

test('a name that stands there twice is refused', () => {
  const found = findColumns(['x', 'x', 'Width', 'width'], ['width']);
  expect(found).toEqual(new Refusal('table has two columns named "width"; keep one'));
});
