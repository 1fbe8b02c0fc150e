import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { balance } from '../../../src/calculation/feet/balance.ts';
import { footLoads, limits } from '../../../src/calculation/feet/foot-loads.ts';
import type { Feet, Point } from '../../../src/calculation/feet/points.ts';
import { EXAMPLE, expectFault, expectNear, known, NOT_POSITIVE, SEED } from '../kit.ts';

const FEET: Feet = [
  [-0.25, -0.12],
  [0.25, -0.12],
  [0, 0.18],
];

const share = fc.double({ min: 0.001, max: 1, noNaN: true });

describe('footLoads', () => {
  it('gives the example values', () => {
    const loads = known(footLoads(FEET, [0.02, 0.01], 40));
    for (const [i, expected] of [9.733333333, 12.93333333, 17.33333333].entries())
      expectNear(loads[i]!, expected, EXAMPLE);
  });

  it('adds up to the weight, balances its moments, and is undone by the balance of the scales', () => {
    fc.assert(
      fc.property(share, share, share, share, (p, q, r, weight) => {
        const sum = p + q + r;
        const at: Point = [
          (p * FEET[0][0] + q * FEET[1][0] + r * FEET[2][0]) / sum,
          (p * FEET[0][1] + q * FEET[1][1] + r * FEET[2][1]) / sum,
        ];
        const loads = known(footLoads(FEET, at, weight));
        // Loads are differences of products near their own size: a few digits are lost.
        expectNear(loads[0] + loads[1] + loads[2], weight, 1e-9);
        for (const axis of [0, 1] as const)
          expect(Math.abs(loads.reduce((m, load, i) => m + load * (FEET[i]![axis] - at[axis]), 0))).toBeLessThan(
            1e-9 * weight,
          );
        const [x, y] = known(balance(FEET, loads));
        expect(Math.hypot(x - at[0], y - at[1])).toBeLessThan(1e-9);
      }),
      { seed: SEED },
    );
  });

  it('has no answer outside of the feet, and 0 under a foot across from an edge', () => {
    expectFault(footLoads(FEET, [0, -0.121], 40), 'none');
    expect(known(footLoads(FEET, [0, -0.12], 40))[2]).toBe(0);
  });

  it('says that a balance point outside is doubtful', () => {
    expect(limits.every((l) => l.holds(FEET, [0, 0], 40))).toBe(true);
    expect(limits.every((l) => l.holds(FEET, [0, -0.15], 40))).toBe(false);
  });

  it('refuses feet in one line and weights that are not above 0', () => {
    expectFault(footLoads([FEET[0], FEET[0], FEET[1]], [0, 0], 40), 'value', 'feet');
    expectFault(footLoads(FEET, [Number.NaN, 0], 40), 'value', 'balance');
    for (const bad of NOT_POSITIVE) expectFault(footLoads(FEET, [0, 0], bad), 'value', 'total_weight');
  });
});
