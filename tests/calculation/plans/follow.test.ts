import { expect, test } from 'vitest';
import { follow, followBoth } from '../../../src/calculation/plans/follow.ts';
import { noAnswer } from '../../../src/calculation/result.ts';

const fault = noAnswer('no room');
const other = noAnswer('no weight');

test('a value goes into the next step, a fault goes on as it is', () => {
  expect(follow(2, (x) => x + 1)).toBe(3);
  expect(follow(fault, () => 1)).toBe(fault);
  expect(follow(2, () => fault)).toBe(fault);
});

test('of two faults the first goes on', () => {
  expect(followBoth(2, 3, (a, b) => a * b)).toBe(6);
  expect(followBoth(fault, other, () => 1)).toBe(fault);
  expect(followBoth(2, other, () => 1)).toBe(other);
});
