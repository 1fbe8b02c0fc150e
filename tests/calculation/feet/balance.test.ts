import { describe, expect, it } from 'vitest';
import { balance } from '../../../src/calculation/feet/balance.ts';
import type { Feet } from '../../../src/calculation/feet/points.ts';
import { expectFault, expectNear, known, NEGATIVE, ROUNDING } from '../kit.ts';

const FEET: Feet = [
  [-0.25, -0.12],
  [0.25, -0.12],
  [0, 0.18],
];

describe('balance', () => {
  it('is the mean of the feet for three readings that are alike', () => {
    const [x, y] = known(balance(FEET, [5, 5, 5]));
    expect(Math.abs(x)).toBeLessThan(1e-15);
    expectNear(y, -0.02, 1e-9);
  });

  it('is undone by a common factor, as of a scale in pounds', () => {
    const [x, y] = known(balance(FEET, [3, 4, 5]));
    const [x2, y2] = known(balance(FEET, [3 / 0.45359237, 4 / 0.45359237, 5 / 0.45359237]));
    expectNear(x2, x, ROUNDING);
    expectNear(y2, y, ROUNDING);
  });

  it('allows scales that show 0, and gives a foot that carries all', () => {
    expect(balance(FEET, [0, 7, 0])).toEqual(FEET[1]);
  });

  it('refuses readings that are all 0, below 0 or no number', () => {
    expectFault(balance(FEET, [0, 0, 0]), 'value', 'readings');
    for (const bad of NEGATIVE) expectFault(balance(FEET, [1, bad, 1]), 'value', 'readings');
    expectFault(balance([FEET[0], FEET[0], FEET[1]], [1, 1, 1]), 'value', 'feet');
    expectFault(balance(FEET, [1e308, 1e308, 1e308]), 'overflow');
  });
});
