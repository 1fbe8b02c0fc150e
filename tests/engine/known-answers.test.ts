/**
 * Built-in formulas with known answers. They all stand in one workbook and are calculated together, since a fault of one function can spoil the cells
 * that another one reads.
 */

import { afterAll, expect, test } from 'vitest';
import type { SheetValue } from '../../src/engine/book.ts';
import { calculateBook } from '../../src/engine/calculate-book.ts';
import { createEngine } from '../../src/engine/engine.ts';
import { bookWith, FIRST_ROW, knownAnswers, STEP } from './known-answers.ts';

const engine = createEngine([]);
afterAll(() => engine.dispose());

const formulas = knownAnswers.map(({ formula }) => formula);
const [result] = await calculateBook(engine, bookWith(formulas));
const rowsAt = new Map(result!.calculated.map(({ cell, rows }) => [`${cell.row} ${cell.column}`, rows]));
const reasonAt = new Map(result!.notChecked.map(({ cell, reason }) => [`${cell.row} ${cell.column}`, reason]));
const placeOf = (index: number): string => `${FIRST_ROW + index * STEP} 1`;

/** Last digits that the order of additions decides, as a share of the number. Answers near 0 are compared by this alone. */
const ROUNDING = 1e-12;

const isSame = (a: SheetValue | undefined, b: SheetValue): boolean =>
  typeof a === 'number' && typeof b === 'number'
    ? Math.abs(a - b) <= ROUNDING * Math.max(1e-3, Math.abs(b))
    : JSON.stringify(a) === JSON.stringify(b);

/** Formulas that are on the list of what is not checked. All others must be right. */
const NOT_CHECKED = new Map([
  ['SUM((H1:H2,H4))', 'references joined by a comma are not understood here'],
  ['LET(f,LAMBDA(x,x+1),f(2))', 'F: a LAMBDA kept under a name cannot be called here'],
  ['LAMBDA(x,[y],IF(ISOMITTED(y),x,y))(4)', 'ISOMITTED: there is no such function here'],
]);

test('exactly the listed formulas are not checked', () => {
  const found = formulas.flatMap((formula, i) => {
    const reason = reasonAt.get(placeOf(i));
    return reason === undefined ? [] : [[formula, reason] as const];
  });
  expect(new Map(found)).toEqual(NOT_CHECKED);
});

test.each(knownAnswers.map((known, i) => ({ ...known, i })).filter(({ formula }) => !NOT_CHECKED.has(formula)))(
  '$area: $formula',
  ({ rows, i }) => {
    const got = rowsAt.get(placeOf(i)) ?? [];
    const isRight =
      got.length === rows.length &&
      rows.every((row, r) => got[r]!.length === row.length && row.every((value, c) => isSame(got[r]![c], value)));
    expect(isRight ? rows : got).toEqual(rows);
  },
);

test('there are enough of them, each once, and each has a second opinion', () => {
  expect(new Set(formulas).size).toBe(formulas.length);
  expect(formulas.length).toBeGreaterThan(400);
  for (const { formula, secondOpinion, note } of knownAnswers) {
    expect(secondOpinion, formula).toMatch(/^(?:agrees|cannot say|differs: .+)$/);
    if (secondOpinion.startsWith('differs')) expect(note, formula).not.toBe('');
  }
});
