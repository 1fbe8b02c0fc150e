import { FunctionType } from '@univerjs/engine-formula';
import { afterAll, describe, expect, test } from 'vitest';
import { descriptions, storedName, typedName } from '../../src/engine/adapter.ts';
import { calculateBook } from '../../src/engine/calculate-book.ts';
import { createEngine, emptyBook } from '../../src/engine/engine.ts';
import { CellError } from '../../src/functions/calling/cell.ts';
import { fakeFunctions } from './fake-functions.ts';
import { book, sheet, valuesOf } from './small-book.ts';

const engine = createEngine(fakeFunctions);
engine.open(emptyBook(100, 20));
afterAll(() => engine.dispose());

/** What reaches the function: its arguments, and which of them were references. */
const reached = async (formula: string): Promise<unknown> => JSON.parse(String(await engine.evaluate(formula)));

describe('arguments typed into the formula', () => {
  test.each([
    ['JACKET.ECHO()', [], []],
    ['JACKET.ECHO(1,"a",TRUE)', [1, 'a', true], [false, false, false]],
    ['JACKET.ECHO("")', [''], [false]],
    ['JACKET.ECHO(1,,)', [1, null, null], [false, false, false]],
    [
      'JACKET.ECHO({1,2;3,4})',
      [
        [
          [1, 2],
          [3, 4],
        ],
      ],
      [false],
    ],
    ['JACKET.ECHO({5})', [5], [false]],
    ['JACKET.ECHO(1+1)', [2], [false]],
    ['JACKET.ECHO(#N/A)', [{ code: '#N/A', reason: '' }], [false]],
    ['JACKET.ECHO(JACKET.FAIL())', [{ code: '#N/A', reason: 'no answer; try another' }], [false]],
  ])('%s', async (formula, args, fromCells) => {
    expect(await reached(formula)).toEqual([args, fromCells]);
  });

  test('a LAMBDA is no value', async () => {
    expect(await reached('JACKET.ECHO(LAMBDA(x,x))')).toEqual([
      [{ code: '#VALUE!', reason: 'a LAMBDA is not a value; call it, or type a number' }],
      [false],
    ]);
  });
});

describe('references', () => {
  const cells = {
    A1: 1,
    A2: 'x',
    A3: true,
    A5: { error: '#DIV/0!' },
    B1: '=""',
    C1: '=JACKET.FAIL()',
    C2: '=JACKET.BARE()',
  };
  async function reachedFromSheet(...formulas: string[]): Promise<unknown[]> {
    const own = createEngine(fakeFunctions);
    const formulaCells = Object.fromEntries(formulas.map((formula, i) => [`H${i + 1}`, `=${formula}`]));
    const small = book([sheet('Data', { ...cells, ...formulaCells }), sheet('Two words', { A1: 7, A2: 8 })], {
      names: [{ name: 'sizes', text: 'Data!$A$1:$A$2' }],
      tables: [
        {
          name: 'Two',
          sheet: 'Two words',
          area: { firstRow: 1, firstColumn: 1, lastRow: 2, lastColumn: 1 },
          columns: ['7'],
          headerRows: 1,
          totalsRows: 0,
        },
      ],
    });
    const [result] = await calculateBook(own, small);
    own.dispose();
    const values = valuesOf(result!);
    return formulas.map((_, i) => JSON.parse(String(values[`H${i + 1}`])));
  }

  test('cells, ranges, blanks, texts, other sheets, names, tables', async () => {
    expect(
      await reachedFromSheet(
        'JACKET.ECHO(A1,A2,A3,A4,A5,B1)',
        'JACKET.ECHO(A1:B2,A1:A1)',
        "JACKET.ECHO('Two words'!A1,'Two words'!A1:A2)",
        'JACKET.ECHO(sizes,(A1),A1+1,-A1)',
        'JACKET.ECHO(Two[7])',
        'LET(a,A1,JACKET.ECHO(a))',
      ),
    ).toEqual([
      [
        [1, 'x', true, null, { code: '#DIV/0!', reason: '' }, ''],
        [true, true, true, true, true, true],
      ],
      [
        [
          [
            [1, ''],
            ['x', null],
          ],
          1,
        ],
        [true, true],
      ],
      [
        [7, [[7], [8]]],
        [true, true],
      ],
      [
        [[[1], ['x']], 1, 2, -1],
        [true, true, false, false],
      ],
      [[8], [true]],
      [[1], [true]],
    ]);
  });

  test('the reason of an error in a cell comes along', async () => {
    const own = createEngine(fakeFunctions);
    const [result] = await calculateBook(
      own,
      book([sheet('Data', { ...cells, D1: '=JACKET.REASON(C1)', D2: '=JACKET.REASON(C2)', D3: '=C1+1' })]),
    );
    own.dispose();
    expect(valuesOf(result!)).toMatchObject({
      D1: '#N/A no answer; try another',
      D2: '#NUM! ',
      D3: { error: '#N/A' },
    });
  });

  test('whole columns end at the last filled cell of the longest, whole rows too', async () => {
    expect(
      await reachedFromSheet('JACKET.ECHO(E:E,B:B)', 'JACKET.ECHO(A:B)', "JACKET.ECHO(5:5,'Two words'!1:1)"),
    ).toEqual([
      [
        [null, ''],
        [true, true],
      ],
      [
        [
          [
            [1, ''],
            ['x', null],
            [true, null],
            [null, null],
            [{ code: '#DIV/0!', reason: '' }, null],
          ],
        ],
        [true],
      ],
      [
        [{ code: '#DIV/0!', reason: '' }, 7],
        [true, true],
      ],
    ]);
  });
});

