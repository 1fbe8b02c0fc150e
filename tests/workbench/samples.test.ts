import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { SAMPLES } from '../../src/workbench/samples.ts';
import { Workbook } from '../../src/workbook/index.ts';

const FOLDER = join(import.meta.dirname, '../../sample-workbooks');

test('every sample workbook is offered', () => {
  const files = readdirSync(FOLDER).filter((name) => name.endsWith('.xlsx'));
  expect(SAMPLES.map(({ file }) => file).sort()).toEqual(files.sort());
});

test('the sheet and cell that are shown first are there', () => {
  for (const { file, sheet, cell } of SAMPLES) {
    if (sheet === undefined) continue;
    const found = Workbook.read(new Uint8Array(readFileSync(join(FOLDER, file)))).sheet(sheet);
    expect(found, file).toBeDefined();
    if (cell !== undefined) expect(found!.cell(cell), cell).toBeDefined();
  }
});
