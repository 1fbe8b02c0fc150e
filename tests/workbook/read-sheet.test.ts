import { expect, test } from 'vitest';
import { Workbook } from '../../src/workbook/workbook.ts';
import { book, refusal } from './make-book.ts';

const layout = (inside: string) => Workbook.read(book(inside)).sheets[0]!.layout();

test('widths, heights, frozen panes, merged cells', () => {
  const inside = `<sheetViews><sheetView workbookViewId="0"><pane xSplit="1" ySplit="2" topLeftCell="B3" state="frozen"/></sheetView></sheetViews>
    <cols><col min="1" max="1" width="31.5" customWidth="1"/><col min="2" max="4" width="9" hidden="1"/></cols>
    <sheetData><row r="1" ht="24.5"/><row r="2" hidden="true"/><row r="3"/></sheetData><mergeCells count="1"><mergeCell ref="A1:C1"/></mergeCells>`;
  expect(layout(inside)).toEqual({
    columns: [
      { first: 1, last: 1, width: 31.5, hidden: false },
      { first: 2, last: 4, width: 9, hidden: true },
    ],
    rows: [
      { row: 1, height: 24.5, hidden: false },
      { row: 2, hidden: true },
    ],
    frozen: { rows: 2, columns: 1 },
    merged: ['A1:C1'],
  });
});

test('a plain sheet, and one that is split but not frozen', () => {
  const plain = { columns: [], rows: [], frozen: { rows: 0, columns: 0 }, merged: [] };
  expect(layout('<sheetData/>')).toEqual(plain);
  const split =
    '<sheetViews><sheetView workbookViewId="0"><pane xSplit="2000" state="split"/></sheetView></sheetViews>';
  expect(layout(`${split}<sheetData/>`)).toEqual(plain);
});

test('cells can be read more than once, and again after a change', () => {
  const workbook = Workbook.read(book('<row r="1"><c r="A1"><v>1</v></c></row>'));
  const cells = workbook.sheets[0]!.cells();
  const values = () => [...cells].map(({ value }) => value);
  expect([values(), values()]).toEqual([[1], [1]]);
  workbook.patch('Sheet', new Map([['B1', { value: 2 }]]));
  expect(values()).toEqual([1, 2]);
});

test('an address of any length is told by its beginning', () => {
  const workbook = Workbook.read(book(`<row r="1"><c r="${'A'.repeat(99)}1"/></row>`), 'book.xlsx');
  expect(refusal(() => [...workbook.sheets[0]!.cells()])).toBe(
    `book.xlsx is damaged: ${'A'.repeat(20)}… of its part xl/worksheets/sheet1.xml cannot be read`,
  );
});
