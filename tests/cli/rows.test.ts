import {
  existsSync,
  linkSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { CsvReader } from '../../src/cli/csv.ts';
import { cellOf } from '../../src/cli/csv-cells.ts';
import { ROWS_USAGE, rows } from '../../src/cli/rows.ts';
import { type Cell, isCellError, type OutCell } from '../../src/functions/calling/cell.ts';
import collection from '../../src/functions/collection.ts';

let folder = '';
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), 'jacket-rows-'));
});
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const path = (name: string): string => join(folder, name);
const put = (name: string, content: string | Uint8Array): string => {
  writeFileSync(path(name), content);
  return path(name);
};
const run = async (...args: string[]) => {
  const said: Record<'out' | 'error' | 'progress', string[]> = { out: [], error: [], progress: [] };
  const status = await rows(args, {
    out: (text) => said.out.push(text),
    error: (text) => said.error.push(text),
    progress: (text) => said.progress.push(text),
  });
  return { status, ...said };
};
const records = (file: string): string[][] => {
  const reader = new CsvReader();
  return [...reader.push(readFileSync(file, 'utf8')), ...reader.end()];
};
const NAMES = 'no,length,width,height,weight';

describe('a file of specimens', () => {
  const TABLE: Cell[][] = [
    ['no', 'length', 'width', 'height', 'weight', 'padding', 'fragile'],
    ['A1', 60, 40, 30, 20, null, null],
    ['A2', 120, 40, 30, 50, 'foam', true],
    ['A3', 60, 'wide', 30, 20, null, null],
    [null, null, null, null, null, null, null],
    ['A5', 1.5, 1, 0.8, 0.01, 'felt', false],
  ];
  const text = TABLE.map((row) => row.map((cell) => cell ?? '').join(',')).join('\n');

  test.each([[[]], [['--settings', 'us']]])('comes out as COLLECTION gives it, %j', async (more) => {
    const { status, out } = await run(put('in.csv', text), path('out.csv'), ...more);
    expect([status, ...out]).toEqual([0, 'rows: 5\nblank: 1\nwith a note: 1']);
    const expected = collection.call([TABLE, more[1] ?? null]) as OutCell[][];
    const plain = expected.map((row) => row.map((cell) => (isCellError(cell) ? cell.code : cell === '' ? null : cell)));
    const made = records(path('out.csv')).map((fields) => fields.map(cellOf));
    expect(made.map((row) => row.map((cell) => (isCellError(cell) ? cell.code : cell)))).toEqual(plain);
  });

  test('takes settings from a file, such as what SETTINGS shows', async () => {
    const shop = put('shop.csv', 'setting,value,unit\r\nunits,us\r\nwaste,0.2,fraction\r\nfoot size,,\r\n');
    const { status } = await run(put('in.csv', text), path('out.csv'), '--settings', shop);
    const expected = collection.call([
      TABLE,
      [
        ['units', 'us'],
        ['waste', 0.2],
      ],
    ]) as OutCell[][];
    expect(status).toBe(0);
    expect(Number(records(path('out.csv'))[1]![4])).toBe(expected[1]![4]);
  });
});

test('what identifies a specimen comes out as it went in, guarded where it would be a formula', async () => {
  const file = put('ids.csv', `007,"a, ""b""",${NAMES.slice(3)}\n007,=1+1,60,40,30,20\n-5,+49 x,60,40,30,20\n`);
  await run(file, path('out.csv'));
  expect(records(path('out.csv')).map((fields) => fields.slice(0, 2))).toEqual([
    ['007', 'a, "b"'],
    ['007', "'=1+1"],
    ['-5', "'+49 x"],
  ]);
});

test('without names the first row is a specimen too', async () => {
  const { out } = await run(put('plain.csv', '60,40,30,20\n120,40,30,50,foam\n'), path('out.csv'));
  expect(out).toEqual(['rows: 2\nblank: 0\nwith a note: 1']);
  expect(records(path('out.csv'))).toHaveLength(3);
});

test('a row with more fields than names is not read at all, since a decimal comma would move its numbers', async () => {
  await run(put('comma.csv', `${NAMES}\n1,60,5,40,30,20\n2,60,40,30,20,\n`), path('out.csv'));
  const [, one, two] = records(path('out.csv'));
  expect([one![2], one!.at(-1)]).toEqual([
    '#VALUE!',
    'the row has 6 fields, the first one has 5; put a text with a comma in quotation marks, and type numbers with a decimal point',
  ]);
  expect(two!.at(-1)).toBe('');
});

