/**
 * Each repair is needed: the formulas named here go wrong in the engine as shipped. That they come out right with the repairs is what
 * known-answers.test.ts says of all formulas there.
 *
 * The shipped engine comes first, since some repairs are for all engines of a process.
 */
import { describe, expect, test } from 'vitest';
import type { SheetValue } from '../../src/engine/book.ts';
import { calculateBook } from '../../src/engine/calculate-book.ts';
import { createEngine } from '../../src/engine/engine.ts';
import { fakeFunctions } from './fake-functions.ts';
import { bookWith, FIRST_ROW, knownAnswers } from './known-answers.ts';
import { book, type SmallCell, sheet, valuesOf } from './small-book.ts';

async function values(repaired: boolean, cells: Record<string, SmallCell>): Promise<Record<string, unknown>> {
  const engine = createEngine(fakeFunctions, { repaired });
  const [result] = await calculateBook(engine, book([sheet('Data', cells)]));
  engine.dispose();
  return valuesOf(result!);
}

/** The values of a workbook, and of the same one opened again in the same engine. */
async function twice(repaired: boolean, cells: Record<string, SmallCell>): Promise<Record<string, unknown>[]> {
  const engine = createEngine([], { repaired });
  const [first] = await calculateBook(engine, book([sheet('Data', cells)]));
  const [second] = await calculateBook(engine, book([sheet('Data', cells)]));
  engine.dispose();
  return [valuesOf(first!), valuesOf(second!)];
}

/** Answers to formulas of the known answers, each calculated on its own: a fault of one spoils others. */
async function answersOf(formulas: readonly string[], repaired: boolean): Promise<Map<string, unknown>> {
  const answers = new Map<string, unknown>();
  const engine = createEngine([], { repaired });
  for (const formula of formulas) {
    const [result] = await calculateBook(engine, bookWith([formula]));
    const found = result!.calculated.find(({ cell }) => cell.row === FIRST_ROW && cell.column === 1);
    answers.set(formula, found?.rows);
  }
  engine.dispose();
  return answers;
}

const isClose = (a: unknown, b: SheetValue): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= 1e-12 * Math.max(1e-3, Math.abs(b))
    : JSON.stringify(a) === JSON.stringify(b);

function isRight(formula: string, answers: ReadonlyMap<string, unknown>): boolean {
  const known = knownAnswers.find((one) => one.formula === formula);
  if (known === undefined) throw new Error(`no known answer for ${formula}`);
  const rows = (answers.get(formula) ?? []) as unknown[][];
  return (
    rows.length === known.rows.length &&
    known.rows.every((row, r) => row.length === rows[r]!.length && row.every((v, c) => isClose(rows[r]![c], v)))
  );
}

/** Formulas that each repair is for. */
const NEEDED: Readonly<Record<string, readonly string[]>> = {
  arrays: ['{1,2,3}*{1,2}', 'COUNTA({"a,b";"c;d"})', 'INDEX({"a,b","c"},2)'],
  comparisons: ['L3="a?b"', 'SUM(--(L1:L5="a*b"))', '{1,2,3}={1,2}'],
  conditions: ['IF("abc",1,2)', 'IF(G6,1,2)', 'IF("false",1,2)', 'AND("abc",TRUE)', 'OR("abc",TRUE)', 'NOT("TRUE")'],
  convert: ['CONVERT(100,"F","C")', 'CONVERT({1,2},"in","cm")'],
  criteria: ['COUNTIF(G1:G10,"<>")', 'COUNTIF(G1:G10,"=")', 'COUNTIF(G1:G10,"*")', 'COUNTIF(L1:L5,"a~~b")'],
  'criteria beyond the sheet': ['COUNTIF(Shop!A:A,"<>lid")', 'MAXIFS(C2:C7,B2:B7,"white")'],
  dates: ['EDATE(DATE(2024,1,31),1)', 'DATE(1900,2,29)', 'DATE(1899,1,1)', 'DAY(60)', 'SECOND(0.00001)'],
  'dates and times beyond their ends': ['TIME(1,-30,0)', 'YEAR(2958466)'],
  lookups: ['XLOOKUP("a?b",L1:L5,L1:L5)', 'XLOOKUP("a*b",L2:L5,L2:L5,"none")'],
  numbers: ['AVERAGEA(G1:G4)', 'MEDIAN(G1:G4)', 'GEOMEAN(M1:M7)', 'SUMPRODUCT({1,2},{1,2,3})', 'UNIQUE(A2:A7)'],
  'texts as typed': ['ISTEXT("1-2")', 'ISTEXT("10%")'],
  references: ['INDEX(Items[Item],2)', 'SUM(N1#)', '@H3', 'ROWS(Z:Z)', 'shop!B2', 'SUM(data!H1:H2)'],
  tables: ['SUM(items[width])', 'COUNTA(Items[#All])', 'Items[[#Totals],[Width]]', 'SUM(Items[@Width])'],
  texts: [
    'SEARCH("n*n","banana")',
    '1/3&""',
    'CONCAT(H1:H2,TRUE)',
    'TEXT(1.005,"0.00")',
    'TEXT(TRUE,"0")',
    'CHAR(128)',
  ],
  'parts of texts': ['TEXTSPLIT(1.5,".")', 'ISTEXT(TEXTBEFORE("1-2","-"))', 'VALUE("(5)")', 'DOLLAR(1234.567)'],
};

const shippedAnswers = await answersOf(Object.values(NEEDED).flat(), false);

const SORTED: Record<string, SmallCell> = {
  A1: 1,
  A2: 2,
  A3: 3,
  B1: { text: 'SORT(A1:A3,1,-1)', fills: 'dynamic' },
  C1: { text: 'A1:A3*2', fills: 'dynamic' },
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
const NAMED: Record<string, SmallCell> = { A1: '=LET(x,2,x*3)', A2: '=LAMBDA(x,x+1)(2)' };

describe('as shipped', () => {
  test.each(Object.entries(NEEDED))('%s', (_, formulas) => {
    expect(formulas.filter((formula) => isRight(formula, shippedAnswers))).toEqual([]);
  });

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

  test('an empty text is a blank cell', async () => {
    expect(await values(false, EMPTY_TEXT)).toMatchObject({ B1: 0, B2: true, B3: 0 });
  });

  test('LET and LAMBDA answer in the first workbook alone', async () => {
    expect(await twice(false, NAMED)).toEqual([
      { A1: 6, A2: 3 },
      { A1: { error: '#VALUE!' }, A2: 1 },
    ]);
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

  test('LET and LAMBDA answer in every workbook', async () => {
    expect(await twice(true, NAMED)).toEqual([
      { A1: 6, A2: 3 },
      { A1: 6, A2: 3 },
    ]);
  });

  test('what references share, filled down with one of them fixed', async () => {
    const cells: Record<string, SmallCell> = { A1: 1, A2: 2, A3: 3, B1: 10, B2: 20, B3: 30 };
    for (const row of [1, 2, 3]) cells[`D${row}`] = { text: `$A$1:$B$3 A${row}:A${row}`, group: 'filled' };
    expect(await values(true, cells)).toEqual({ D1: 1, D2: 2, D3: 3 });
  });

  test('a link is a text that leads nowhere', async () => {
    const engine = createEngine([]);
    expect(await engine.evaluate('HYPERLINK("https://example.org","guide")')).toBe('guide');
    engine.dispose();
  });
});
