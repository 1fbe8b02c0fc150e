import { expect, test } from 'vitest';
import { blankBook } from '../../src/workbench/blank-book.ts';
import { Workbook } from '../../src/workbook/index.ts';
import { readLook } from '../../src/workbook/look.ts';

test('one empty sheet of that name, the same bytes each time', () => {
  const bytes = blankBook('Sizes & weights');
  const workbook = Workbook.read(bytes);
  expect(workbook.sheets.map(({ name }) => name)).toEqual(['Sizes & weights']);
  expect([...workbook.sheets[0]!.cells()]).toEqual([]);
  expect(blankBook('Sizes & weights')).toEqual(bytes);
  expect(readLook(bytes).styles.cells[0]!.font).toMatchObject({ name: 'Arial', size: 10 });
});

test('takes values and formulas', () => {
  const workbook = Workbook.read(blankBook('S'));
  workbook.patch('S', new Map([['B2', { value: 3, formula: 'SUM(A1:A2)' }]]));
  expect(Workbook.read(workbook.bytes()).sheets[0]!.cell('B2')).toMatchObject({
    value: 3,
    formula: { text: 'SUM(A1:A2)' },
  });
});
