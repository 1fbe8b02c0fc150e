/**
 * Each fault is shown twice: as shipped, and repaired. The shipped engine comes first, since one repair is for all engines of a process.
 */
import { describe, expect, test } from 'vitest';
import { calculateBook } from '../../src/engine/calculate-book.ts';
import { createEngine } from '../../src/engine/engine.ts';
import { monthsLater } from '../../src/engine/repairs/dates.ts';
import { fakeFunctions } from './fake-functions.ts';
import { book, type SmallCell, sheet, valuesOf } from './small-book.ts';

async function values(repaired: boolean, cells: Record<string, SmallCell>): Promise<Record<string, unknown>> {
  const engine = createEngine(fakeFunctions, { repaired });
  const [result] = await calculateBook(engine, book([sheet('Data', cells)]));
  engine.dispose();
  return valuesOf(result!);
}

const SORTED: Record<string, SmallCell> = {
  A1: 1,
  A2: 2,
  A3: 3,
  B1: { text: 'SORT(A1:A3,1,-1)', fills: 'dynamic' },
  C1: { text: 'A1:A3*2', fills: 'dynamic' },
};
const MONTH_END: Record<string, SmallCell> = {
  A1: '=EDATE(DATE(2023,1,31),1)',
  A2: '=DATE(2023,2,28)',
  A3: '=DATE(2023,3,3)',
};
const EMPTY_TEXT: Record<string, SmallCell> = {
  A1: '=JACKET.EMPTY()',
  B1: '=A1*2',
  B2: '=ISBLANK(A1)',
  B3: '=COUNTA(A1:A1)',
  B4: '=SUM(A1:A1)',
};

const COMPARED: Record<string, SmallCell> = {
  A1: '5',
  A2: 5,
  B1: '=COUNTIF(A1:A2,5)',
  B2: '=A1=5',
  B3: '=SUMPRODUCT(--(A1:A2=5))',
  C1: '=JACKET.EMPTY()',
  D1: '=C1>0',
  D2: '=C1=0',
  D3: '=C1<>0',
  E1: '=SUM(--(JACKET.TWICE({1;2;3})>3))+SUM(--(JACKET.TWICE({10;20;30})>3))',
  F1: '=SUM(--(SORT({1;2;3})>1))+SUM(--(SORT({10;20;30})>1))',
};

describe('as shipped', () => {
  test('comparisons depend on those before them', async () => {
    const shipped = await values(false, COMPARED);
    const right = { B2: false, B3: 1, D1: true, D2: false, D3: true, E1: 5, F1: 5 };
    expect(Object.keys(right).filter((key) => shipped[key] !== right[key as keyof typeof right])).toEqual([
      'B2',
      'B3',
      'D1',
      'D2',
      'D3',
      'E1',
      'F1',
    ]);
  });

  test('SORT turns the cells that it sorts for other formulas too', async () => {
    const { C1 } = await values(false, SORTED);
    expect(C1).toEqual([[6], [4], [2]]);
  });

  test('EDATE runs over the end of a month', async () => {
    const { A1, A3 } = await values(false, MONTH_END);
    expect(A1).toBe(A3);
  });

  test('an empty text is a blank cell', async () => {
    expect(await values(false, EMPTY_TEXT)).toMatchObject({ B1: 0, B2: true, B3: 0 });
  });
});

describe('repaired', () => {
  test('comparisons look at the values', async () => {
    // COUNTIF alone counts a text that reads as the number.
    expect(await values(true, COMPARED)).toEqual({
      B1: 2,
      B2: false,
      B3: 1,
      C1: '',
      D1: true,
      D2: false,
      D3: true,
      E1: 5,
      F1: 5,
    });
  });

  test('SORT sorts a copy', async () => {
    const { B1, C1 } = await values(true, SORTED);
    expect(B1).toEqual([[3], [2], [1]]);
    expect(C1).toEqual([[2], [4], [6]]);
  });

  test('EDATE stays within the month', async () => {
    const { A1, A2 } = await values(true, MONTH_END);
    expect(A1).toBe(A2);
  });

  test('EDATE on columns, blanks and errors', async () => {
    const cells = {
      A1: 45_322,
      A2: { error: '#N/A' },
      A3: 'x',
      B1: { text: 'EDATE(A1:A3,1)', fills: 'dynamic' as const },
      C1: '=EDATE(A4,0)',
      D1: '=EDATE(-1,1)',
      E1: '=EDATE(A1,-1200000)',
    };
    // 45322 is 31 January 2024, a leap year: 29 February is 45351.
    expect(await values(true, cells)).toEqual({
      B1: [[45_351], [{ error: '#N/A' }], [{ error: '#VALUE!' }]],
      C1: 0,
      D1: { error: '#NUM!' },
      E1: { error: '#NUM!' },
    });
  });

  test('an empty text is a text', async () => {
    expect(await values(true, EMPTY_TEXT)).toMatchObject({ B1: { error: '#VALUE!' }, B2: false, B3: 1, B4: 0 });
  });
});

describe('months later, as serial numbers of days', () => {
  test.each([
    // [start, months, result]; 1 is 1 January 1900, 59 is 28 February 1900, 61 is 1 March 1900.
    [1, 0, 1],
    [31, 1, 59],
    [1, 2, 61],
    [61, -1, 32],
    [45_322, 1, 45_351],
    [45_322, 13, 45_716],
    [45_351, -12, 44_985],
    [45_322.75, 1, 45_351],
  ])('%d and %i months', (start, months, result) => {
    expect(monthsLater(start, months)).toBe(result);
  });
});
