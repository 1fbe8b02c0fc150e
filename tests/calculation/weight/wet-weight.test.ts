import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { water } from '../../../src/calculation/mixing/water.ts';
import { plasterInShell } from '../../../src/calculation/weight/areal-mass.ts';
import { weight } from '../../../src/calculation/weight/weight.ts';
import { wetWeight } from '../../../src/calculation/weight/wet-weight.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, NEGATIVE, SEED, settings } from '../kit.ts';

const POUND = 0.45359237;
const SQUARE_FOOT = 0.3048 ** 2;
const positive = fc.double({ min: 0.01, max: 100, noNaN: true });

describe('wetWeight', () => {
  it('gives the example values', () => {
    expectNear(wetWeight(1, 8, 0, settings()), 25.52964468, EXAMPLE);
    expectNear(wetWeight(10 * SQUARE_FOOT, 8, 45 * POUND, settings()), 97.28883372 * POUND, EXAMPLE);
  });

  it('is the dry weight and the water that setting did not bind', () => {
    fc.assert(
      fc.property(positive, positive, positive, (a, n, m) => {
        const s = settings();
        const dry = plasterInShell(n, s) * a;
        const bound = 0.18618 * dry;
        const wet = known(weight(a, n, m, s)) + known(water(dry, s)) - bound;
        // A sum of masses of one size.
        expectNear(wetWeight(a, n, m, s), wet, 1e-12);
      }),
      { seed: SEED },
    );
  });

  it('is more than the dry weight', () => {
    expect(known(wetWeight(1, 8, 0, settings()))).toBeGreaterThan(known(weight(1, 8, 0, settings())));
  });

  it('refuses what cannot be, and says when a result is too large', () => {
    expectPositiveArguments((a, n) => wetWeight(a!, n!, 0, settings()), [1, 8], ['shell_area', 'layers']);
    for (const bad of NEGATIVE) expectFault(wetWeight(1, 8, bad, settings()), 'value', 'specimen');
    expectFault(wetWeight(1e308, 8, 0, settings()), 'overflow');
  });
});
