import { afterAll, expect, test } from 'vitest';
import { LONGEST_TEXT, MOST_MADE_CELLS } from '../../src/engine/bounds.ts';
import { createEngine } from '../../src/engine/engine.ts';
import { CellError } from '../../src/functions/calling/cell.ts';
import { fakeFunctions } from './fake-functions.ts';

const engine = createEngine(fakeFunctions);
afterAll(() => engine.dispose());

/** The answer, or the code of its error. */
async function answer(formula: string): Promise<unknown> {
  const value = await engine.evaluate(formula);
  return value instanceof CellError ? value.code : value;
}

test('a text as long as a cell can hold, and one longer', async () => {
  expect(await answer(`LEN(REPT("a",${LONGEST_TEXT}))`)).toBe(LONGEST_TEXT);
  expect(await answer(`REPT("a",${LONGEST_TEXT})&"b"`)).toBe('#VALUE!');
  expect(await answer(`1&REPT("a",${LONGEST_TEXT})`)).toBe('#VALUE!');
});

test('tables that a single call makes', async () => {
  expect(await answer('MUNIT(2)')).toEqual([
    [1, 0],
    [0, 1],
  ]);
  expect(await answer('EXPAND({1,2},2,3,0)')).toEqual([
    [1, 2, 0],
    [0, 0, 0],
  ]);
  expect(await answer('MAKEARRAY(1,2,LAMBDA(r,c,r+c))')).toEqual([[2, 3]]);
  const side = Math.ceil(Math.sqrt(MOST_MADE_CELLS)) + 1;
  expect(await answer(`MUNIT(${side})`)).toBe('#NUM!');
  expect(await answer(`EXPAND({1},${MOST_MADE_CELLS},2)`)).toBe('#NUM!');
  expect(await answer(`MAKEARRAY(${side},${side},LAMBDA(r,c,1))`)).toBe('#NUM!');
});

test('a size that is none is for the function to say', async () => {
  expect(await answer('MUNIT("x")')).toBe('#VALUE!');
  expect(await answer('MUNIT(0)')).toBe('#VALUE!');
});