describe('answers', () => {
  test.each([
    ['JACKET.EMPTY()', ''],
    ['JACKET.TWICE(2)+1', 5],
    ['JACKET.TWICE({1,2})', [[2, 4]]],
    ['INDEX(JACKET.TABLE(),1,1)', 'name'],
    ['ISERROR(JACKET.FAIL())', true],
    ['IFERROR(JACKET.FAIL(),3)', 3],
    ['IFNA(JACKET.FAIL(),3)', 3],
    ['MAP({1;2},LAMBDA(x,JACKET.TWICE(x)))', [[2], [4]]],
  ])('%s', async (formula, value) => {
    expect(await engine.evaluate(formula)).toEqual(value);
  });

  test('a table of all kinds, blanks as empty texts', async () => {
    expect(await engine.evaluate('JACKET.TABLE()')).toEqual([
      ['name', 1.5],
      [true, ''],
      [new CellError('#VALUE!', 'a: is missing'), -2],
    ]);
  });

  test('an error keeps its reason through other formulas', async () => {
    const error = new CellError('#N/A', 'no answer; try another');
    expect(await engine.evaluate('JACKET.FAIL()')).toEqual(error);
    expect(await engine.evaluate('SUM(1,JACKET.FAIL())*2')).toEqual(error);
    expect(await engine.evaluate('LET(x,JACKET.FAIL(),x+1)')).toEqual(error);
  });
});

describe('names', () => {
  test.each(['JACKET.ECHO(1)', 'jacket.Echo(1)', '_xldudf_JACKET_ECHO(1)', '_XLDUDF_jacket_echo(1)'])(
    '%s',
    async (formula) => {
      expect(await reached(formula)).toEqual([[1], [false]]);
    },
  );

  test('of a function whose id is in small letters', () => {
    expect(typedName('area')).toBe('JACKET.AREA');
    expect(storedName('area')).toBe('_XLDUDF_JACKET_AREA');
  });

  test('any number of arguments reaches the function, which counts them itself', async () => {
    const many = Array.from({ length: 255 }, (_, i) => i).join(',');
    expect(((await reached(`JACKET.ECHO(${many})`)) as unknown[][])[0]).toHaveLength(255);
  });
});

test('texts for the list of functions', () => {
  const [echo] = descriptions(fakeFunctions);
  expect(echo).toEqual({
    functionName: 'JACKET.ECHO',
    functionType: FunctionType.User,
    description: 'What ECHO does',
    abstract: 'What ECHO does',
    functionParameter: [
      { name: 'first', detail: 'the first one', example: 'A1:A9', require: 1, repeat: 0 },
      { name: 'rest', detail: 'all others', example: '1', require: 0, repeat: 1 },
    ],
  });
});
