import { linkSync, mkdtempSync, readdirSync, readFileSync, rmSync, symlinkSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { writeXlsx } from 'hucre';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { FILL_USAGE, fill } from '../../src/cli/fill.ts';
import { type BookValue, Workbook } from '../../src/workbook/index.ts';
import { book as bookBytes } from '../workbook/make-book.ts';
import { recorded } from './recorded.ts';

const folder = mkdtempSync(join(tmpdir(), 'fill-'));
afterAll(() => rmSync(folder, { recursive: true }));
const path = (name: string): string => join(folder, name);

async function run(...args: string[]) {
  const output = recorded();
  const status = await fill(args, output);
  return { status, out: output.printed.join('\n'), error: output.explained.join('\n') };
}

/** Writes a workbook of rows of sheet XML, fills it, and answers what was said and the cells of the result. */
async function filled(rows: string, more: Readonly<Record<string, string>> = {}) {
  writeFileSync(path('in.xlsx'), bookBytes(rows, more));
  const said = await run(path('in.xlsx'), path('out.xlsx'));
  return { ...said, cells: cellsOf('out.xlsx') };
}

function cellsOf(name: string): Record<string, BookValue> {
  const workbook = Workbook.read(readFileSync(path(name)));
  return Object.fromEntries(Array.from(workbook.sheets[0]!.cells(), ({ address, value }) => [address, value]));
}

/** A row of cells: numbers, or XML of a whole cell. */
const row = (r: number, ...cells: (number | string)[]): string =>
  `<row r="${r}">${cells.map((cell, i) => (typeof cell === 'number' ? `<c r="${'ABCDEFGH'[i]}${r}"><v>${cell}</v></c>` : cell)).join('')}</row>`;

describe('values', () => {
  test('stale and missing ones are written, right ones are not', async () => {
    const { status, out, cells } = await filled(
      row(
        1,
        60,
        '<c r="B1"><f>A1*2</f><v>1</v></c>',
        '<c r="C1"><f>B1+1</f></c>',
        '<c r="D1"><f>A1+0</f><v>60</v></c>',
        '<c r="E1" t="str"><f>"a"&amp;"b"</f><v>ab</v></c>',
        '<c r="F1" t="b"><f>A1&gt;1</f><v>0</v></c>',
      ),
    );
    expect(status).toBe(0);
    expect(cells).toEqual({ A1: 60, B1: 120, C1: 121, D1: 60, E1: 'ab', F1: true });
    expect(out).toBe('formulas: 5\nchanged: 3\nnot checked: 0\nerrors: 0');
  });

  test('our functions in the form that files have', async () => {
    const { cells } = await filled(
      row(1, 4, '<c r="B1"><f>_xldudf_JACKET_THICKNESS(A1)</f></c>', '<c r="C1"><f>B1*10</f></c>'),
    );
    // Four layers of 1.5 mm and 1 mm of finish; 12 digits leave room for the last one of the binary fraction.
    expect(cells.B1).toBeCloseTo(7, 12);
    expect(cells.C1).toBeCloseTo(70, 11);
  });

  test('a shared formula: each cell its own value', async () => {
    const { cells } = await filled(
      row(1, 1, '<c r="B1"><f t="shared" ref="B1:B3" si="0">A1*10</f></c>') +
        row(2, 2, '<c r="B2"><f t="shared" si="0"/></c>') +
        row(3, 3, '<c r="B3"><f t="shared" si="0"/></c>'),
    );
    expect(cells).toMatchObject({ B1: 10, B2: 20, B3: 30 });
  });

  test('an array formula fills its area and no more', async () => {
    const { cells } = await filled(
      row(1, 1, '<c r="B1"><f t="array" ref="B1:B2">A1:A3*2</f><v>9</v></c>') +
        row(2, 2, '<c r="B2"><v>9</v></c>') +
        row(3, 3),
    );
    expect(cells).toEqual({ A1: 1, A2: 2, A3: 3, B1: 2, B2: 4 });
  });
});

describe('formulas that spill', () => {
  // The library writes the marks of a dynamic array, which make its area grow and shrink.
  async function spilling(formula: string, cached: number): Promise<void> {
    const rows = Array.from({ length: 5 }, (_, i) => [i + 1, i < cached ? 99 : null]);
    const bytes = await writeXlsx({
      sheets: [
        {
          name: 'Sheet',
          rows,
          cells: new Map([
            [
              '0,1',
              {
                formula,
                formulaType: 'array' as const,
                formulaRef: `B1:B${cached}`,
                formulaDynamic: true,
                value: 99,
              },
            ],
          ]),
        },
      ],
    });
    writeFileSync(path('spill.xlsx'), bytes);
  }

  const formulaOf = (name: string) => Workbook.read(readFileSync(path(name))).sheets[0]!.cell('B1')!.formula;

  test('grow', async () => {
    await spilling('A1:A4*10', 2);
    expect(formulaOf('spill.xlsx')).toMatchObject({ ref: 'B1:B2', dynamic: true });
    expect((await run(path('spill.xlsx'), path('out.xlsx'))).status).toBe(0);
    expect(cellsOf('out.xlsx')).toMatchObject({ B1: 10, B2: 20, B3: 30, B4: 40 });
    expect(formulaOf('out.xlsx')).toMatchObject({ ref: 'B1:B4', dynamic: true });
  });

  test('shrink, and the cells that are no longer filled are empty', async () => {
    await spilling('A1:A2*10', 4);
    await run(path('spill.xlsx'), path('out.xlsx'));
    const cells = cellsOf('out.xlsx');
    expect([cells.B1, cells.B2, cells.B3 ?? null, cells.B4 ?? null]).toEqual([10, 20, null, null]);
    expect(formulaOf('out.xlsx')).toMatchObject({ ref: 'B1:B2' });
  });
});

describe('what cannot be calculated', () => {
  test('keeps its value, is told with its reason, and others use the value', async () => {
    const { status, out, cells } = await filled(
      row(
        1,
        '<c r="A1"><f>OTHER.THING(1)</f><v>5</v></c>',
        '<c r="B1"><f>A1*2</f></c>',
        '<c r="C1"><f>C1+1</f><v>3</v></c>',
        '<c r="D1"><f>TODAY()</f><v>45000</v></c>',
      ),
    );
    expect(status).toBe(0);
    expect(cells).toEqual({ A1: 5, B1: 10, C1: 3, D1: 45_000 });
    expect(out.split('\n')).toEqual([
      'formulas: 4',
      'changed: 1',
      'not checked: 3',
      'errors: 0',
      'Not checked, kept as they were:',
      '  Sheet!A1 OTHER.THING: there is no such function here',
      '  Sheet!C1 the formula refers to its own cell, directly or by way of others',
      '  Sheet!D1 TODAY: the answer changes with time or place, so it is kept as it was',
    ]);
  });

  test('errors are told with their reason and are no failure', async () => {
    const { status, out, cells } = await filled(
      row(1, '<c r="A1"><f>_xldudf_JACKET_THICKNESS("x")</f></c>', '<c r="B1"><f>1/0</f></c>'),
    );
    expect(status).toBe(0);
    expect(cells).toEqual({ A1: { error: '#VALUE!' }, B1: { error: '#DIV/0!' } });
    expect(out).toMatch(/errors: 2\nErrors:\n {2}Sheet!A1 #VALUE! layers .+\n {2}Sheet!B1 #DIV\/0!$/);
  });

  test('a long list is cut', async () => {
    const rows = Array.from({ length: 60 }, (_, i) => row(i + 1, `<c r="A${i + 1}"><f>1/0</f></c>`)).join('');
    const { out } = await filled(rows);
    expect(out.match(/#DIV/g)).toHaveLength(50);
    expect(out).toMatch(/ {2}and 10 more$/);
  });
});

describe('--check', () => {
  test('1 if a cell would change, 0 if none, and nothing is written', async () => {
    writeFileSync(path('stale.xlsx'), bookBytes(row(1, 1, '<c r="B1"><f>A1*2</f><v>1</v></c>')));
    const before = readFileSync(path('stale.xlsx'));
    expect(await run('--check', path('stale.xlsx'))).toMatchObject({
      status: 1,
      out: expect.stringContaining('would change: 1'),
    });
    expect(readFileSync(path('stale.xlsx')).equals(before)).toBe(true);
    await run(path('stale.xlsx'), path('fresh.xlsx'));
    expect(await run('--check', path('fresh.xlsx'))).toMatchObject({
      status: 0,
      out: expect.stringContaining('would change: 0'),
    });
    expect(await run(path('stale.xlsx'), path('not-written.xlsx'), '--check')).toMatchObject({ status: 1 });
    expect(readdirSync(folder)).not.toContain('not-written.xlsx');
  });
});

describe('files', () => {
  beforeAll(() => writeFileSync(path('same.xlsx'), bookBytes(row(1, '<c r="A1"><f>1+1</f></c>'))));

  test('the input is never overwritten, by whatever name', async () => {
    const before = readFileSync(path('same.xlsx'));
    symlinkSync(path('same.xlsx'), path('soft.xlsx'));
    linkSync(path('same.xlsx'), path('hard.xlsx'));
    for (const name of ['same.xlsx', 'soft.xlsx', 'hard.xlsx']) {
      const { status, out, error } = await run(path('same.xlsx'), path(name));
      expect({ status, out, error }).toEqual({
        status: 2,
        out: '',
        error: `${path(name)} is the workbook itself; name another file to write to.`,
      });
    }
    expect(readFileSync(path('same.xlsx')).equals(before)).toBe(true);
  });

  test('an older result is replaced, and nothing is left beside it', async () => {
    writeFileSync(path('old.xlsx'), 'old');
    expect((await run(path('same.xlsx'), path('old.xlsx'))).status).toBe(0);
    expect(cellsOf('old.xlsx')).toEqual({ A1: 2 });
    expect(readdirSync(folder).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  test('without anything to change the file is the same byte by byte', async () => {
    writeFileSync(path('right.xlsx'), bookBytes(row(1, '<c r="A1"><f>1+1</f><v>2</v></c>')));
    await run(path('right.xlsx'), path('copy.xlsx'));
    expect(readFileSync(path('copy.xlsx')).equals(readFileSync(path('right.xlsx')))).toBe(true);
  });

  test('what cannot be read is one line and exit status 2', async () => {
    writeFileSync(path('text.xlsx'), 'no workbook');
    for (const input of [path('text.xlsx'), path('missing.xlsx'), folder]) {
      const { status, out, error } = await run(input, path('never.xlsx'));
      expect({ status, out }).toEqual({ status: 2, out: '' });
      expect(error).toMatch(/^[^\n]+$/);
      expect(error).toContain(input);
    }
    expect(readdirSync(folder)).not.toContain('never.xlsx');
  });

  test('what cannot be written is one line and exit status 2', async () => {
    const { status, error } = await run(path('same.xlsx'), path('no-folder/out.xlsx'));
    expect(status).toBe(2);
    expect(error).toMatch(/^out\.xlsx could not be written[^\n]+$/);
  });

  test('how it is used', async () => {
    const usage = { status: 2, out: '', error: FILL_USAGE };
    expect(await run()).toEqual(usage);
    expect(await run(path('same.xlsx'))).toEqual(usage);
    expect(await run('a', 'b', 'c')).toEqual(usage);
    expect(await run('--fast', 'a', 'b')).toEqual(usage);
    expect(await run('--help')).toEqual({ status: 0, out: FILL_USAGE, error: '' });
  });
});

describe('workbooks that another program made', () => {
  const fixtures = join(import.meta.dirname, '../workbook/fixtures');

  test.each(['as-saved.xlsx', 'office-suite.xlsx', 'prefixed.xlsx'])(
    '%s: everything has an answer, and a second time changes nothing',
    async (name) => {
      const first = await run(join(fixtures, name), path('first.xlsx'));
      expect(first).toMatchObject({ status: 0, error: '' });
      expect(first.out).toMatch(/not checked: 0\nerrors: 0$/);
      expect(await run('--check', path('first.xlsx'))).toMatchObject({ status: 0 });
    },
  );
});
