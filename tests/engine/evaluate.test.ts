import { expect, test } from 'vitest';
import { evaluateAll } from '../../src/engine/evaluate.ts';
import { CellError } from '../../src/functions/calling/cell.ts';
import { fakeFunctions } from './fake-functions.ts';

const evaluate = async (formula: string) => (await evaluateAll(fakeFunctions, [formula]))[0];

test.each([
  ['1+1', 2],
  ['= 1+1', 2],
  ['jacket.twice(4)', 8],
  ['1=1', true],
  ['"a"&1', 'a1'],
  ['A1', 0],
  ['XFD1048576', 0],
  [
    'A1:B2',
    [
      [0, 0],
      [0, 0],
    ],
  ],
  ['JACKET.ECHO(A1)', '[[null],[true]]'],
  ["'Sheet1'!A1", 0],
  ['sheet1!A1', 0],
  ['1e3', 1000],
  ['-"3"', -3],
  [
    '{1,2;3,4}',
    [
      [1, 2],
      [3, 4],
    ],
  ],
  ['LET(x,2,SEQUENCE(x))', [[1], [2]]],
])('%s has a value', async (formula, answer) => {
  expect(await evaluate(formula)).toEqual({ formula, answer });
});

test.each([
  ['JACKET.FAIL()', '#N/A', 'no answer; try another'],
  ['JACKET.TWISE(1)', '#NAME?', 'there is no function JACKET.TWISE; did you mean JACKET.TWICE?'],
  ['FOO(1)', '#NAME?', 'there is no function FOO'],
  ['rate*2', '#NAME?', 'there is no name rate on an empty sheet'],
  ['1/0', '#DIV/0!', 'something is divided by 0'],
  ['SUM()', '#N/A', 'a value is not available, or a function has too few or too many arguments'],
  ['Data!A1', '#REF!', 'there is no sheet Data; here is only Sheet1'],
  ['FILTER({1;2},{0;0})', '#CALC!', 'the table would have no cells'],
])('%s is an error with its reason', async (formula, code, reason) => {
  expect(await evaluate(formula)).toEqual({ formula, answer: new CellError(code as CellError['code'], reason) });
});

test.each([
  ['1+', 'the end of the formula is missing'],
  ['{1,,2}', 'an array cannot leave a value out, at «,», character 4'],
  ['(A1,B2)', 'references joined by a comma are not understood here'],
])('%s cannot be read', async (formula, reason) => {
  expect(await evaluate(formula)).toEqual({ formula, unreadable: reason });
});

test('an answer that may differ from a spreadsheet program has a doubt', async () => {
  expect(await evaluate('NOW()')).toMatchObject({
    doubt: 'NOW: the answer changes with time or place, so it is kept as it was',
  });
});

test('many formulas, each on its own', async () => {
  const results = await evaluateAll(fakeFunctions, ['1', '1+', 'JACKET.BARE()', '2']);
  expect(results).toMatchObject([
    { answer: 1 },
    { unreadable: expect.any(String) },
    { answer: { code: '#NUM!' } },
    { answer: 2 },
  ]);
});

test.each(['LAMBDA(x,x(x))(LAMBDA(x,x(x)))', `${'LET(x,1,'.repeat(60)}x${')'.repeat(60)}`])(
  'the engine reads %.30s with an exception: it cannot be read',
  async (formula) => {
    expect(await evaluate(formula)).toEqual({ formula, unreadable: expect.any(String) });
  },
);

test('a formula beyond all limits cannot be read', async () => {
  expect(await evaluate('SUM(A:XFD)')).toEqual({
    formula: 'SUM(A:XFD)',
    unreadable: 'A:XFD holds more than 10 million cells, which is more than is looked at here',
  });
});
