import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { compareWorkbooks } from '../../src/workbook/compare.ts';
import type { CellUpdate } from '../../src/workbook/types.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { Zip } from '../../src/workbook/zip.ts';
import { officeSuite, prefixed } from './fixtures/make-files.mjs';
import { bookParts, zipParts } from './make-book.ts';

const fixture = (name: string) => new Uint8Array(readFileSync(new URL(`fixtures/${name}`, import.meta.url)));

function patched(bytes: Uint8Array, sheet: string, updates: Record<string, CellUpdate>): Uint8Array {
  const workbook = Workbook.read(bytes);
  workbook.patch(sheet, new Map(Object.entries(updates)));
  return workbook.bytes();
}

test('the fixtures are what their script makes', () => {
  expect(new Uint8Array(officeSuite())).toEqual(fixture('office-suite.xlsx'));
  expect(new Uint8Array(prefixed())).toEqual(fixture('prefixed.xlsx'));
});

describe('a file of another program, filled in', () => {
  const before = fixture('office-suite.xlsx');
  const after = patched(before, 'Jackets', {
    F2: { value: 0.71 },
    G3: { value: 0.9 },
    I8: { value: 123.4 },
    A9: { value: 'Note' },
    F8: { value: 6 },
  });

  test('only the cells that changed differ', () => {
    expect(compareWorkbooks(before, after)).toEqual({ differences: [], cells: { Jackets: ['F2', 'G3', 'I8', 'A9'] } });
  });

  test('every other part has its raw bytes, packed as it was', () => {
    const [a, b] = [new Zip(before, 'before'), new Zip(after, 'after')];
    expect(b.names()).toEqual(a.names());
    for (const name of a.names()) {
      if (name !== 'xl/worksheets/sheet1.xml') expect(b.raw(name)).toEqual(a.raw(name));
    }
  });

  test('a longer spill on the other sheet', () => {
    const grown = patched(before, 'Cut list', {
      A2: { value: 'cover', arrayRef: 'A2:D4' },
      A4: { value: 'foot patch', spill: true },
      B4: { value: 6, spill: true },
    });
    expect(compareWorkbooks(before, grown)).toEqual({ differences: [], cells: { 'Cut list': ['A2', 'A4', 'B4'] } });
  });
});

test('a file with prefixes and sizes behind the data, filled in', () => {
  const before = fixture('prefixed.xlsx');
  const after = patched(before, 'Tusk & bone', {
    E2: { value: 0.42 },
    F3: { value: { error: '#N/A' } },
    C4: { value: 1 },
    A7: { value: 'cover', arrayRef: 'A7:B7' },
  });
  expect(compareWorkbooks(before, after)).toEqual({
    differences: [],
    cells: { 'Tusk & bone': ['E2', 'F3', 'A7', 'A8', 'B8', 'C4'] },
  });
  expect(Workbook.read(after).sheet('Tusk & bone')?.cell('A8')?.value).toBeNull();
});

describe('finds what else differs', () => {
  const before = fixture('office-suite.xlsx');
  const after = patched(before, 'Jackets', { F2: { value: 0.71 } });
  const names = new Zip(before, 'before').names();

  test.each(names)('one byte of %s', (name) => {
    const flipped = after.slice();
    const raw = new Zip(flipped, 'after').raw(name);
    // The time of day in the entry's own header, which no check sum covers.
    raw[10] = raw[10]! ^ 1;
    const result = compareWorkbooks(before, flipped);
    // The changed sheet is compared by its content: its packing is new anyway.
    const expected =
      name === 'xl/worksheets/sheet1.xml'
        ? []
        : [`${name}: ${name.includes('worksheets/sheet') ? 'packed anew' : 'changed'}`];
    expect(result.differences).toEqual(expected);
  });

  const parts = bookParts(
    '<dimension ref="A1"/><sheetData><row r="1" ht="20"><c r="A1"><v>1</v></c></row></sheetData><pageMargins left="1"/>',
  );
  const sheet = 'xl/worksheets/sheet1.xml';
  const edited = (from: string, to: string) => zipParts({ ...parts, [sheet]: parts[sheet]!.replace(from, to) });

  test.each([
    ['the margins', 'left="1"', 'left="2"'],
    ['the height of a row', 'ht="20"', 'ht="21"'],
    ['the dimension', 'ref="A1"/>', 'ref="A2"/>'],
    ['a space between elements', '</sheetData>', ' </sheetData>'],
    ['a row with a height', '</sheetData>', '<row r="2" ht="20"/></sheetData>'],
  ])('%s', (_, from, to) => {
    expect(compareWorkbooks(zipParts(parts), edited(from, to)).differences).toEqual([
      `${sheet}: changed outside of its cells`,
    ]);
  });

  test('a changed cell is told apart from a changed sheet', () => {
    expect(compareWorkbooks(zipParts(parts), edited('<v>1</v>', '<v>2</v>'))).toEqual({
      differences: [],
      cells: { Sheet: ['A1'] },
    });
    expect(compareWorkbooks(zipParts(parts), edited('<c r="A1">', '<c r="A1" s="1">')).cells).toEqual({
      Sheet: ['A1'],
    });
  });

  test('parts lost, added, moved', () => {
    const { 'xl/calcChain.xml': chain, ...less } = parts;
    expect(compareWorkbooks(zipParts(parts), zipParts(less)).differences).toEqual(['xl/calcChain.xml: lost']);
    expect(compareWorkbooks(zipParts(less), zipParts(parts)).differences).toEqual(['xl/calcChain.xml: added']);
    const moved = { 'xl/calcChain.xml': chain!, ...less };
    expect(compareWorkbooks(zipParts(parts), zipParts(moved)).differences).toEqual(['the order of the parts differs']);
  });
});
