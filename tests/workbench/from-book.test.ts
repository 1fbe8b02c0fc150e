import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { workbookBook } from '../../src/engine/workbook-book.ts';
import { gridBook } from '../../src/workbench/from-book.ts';
import { Workbook } from '../../src/workbook/index.ts';
import { readLook } from '../../src/workbook/look.ts';

const bytes = new Uint8Array(readFileSync(join(import.meta.dirname, '../../sample-workbooks/collection-rows.xlsx')));
const workbook = Workbook.read(bytes);
const { data, notDrawn } = gridBook(workbook, readLook(bytes), workbookBook(workbook), new Map(), 'book', 'rows');
const sheet = (name: string) => Object.values(data.sheets).find((one) => one.name === name)!;
const style = (name: unknown) => data.styles[String(name)]!;

describe('the sample', () => {
  test('sheets in their order, none hidden, nothing left undrawn', () => {
    expect(data.sheetOrder.map((id) => data.sheets[id]!.name)).toEqual(workbook.sheets.map(({ name }) => name));
    expect(Object.values(data.sheets).every(({ hidden }) => hidden === 0)).toBe(true);
    expect(notDrawn).toEqual([]);
  });

  test('frozen rows and columns, widths, heights', () => {
    const rows = sheet('Spilled');
    expect(rows.freeze).toEqual({ xSplit: 2, ySplit: 4, startColumn: 2, startRow: 4 });
    // 26 characters wide, 7 pixels each.
    expect(rows.columnData![1]!.w).toBe(182);
    // A title of 16 points needs more than the usual row of 15 points, 20 pixels.
    expect(rows.rowData![0]!.h).toBeGreaterThan(20);
  });

  test('values, and a spilled formula at its first cell only', () => {
    const cells = sheet('Spilled').cellData!;
    expect(cells[4]![2]).toMatchObject({ v: 7, t: 2 });
    expect(cells[4]![9]!.f).toMatch(/^=JACKET\.SHELL_AREA\(Specimens\[length\]/);
    expect(cells[5]![9]!.f).toBeUndefined();
    expect(cells[5]![9]!.v).toBeUndefined();
  });

  test('a formula filled down is written once', () => {
    const cells = sheet('Row by row').cellData!;
    expect(cells[4]![7]!.f).toBe('=JACKET.LAYERS(F5,Shop)');
    expect(cells[5]![7]!.f).toBeUndefined();
    expect(cells[5]![7]!.si).toBe(cells[4]![7]!.si);
  });

  test('fonts, fills, borders and number formats as in the file', () => {
    const cells = sheet('Spilled').cellData!;
    expect(style(cells[0]![0]!.s)).toMatchObject({ fs: 16, bl: 1, cl: { rgb: '#8A4B2F' } });
    expect(style(cells[4]![9]!.s)).toMatchObject({ bg: { rgb: '#FAF8F4' }, n: { pattern: '0.00" m²"' } });
    expect(style(cells[3]![0]!.s)).toMatchObject({ bl: 1, bd: { b: { s: 8, cl: { rgb: '#8A4B2F' } } } });
  });

  test('lists of choices', () => {
    const { data: text } = data.resources!.find(({ name }) => name === 'SHEET_DATA_VALIDATION_PLUGIN')!;
    const rules = (JSON.parse(text) as Record<string, { formula1: string }[]>)[sheet('Shop settings').id!]!;
    expect(rules.map(({ formula1 }) => formula1)).toContain('metric,us');
  });

  test('reaches beyond what is in use, so that there is room to type', () => {
    expect(sheet('Spilled').rowCount).toBeGreaterThan(500);
    expect(sheet('Spilled').columnCount).toBeGreaterThanOrEqual(26);
  });
});
