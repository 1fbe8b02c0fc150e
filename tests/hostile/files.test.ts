/** `fill` on workbooks of several general writers: right values, and every other byte as it was. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { writeXlsx } from 'hucre';
import { describe, expect, test } from 'vitest';
import { columnName } from '../../src/workbook/address.ts';
import { compareWorkbooks } from '../../src/workbook/compare.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { bookParts, zipParts } from '../workbook/make-book.ts';
import { fillFile, valuesOf } from './fill-file.ts';

const FOLDER = join(import.meta.dirname, 'fixtures');
const FILES = readdirSync(FOLDER).filter((name) => /\.xls[xm]$/.test(name));

/** Surfaces are integrated numerically beside the fixtures; about twelve digits of them are right. */
const EXPECTED_DIGITS = 1e-10;

const bytesOf = (name: string): Uint8Array => new Uint8Array(readFileSync(join(FOLDER, name)));

/** Cells that a formula fills: its own, and those of its area. */
function filledBy(bytes: Uint8Array): Set<string> {
  const found = new Set<string>();
  for (const { address, row, column, formula } of Workbook.read(bytes).sheet('Jackets')!.cells()) {
    if (!formula) continue;
    found.add(address);
    const end = formula.kind === 'array' ? /:([A-Z]+)(\d+)$/.exec(formula.ref ?? '') : null;
    for (let r = row; end && r <= Number(end[2]); r++) found.add(`${columnName(column)}${r}`);
  }
  return found;
}

test('the corpus is there: writers, and what a workbook can carry', () => {
  expect(FILES).toEqual([
    'office-suite.xlsx',
    'openpyxl-1904.xlsx',
    'openpyxl-book.xlsx',
    'pivot.xlsx',
    'prefixed.xlsx',
    'signed.xlsx',
    'strict.xlsx',
    'xlsxwriter-1904.xlsx',
    'xlsxwriter-book.xlsx',
    'xlsxwriter-macros.xlsm',
  ]);
});

describe.each(FILES)('%s', (name) => {
  test('only formula cells change, and nothing else of the file', async () => {
    const before = bytesOf(name);
    const { status, after } = await fillFile(before, name);
    expect(status).toBe(0);
    const { differences, cells } = compareWorkbooks(before, after!);
    expect(differences).toEqual([]);
    const formulas = filledBy(before);
    for (const [sheet, addresses] of Object.entries(cells)) {
      expect(sheet).toBe('Jackets');
      for (const address of addresses) expect(formulas, address).toContain(address);
    }
    // A second run finds nothing to do.
    expect((await fillFile(after!, name)).after).toEqual(after);
  });
});

describe.each(FILES.filter((name) => name !== 'office-suite.xlsx'))('%s', (name) => {
  test('values are those that were calculated beside the file', async () => {
    const before = bytesOf(name);
    const { after } = await fillFile(before, name);
    const expected = valuesOf(before, 'Expected');
    const values = valuesOf(after!, 'Jackets');
    expect(expected.size).toBeGreaterThan(1);
    for (const [address, value] of expected) {
      const found = values.get(address);
      if (typeof value !== 'number') expect(found, address).toEqual(value);
      else expect(Math.abs((found as number) - value), address).toBeLessThanOrEqual(EXPECTED_DIGITS * Math.abs(value));
    }
  });
});

test('what an office suite calculated itself is not changed at all', async () => {
  const before = bytesOf('office-suite.xlsx');
  const { out, after } = await fillFile(before);
  expect(out).toContain('formulas: 180\nchanged: 0\nnot checked: 0');
  expect(after).toEqual(before);
});

test('a digital signature: the file is filled, and a line says that the signature no longer holds', async () => {
  const { status, error } = await fillFile(bytesOf('signed.xlsx'), 'signed.xlsx');
  expect(status).toBe(0);
  expect(error).toMatch(/^The digital signature of \S+signed\.xlsx does not hold for \S+\. Sign that file anew\.$/);
  expect((await fillFile(bytesOf('strict.xlsx'))).error).toBe('');
});

test('macros stay, byte for byte', async () => {
  const { after } = await fillFile(bytesOf('xlsxwriter-macros.xlsm'), 'macros.xlsm');
  expect(Workbook.read(after!).macros).toBe(true);
});

test('days counted from 1904: sums of days are calculated, days of the calendar are left alone and named', async () => {
  const { out } = await fillFile(bytesOf('xlsxwriter-1904.xlsx'));
  expect(out).toContain('not checked: 3');
  expect(out).toContain('Jackets!D1 YEAR: this workbook counts days from 1904, which is not understood here');
});

test('a fourth writer', async () => {
  const rows = Array.from({ length: 40 }, (_, i) => [i + 1, 10 + i]);
  const cells = new Map(
    rows.map(([layers], r) => [`${r},2`, { formula: `_xldudf_JACKET_THICKNESS(A${r + 1})`, formulaResult: layers }]),
  );
  const before = await writeXlsx({ sheets: [{ name: 'Jackets', rows: rows.map((row) => [...row, null]), cells }] });
  const { after } = await fillFile(before);
  expect(compareWorkbooks(before, after!).differences).toEqual([]);
  const values = valuesOf(after!, 'Jackets');
  // 1.5 mm a layer and 1 mm of finish; a few roundings lie between.
  for (const [layers] of rows) expect(values.get(`C${layers}`)).toBeCloseTo(1.5 * layers! + 1, 10);
});

// Some ten seconds on a free machine. Work that grew with the square of the rows would not end within the limit.
test('a book of 100,000 rows', async () => {
  const count = 100_000;
  const rows: string[] = [];
  for (let r = 1; r <= count; r++) {
    rows.push(
      `<row r="${r}"><c r="A${r}"><v>${(r % 40) + 1}</v></c><c r="B${r}" t="inlineStr"><is><t>specimen ${r}</t></is></c><c r="C${r}"><f>_xldudf_JACKET_THICKNESS(A${r})</f><v>0</v></c></row>`,
    );
  }
  const before = zipParts(bookParts(`<sheetData>${rows.join('')}</sheetData>`));
  const { status, out, after } = await fillFile(before);
  expect(status).toBe(0);
  expect(out).toContain(`formulas: ${count}\nchanged: ${count}\nnot checked: 0\nerrors: 0`);
  const { differences, cells } = compareWorkbooks(before, after!);
  expect(differences).toEqual([]);
  expect(cells.Sheet).toHaveLength(count);
  const values = valuesOf(after!, 'Sheet');
  for (let r = 1; r <= count; r += 997) expect(values.get(`C${r}`)).toBeCloseTo(1.5 * ((r % 40) + 1) + 1, 10);
}, 180_000);
