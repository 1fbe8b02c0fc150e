import { describe, expect, test } from 'vitest';
import type { Book } from '../../src/engine/book.ts';
import { calculateBook, type SheetResult } from '../../src/engine/calculate-book.ts';
import { createEngine } from '../../src/engine/engine.ts';
import { fakeFunctions } from './fake-functions.ts';
import { book, keptOf, type SmallCell, sheet, valuesOf } from './small-book.ts';

async function calculate(of: Book): Promise<SheetResult[]> {
  const engine = createEngine(fakeFunctions);
  const results = await calculateBook(engine, of);
  engine.dispose();
  return results;
}

const one = async (cells: Record<string, SmallCell>, more: Partial<Book> = {}): Promise<SheetResult> =>
  (await calculate(book([sheet('Data', cells)], more)))[0]!;

const area = (firstRow: number, firstColumn: number, lastRow: number, lastColumn: number) => ({
  firstRow,
  firstColumn,
  lastRow,
  lastColumn,
});

describe('values', () => {
  test('across sheets, in the order in which they depend on each other', async () => {
    const results = await calculate(
      book([
        sheet('Data', { A1: '=Other!B1*2', B1: 3, C1: true, D1: '=C1', E1: 'x', F1: '=E1&"y"', G1: '=H9' }),
        sheet('Other', { A1: 4, B1: '=A1+Data!B1' }),
      ]),
    );
    expect(results.map(valuesOf)).toEqual([{ A1: 14, D1: true, F1: 'xy', G1: 0 }, { B1: 7 }]);
  });

  test('references far beyond the last filled cell', async () => {
    expect(valuesOf(await one({ A1: '=SUM(A2:A90000)', A2: 1, B1: '=ZZ1+1' }))).toEqual({ A1: 1, B1: 1 });
  });

  test('an error with the reason of the function that gave it', async () => {
    const { calculated } = await one({ A1: '=JACKET.FAIL()', A2: '=1/0' });
    expect(calculated).toMatchObject([
      { rows: [[{ error: '#N/A' }]], reason: 'no answer; try another' },
      { rows: [[{ error: '#DIV/0!' }]] },
    ]);
    expect(calculated[1]).not.toHaveProperty('reason');
  });
});

describe('filled-down formulas', () => {
  // Each row must see its own cells, whether the file says that the column is one formula or the engine finds it.
  const rows = [1, 2, 3, 4, 5];
  const cells = (formula: (row: number) => SmallCell): Record<string, SmallCell> => ({
    C1: 10,
    ...Object.fromEntries(rows.flatMap((row) => [[`A${row}`, row] as const, [`B${row}`, formula(row)] as const])),
  });
  const expected = Object.fromEntries(rows.map((row) => [`B${row}`, row * 10 + row]));

  test('found', async () => {
    expect(valuesOf(await one(cells((row) => `=A${row}*C$1+A${row}`)))).toEqual(expected);
  });

  test('marked in the file', async () => {
    expect(valuesOf(await one(cells((row) => ({ text: `A${row}*C$1+A${row}`, group: '0' }))))).toEqual(expected);
  });

  test('the first one kept as it is, the others calculated', async () => {
    const result = await one({
      ...cells((row) => `=A${row}+D${row}`),
      D1: { text: 'B1', value: 0 },
      B1: { text: 'A1+D1', value: 7 },
    });
    expect(keptOf(result)).toMatchObject({ B1: expect.stringContaining('its own cell') });
    expect(valuesOf(result)).toEqual({ B2: 2, B3: 3, B4: 4, B5: 5 });
  });
});

