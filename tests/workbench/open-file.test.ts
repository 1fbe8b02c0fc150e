import { describe, expect, test } from 'vitest';
import { blankBook } from '../../src/workbench/blank-book.ts';
import { LARGEST_WORKBOOK, openFile, problemText } from '../../src/workbench/open-file.ts';

const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);

test('a .csv becomes a workbook of one sheet', () => {
  const { kind, workbook } = openFile(bytes('a,b\n1.5,007\n'), 'my sizes.csv');
  expect(kind).toBe('csv');
  expect(workbook.sheets[0]!.name).toBe('my sizes');
  expect([...workbook.sheets[0]!.cells()].map(({ address, value }) => [address, value])).toEqual([
    ['A1', 'a'],
    ['B1', 'b'],
    ['A2', 1.5],
    ['B2', '007'],
  ]);
});

test('letters of an older text are read too', () => {
  const { workbook } = openFile(new Uint8Array([0x6d, 0xb2]), 'units.csv');
  expect(workbook.sheets[0]!.cell('A1')!.value).toBe('m²');
});

describe('one sentence for what cannot be opened', () => {
  test.each([
    ['empty.xlsx', new Uint8Array(), 'empty.xlsx is empty.'],
    ['large.xlsx', new Uint8Array(LARGEST_WORKBOOK + 1), 'large.xlsx is larger than 40 MB'],
    ['zero.csv', new Uint8Array([97, 0, 98]), 'zero.csv is not a text'],
    ['letter.xlsx', bytes('Dear registrar'), 'letter.xlsx'],
    ['half.xlsx', blankBook('S').slice(0, 300), 'half.xlsx'],
  ])('%s', (name, content, words) => {
    let said = '';
    try {
      openFile(content, name);
    } catch (error) {
      said = problemText(error, name);
    }
    expect(said).toContain(words);
    expect(said).toMatch(/\.$/);
  });

  test('a fault of ours is not shown as it is', () => {
    expect(problemText(new TypeError('x is undefined'), 'a.xlsx')).toBe('a.xlsx could not be opened.');
  });
});
