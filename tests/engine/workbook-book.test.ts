import { describe, expect, test } from 'vitest';
import { addressOf, areaOf, isSame, refOf, workbookBook } from '../../src/engine/workbook-book.ts';
import { blankBook } from '../../src/workbench/blank-book.ts';
import { Workbook } from '../../src/workbook/index.ts';
import { book as bookBytes, bookParts } from '../workbook/make-book.ts';

test('addresses and areas', () => {
  expect(areaOf('$B$2:C5')).toEqual({ firstRow: 2, firstColumn: 2, lastRow: 5, lastColumn: 3 });
  expect(areaOf('AA10')).toEqual({ firstRow: 10, firstColumn: 27, lastRow: 10, lastColumn: 27 });
  expect(addressOf(10, 27)).toBe('AA10');
  expect(refOf(2, 2, 4, 2)).toBe('B2:C5');
  expect(refOf(2, 2, 1, 1)).toBe('B2');
});

describe('the same to a reader', () => {
  test.each([
    [1, 1 + 1e-14, true],
    [1, 1 + 1e-9, false],
    [0, 0, true],
    ['a', 'a', true],
    [null, 0, false],
    [null, null, true],
    [true, 1, false],
    [{ error: '#N/A' }, { error: '#N/A' }, true],
    [{ error: '#N/A' }, { error: '#NUM!' }, false],
    [{ error: '#N/A' }, null, false],
  ] as const)('%j and %j: %j', (a, b, same) => {
    expect(isSame(a, b)).toBe(same);
  });
});

test('formulas in the form people type, blank cells left out', () => {
  const workbook = Workbook.read(blankBook('S'));
  workbook.patch(
    'S',
    new Map([
      ['A1', { value: 3 }],
      ['B1', { value: 9, formula: '_xldudf_JACKET_LAYERS(A1)', arrayRef: 'B1' }],
      ['C1', { value: 6, formula: 'SUM(A1:A3)' }],
    ]),
  );
  const { sheets } = workbookBook(workbook);
  expect(sheets[0]!.cells).toEqual([
    { row: 1, column: 1, value: 3 },
    {
      row: 1,
      column: 2,
      value: 9,
      formula: {
        text: 'JACKET.LAYERS(A1)',
        fills: 'dynamic',
        area: { firstRow: 1, firstColumn: 2, lastRow: 1, lastColumn: 2 },
      },
    },
    { row: 1, column: 3, value: 6, formula: { text: 'SUM(A1:A3)', fills: 'single' } },
  ]);
});

test('an area that is none, and a name longer than any', () => {
  const parts = bookParts('');
  const names = `<definedNames><definedName name="${'n'.repeat(256)}">1</definedName><definedName name="m">2</definedName></definedNames>`;
  const bytes = bookBytes('<row r="1"><c r="A1"><f t="array" ref="ZZZZ9:B">1+1</f></c></row>', {
    'xl/workbook.xml': parts['xl/workbook.xml']!.replace('</workbook>', `${names}</workbook>`),
  });
  const { sheets, names: known } = workbookBook(Workbook.read(bytes));
  expect(sheets[0]!.cells[0]!.formula).toEqual({ text: '1+1', fills: 'area' });
  expect(known).toEqual([{ name: 'm', text: '2' }]);
});