describe('formulas that fill several cells', () => {
  test('grow and shrink, and the old values are no obstacle', async () => {
    const result = await one({
      A1: 4,
      B1: { text: 'SEQUENCE(A1)', fills: 'dynamic', area: area(1, 2, 2, 2) },
      B2: 99,
      C1: '=SUM(B1:B9)',
      D1: { text: 'SEQUENCE(2)', fills: 'dynamic', area: area(1, 4, 3, 4) },
      D2: 99,
      D3: 99,
      E1: '=D3',
    });
    expect(valuesOf(result)).toEqual({ B1: [[1], [2], [3], [4]], C1: 10, D1: [[1], [2]], E1: 0 });
  });

  test('in a chain, each reading a cell that the one before fills', async () => {
    const cells: Record<string, SmallCell> = { A1: { text: 'SEQUENCE(3)', fills: 'dynamic' } };
    for (const [from, to] of ['AB', 'BC', 'CD', 'DE'].map((pair) => [pair[0]!, pair[1]!]))
      cells[`${to}1`] = { text: `SEQUENCE(${from}3)`, fills: 'dynamic' };
    cells.F1 = '=E3';
    expect(valuesOf(await one(cells))).toMatchObject({ E1: [[1], [2], [3]], F1: 3 });
  });

  test('stopped by a filled cell', async () => {
    const { calculated } = await one({ A1: { text: 'SEQUENCE(3)', fills: 'dynamic' }, A3: 'here' });
    expect(calculated).toMatchObject([
      { rows: [[{ error: '#SPILL!' }]], reason: 'the cells that the answer would fill are not empty' },
    ]);
  });

  test('typed over an area: cut, repeated, and #N/A where nothing is left', async () => {
    const fills = 'area' as const;
    const result = await one({
      A1: 1,
      A2: 2,
      A3: 3,
      B1: { text: 'A1:A3*2', fills, area: area(1, 2, 2, 2) },
      B2: 0,
      C1: { text: 'SUM(A1:A3*2)', fills, area: area(1, 3, 1, 3) },
      D1: { text: 'A1:A2', fills, area: area(1, 4, 3, 5) },
      F1: { text: 'A1:A3', fills, area: area(1, 6, 1, 6) },
      G1: '=E2',
    });
    expect(valuesOf(result)).toEqual({
      B1: [[2], [4]],
      C1: 12,
      D1: [
        [1, 1],
        [2, 2],
        [{ error: '#N/A' }, { error: '#N/A' }],
      ],
      F1: 1,
      G1: 2,
    });
  });

  test('a formula kept for one cell is not spilled', async () => {
    const result = await one({ A1: 1, A2: 2, B1: { text: 'SEQUENCE(2)', value: 1 }, C1: '=B1+B2' });
    expect(keptOf(result).B1).toMatch(/^the answer fills several cells, but the file keeps the formula for one/);
    expect(valuesOf(result)).toEqual({ C1: 1 });
  });

  test('a formula kept for one cell that works on a range value by value', async () => {
    const cells = {
      A1: 1,
      A2: 2,
      B1: { text: 'SUM(A1:A2*2)', value: 2 },
      C1: { text: 'SUM(A1:A2*2)', fills: 'dynamic' as const },
    };
    const result = await one(cells);
    expect(keptOf(result)).toEqual({
      B1: 'the formula is not kept as an array, so a spreadsheet program takes one cell of A1:A2; enter it again in the spreadsheet program',
    });
    expect(valuesOf(result)).toEqual({ C1: 6 });
  });
});

describe('tables', () => {
  const cells: Record<string, SmallCell> = {
    B1: 'length',
    C1: 'out',
    B2: 1,
    B3: 2,
    C2: '=T[[#This Row],[length]]*10',
    C3: '=T[[#This Row],[length]]*10',
    E1: '=SUM(T[out])',
    E2: '=ROWS(T)',
    E3: '=T[[#Headers],[out]]',
    E4: '=SUM(T[[length]:[out]])',
    E5: '=COUNTA(T[#All])',
  };
  const table = { name: 'T', sheet: 'Data', columns: ['length', 'out'], headerRows: 1, totalsRows: 0 };

  test('columns, headings, the row of the cell', async () => {
    const result = await one(cells, { tables: [{ ...table, area: area(1, 2, 3, 3) }] });
    expect(valuesOf(result)).toEqual({ C2: 10, C3: 20, E1: 30, E2: 2, E3: 'out', E4: 33, E5: 6 });
  });

  test('with a totals row', async () => {
    const totals = { ...cells, B4: 'total', C4: 999, E6: '=T[[#Totals],[out]]' };
    const result = await one(totals, { tables: [{ ...table, area: area(1, 2, 4, 3), totalsRows: 1 }] });
    expect(valuesOf(result)).toMatchObject({ E1: 30, E2: 2, E5: 8, E6: 999 });
    expect(keptOf(result)).toEqual({});
  });

  test('without headings', async () => {
    const { B1: _, C1: __, ...rows } = cells;
    const result = await one(rows, { tables: [{ ...table, area: area(2, 2, 3, 3), headerRows: 0 }] });
    expect(valuesOf(result)).toEqual({ C2: 10, C3: 20, E1: 30, E2: 2, E4: 33, E5: 4 });
    expect(keptOf(result)).toEqual({ E3: 'the table T shows no headings' });
  });

  test('a column that is not there, and a name in other letters', async () => {
    const result = await one(
      { ...cells, E6: '=SUM(T[nope])', E7: '=SUM(t[OUT])', E8: '=SUM(T[#Totals])' },
      { tables: [{ ...table, area: area(1, 2, 3, 3) }] },
    );
    expect(keptOf(result)).toEqual({
      E6: 'the table has no column nope',
      E8: 'the table T has no totals row',
    });
    expect(valuesOf(result)).toMatchObject({ E7: 30 });
  });

  test('no table, and a column without one', async () => {
    const result = await one(
      { A1: '=SUM(Nope[out])', C2: '=[length]*10' },
      { tables: [{ ...table, area: area(1, 2, 3, 3) }] },
    );
    expect(keptOf(result)).toEqual({
      A1: 'there is no table Nope',
      C2: 'a column without the name of its table is not understood here',
    });
  });
});

