import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weight } from '../../../src/calculation/weight/weight.ts';
import {
  EXAMPLE,
  expectFault,
  expectNear,
  expectPositiveArguments,
  known,
  NEGATIVE,
  ROUNDING,
  SEED,
  settings,
} from '../kit.ts';

const POUND = 0.45359237;
const SQUARE_FOOT = 0.3048 ** 2;
const positive = fc.double({ min: 0.01, max: 100, noNaN: true });

describe('weight', () => {
  it('gives the example values', () => {
    expectNear(weight(1, 8, 0, settings()), 22.30593945, EXAMPLE);
    expectNear(weight(1, 8, 20, settings()), 42.30593945, EXAMPLE);
    expectNear(weight(10 * SQUARE_FOOT, 8, 45 * POUND, settings()), 90.68616498 * POUND, EXAMPLE);
    expectNear(weight(1, 8, 0, settings({ padding: 'foam' })), 21.58035645, EXAMPLE);
    expectNear(weight(1, 8, 0, settings({ plaster: 'casting plaster' })), 16.13072861, EXAMPLE);
    expectNear(weight(1, 8, 0, settings({ calibration: 1.1 })), 24.27884971, EXAMPLE);
  });

  it('is in proportion to area, adds the specimen, and rises with layers', () => {
    fc.assert(
      fc.property(positive, positive, positive, (a, n, m) => {
        const s = settings();
        const empty = known(weight(a, n, 0, s));
        expectNear(weight(2 * a, n, 0, s), 2 * empty, ROUNDING);
        expectNear(weight(a, n, m, s), empty + m, ROUNDING);
        expect(known(weight(a, n * 1.01, 0, s))).toBeGreaterThan(empty);
      }),
      { seed: SEED },
    );
  });

  it('does not count the waste, which is not in the shell', () => {
    expect(weight(1, 8, 0, settings({ waste: 0.5 }))).toBe(weight(1, 8, 0, settings()));
  });

  it('refuses what cannot be, and says when a result is too large', () => {
    expectPositiveArguments((a, n) => weight(a!, n!, 0, settings()), [1, 8], ['shell_area', 'layers']);
    for (const bad of NEGATIVE) expectFault(weight(1, 8, bad, settings()), 'value', 'specimen');
    expectFault(weight(1e308, 8, 0, settings()), 'overflow');
    expectFault(weight(1e307, 3, Number.MAX_VALUE, settings()), 'overflow');
  });
});
