import { expect, test } from 'vitest';
import { takenNames } from '../../src/engine/taken-names.ts';
import { book, sheet } from './small-book.ts';

const names = ['Day', 'rate', 'Sum'].map((name) => ({ name, text: 'Data!$A$1' }));
const taken = (formula: string, more = names) => [
  ...takenNames(book([sheet('Data', { A1: formula })], { names: more })),
];

test('names that are called as functions', () => {
  expect(taken('=DAY(A2)+rate')).toEqual(['day']);
  expect(taken('=1', [{ name: 'Sum', text: 'SUM(Data!$A$1)' }])).toEqual(['sum']);
});

test('no call: the name alone, a text, a longer name', () => {
  expect(taken('=Day+rate*Sum')).toEqual([]);
  expect(taken('="day("&A2')).toEqual([]);
  expect(taken('=WEEKDAY(A2)')).toEqual([]);
  expect(taken('=DAY(A2)', [])).toEqual([]);
});