test('a mark of byte order is no part of the first name', async () => {
  await run(put('bom.csv', `\uFEFFlength,width,height,weight\n60,40,30,20\n`), path('out.csv'));
  expect(records(path('out.csv'))).toHaveLength(2);
});

test('many rows show how far they are', async () => {
  const many = `${NAMES}\n${'1,60,40,30,20\n'.repeat(12_000)}`;
  const { progress, out } = await run(put('many.csv', many), path('out.csv'));
  expect(out[0]).toContain('rows: 12000');
  expect(progress.length).toBeGreaterThanOrEqual(2);
  expect(progress[0]).toMatch(/^\d+ rows so far$/);
});

describe('files that cannot be read or written: status 2, one line, and nothing is left behind', () => {
  const good = `${NAMES}\n1,60,40,30,20\n`;
  test.each<[string, () => string[], string]>([
    ['not there', () => [path('nowhere.csv'), path('o.csv')], '/nowhere.csv is not there.'],
    ['a folder', () => [folder, path('o.csv')], 'is a folder; name a file.'],
    [
      'not UTF-8',
      () => [put('latin.csv', Uint8Array.of(108, 228, 10)), path('o.csv')],
      '/latin.csv is not plain text in UTF-8; save it as comma-separated values in UTF-8.',
    ],
    ['empty', () => [put('empty.csv', ''), path('o.csv')], '/empty.csv is empty; give rows of specimens.'],
    [
      'no such columns',
      () => [put('other.csv', 'a,b\n1,2\n'), path('o.csv')],
      '/other.csv: table has no column named length; name the columns length, width, height and weight.',
    ],
    [
      'semicolons',
      () => [put('semi.csv', 'no;length;width\n1;2;3\n'), path('o.csv')],
      '/semi.csv: semicolons part the fields; save it with commas between them and with decimal points.',
    ],
    [
      'an open quotation mark',
      () => [put('open.csv', `${good}"2,60\n`), path('o.csv')],
      '/open.csv, line 3: a quotation mark is not closed; close it, or double it where it is part of the text.',
    ],
    [
      'settings with an unknown name',
      () => [put('in.csv', good), path('o.csv'), '--settings', put('bad.csv', 'wast,0.2\n')],
      '/bad.csv: settings: "wast" is not a setting; did you mean waste?',
    ],
    [
      'settings not there',
      () => [put('in.csv', good), path('o.csv'), '--settings', path('none.csv')],
      '/none.csv is not there.',
    ],
    [
      'no folder to write to',
      () => [put('in.csv', good), path('none/o.csv')],
      'o.csv could not be written: its folder does not exist. Make the folder first.',
    ],
    [
      'a folder in the way',
      () => {
        mkdirSync(path('way'), { recursive: true });
        return [put('in.csv', good), path('way')];
      },
      'way could not be written: a folder has that name. Choose another name.',
    ],
    [
      'the same file',
      () => [put('in.csv', good), path('in.csv')],
      '/in.csv is the file that is read; name another file to write to.',
    ],
    [
      'the same file by another name',
      () => {
        put('in.csv', good);
        if (!existsSync(path('link.csv'))) linkSync(path('in.csv'), path('link.csv'));
        return [path('in.csv'), path('link.csv')];
      },
      '/link.csv is the file that is read; name another file to write to.',
    ],
    ['nothing named', () => [], ROWS_USAGE],
    ['an unknown option', () => ['a', 'b', '--fast'], ROWS_USAGE],
  ])('%s', async (_, args, message) => {
    const { status, error, out } = await run(...args());
    expect([status, out]).toEqual([2, []]);
    expect(error).toHaveLength(1);
    expect(error[0]!.endsWith(message), error[0]).toBe(true);
    expect(readdirSync(folder).filter((name) => name.endsWith('.part') || name === 'o.csv')).toEqual([]);
  });
});

test('a run that fails leaves the old file as it was', async () => {
  put('old.csv', 'old');
  await run(put('open.csv', `${NAMES}\n"1,60\n`), path('old.csv'));
  expect(readFileSync(path('old.csv'), 'utf8')).toBe('old');
});

test('help is no fault', async () => {
  expect(await run('--help')).toMatchObject({ status: 0, out: [ROWS_USAGE] });
});