test('days counted from 1904: what knows the calendar is kept, by way of a name too', async () => {
  const cells = { A1: 44_624, B1: '=A1+30', C1: '=YEAR(A1)', D1: '=born+1', E1: '=SUM(A1:B1)' };
  const names = [{ name: 'born', text: 'DAY(Data!$A$1)' }];
  const reason = 'this workbook counts days from 1904, which is not understood here';
  const result = await one(cells, { names, date1904: true });
  expect(valuesOf(result)).toEqual({ B1: 44_654, E1: 89_278 });
  expect(keptOf(result)).toEqual({ C1: `YEAR: ${reason}`, D1: `the name born: DAY: ${reason}` });
  expect(keptOf(await one(cells, { names }))).toEqual({});
});

test('names: values, calculations, ranges, other names', async () => {
  const result = await one(
    {
      A1: 1,
      A2: 2,
      B1: '=rate*2',
      B2: '=SUM(CELLS)',
      B3: '=twice+1',
      B4: '=-rate',
      B5: '=JACKET.HEIGHT(cells)',
      B6: '=missing',
    },
    {
      names: [
        { name: 'rate', text: '1+2' },
        { name: 'cells', text: 'Data!$A$1:$A$2' },
        { name: 'twice', text: 'rate*2' },
      ],
    },
  );
  expect(valuesOf(result)).toEqual({ B1: 6, B2: 3, B3: 7, B4: -3, B5: 2, B6: { error: '#NAME?' } });
});

describe('formulas that are not checked keep their value, and others use it', () => {
  test.each([
    ['NOW()', 'NOW: the answer changes with time or place, so it is kept as it was'],
    ['SUM((C1,C2))', 'references joined by a comma are not understood here'],
    ['OTHER.FUNCTION(1)', 'OTHER.FUNCTION: there is no such function here'],
    ['1+', 'the formula cannot be read: the end of the formula is missing'],
    ['nowhere!A1', 'there is no sheet nowhere'],
    ['clock', 'the name clock: NOW: the answer changes with time or place, so it is kept as it was'],
    ['loop', 'the name loop: the name loop refers to itself'],
    ['twin', 'the name twin means different things on different sheets, which is not understood here'],
    ['elsewhere', 'the name elsewhere belongs to another sheet'],
    ['Data!clock', 'the name clock with a sheet in front of it is not understood here'],
  ])('%s', async (text, reason) => {
    const result = await one(
      { A1: { text, value: 5 }, B1: '=A1+1' },
      {
        names: [
          { name: 'clock', text: 'NOW()' },
          { name: 'loop', text: 'loop+1' },
          { name: 'twin', text: '1', sheet: 'Data' },
          { name: 'twin', text: '2' },
          { name: 'elsewhere', text: '1', sheet: 'Other' },
        ],
      },
    );
    expect(keptOf(result)).toEqual({ A1: reason });
    expect(valuesOf(result)).toEqual({ B1: 6 });
  });

  test('the cells that such a formula filled', async () => {
    const result = await one({
      A1: { text: 'RANDARRAY(2)', fills: 'dynamic', area: area(1, 1, 2, 1), value: 0.25 },
      A2: 0.5,
      B1: '=A1+A2',
    });
    expect(valuesOf(result)).toEqual({ B1: 0.75 });
  });

  test('circles, however long, and nothing beside them', async () => {
    const result = await one({
      A1: { text: 'B1+1', value: 7 },
      B1: { text: 'C1+1', value: 8 },
      C1: { text: 'SUM(A1:A2)', value: 9 },
      D1: { text: 'D1', value: 1 },
      E1: '=B1*2',
      F1: '=E1+G1',
      G1: 1,
    });
    expect(Object.keys(keptOf(result))).toEqual(['A1', 'B1', 'C1', 'D1']);
    expect(valuesOf(result)).toEqual({ E1: 16, F1: 17 });
  });
});

test('one engine calculates one workbook after the other', async () => {
  const engine = createEngine(fakeFunctions);
  const [first] = await calculateBook(
    engine,
    book([sheet('Data', { A1: { text: 'SEQUENCE(2)', fills: 'dynamic' }, B1: '=A2' })]),
  );
  const [second] = await calculateBook(engine, book([sheet('Data', { A1: 5, B1: '=A2' })]));
  engine.dispose();
  expect([valuesOf(first!), valuesOf(second!)]).toEqual([{ A1: [[1], [2]], B1: 2 }, { B1: 0 }]);
});

test('progress is told', async () => {
  const engine = createEngine([]);
  const cells = Object.fromEntries(Array.from({ length: 1200 }, (_, i) => [`A${i + 1}`, `=${i}+0`]));
  const told: [number, number][] = [];
  await calculateBook(engine, book([sheet('Data', cells)]), (done, all) => told.push([done, all]));
  engine.dispose();
  expect(told.at(-1)![1]).toBe(1200);
  expect(told.some(([done]) => done > 500 && done < 1200)).toBe(true);
});

test('a name that a function has too leaves the function alone', async () => {
  const names = [{ name: 'day', text: 'DAY(Data!$A$1)' }];
  const result = await one({ A1: 44_624, B1: '=DAY(A1)', C1: '=day+1' }, { names });
  // 44,624 is 4 March 2022.
  expect(valuesOf(result)).toEqual({ B1: 4 });
  expect(keptOf(result)).toEqual({ C1: 'the name day is that of a function too, which is not understood here' });
});

test('formulas that no spreadsheet program would take are kept', async () => {
  const deep = `${'('.repeat(65)}1${')'.repeat(65)}`;
  const result = await one({ A1: `=${deep}`, B1: `=1${'+1'.repeat(4096)}`, C1: `=${deep.slice(1, -1)}` });
  expect(keptOf(result)).toEqual({
    A1: 'the formula has more than 64 brackets inside each other',
    B1: 'the formula is longer than 8192 characters',
  });
  expect(valuesOf(result)).toEqual({ C1: 1 });
});

test('an exception inside the engine is heard of', async () => {
  const thrown = {
    ...fakeFunctions[0]!,
    id: 'THROWS',
    call: () => {
      throw new Error('thrown');
    },
  };
  const engine = createEngine([thrown]);
  await expect(calculateBook(engine, book([sheet('Data', { A1: '=JACKET.THROWS(1)' })]))).rejects.toThrow('thrown');
  engine.dispose();
});

test('references and areas of more cells than can be walked through are kept', async () => {
  const more = 'holds more than 10 million cells, which is more than is looked at here';
  const result = await one({
    A1: '=SUM(B:XFD)',
    A2: '=SUM(B1:XFD1048576)',
    A3: { text: '1', fills: 'area', area: area(3, 1, 1_048_576, 16_384) },
    A4: '=SUM(B:Z)+SUM(5:9)',
  });
  expect(keptOf(result)).toEqual({
    A1: `B:XFD ${more}`,
    A2: `B1:XFD1048576 ${more}`,
    A3: 'the area of the formula has more than 1 million cells, which is more than is filled here',
  });
  expect(valuesOf(result)).toEqual({ A4: 0 });
});
