import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { girthBalance } from '../../../src/calculation/size/girth-balance.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED } from '../kit.ts';

/** Balance point of frusta cut into thin slices, each at its middle. */
const bySlices = (stations: number[], girths: number[], slices = 4000): number => {
  let [volume, moment] = [0, 0];
  for (let i = 1; i < stations.length; i++)
    for (let k = 0; k < slices; k++) {
      const share = (k + 0.5) / slices;
      const width = (stations[i]! - stations[i - 1]!) / slices;
      const section = (girths[i - 1]! + share * (girths[i]! - girths[i - 1]!)) ** 2;
      volume += section * width;
      moment += section * width * (stations[i - 1]! - stations[0]! + share * (stations[i]! - stations[i - 1]!));
    }
  return moment / volume;
};

describe('girthBalance', () => {
  it('gives the example values', () => {
    expectNear(girthBalance([0, 0.1, 0.4, 0.5], [0.4, 0.25, 0.25, 0.45]), 0.2595544554, EXAMPLE);
    expectNear(girthBalance([0, 0.3], [0, 0.4]), 0.225, ROUNDING);
  });

  it('agrees with thin slices', () => {
    // The middle rule on 4000 slices is off by the square of their width.
    expectNear(
      girthBalance([2, 2.1, 2.5, 2.9], [0.4, 0.2, 0.25, 0]),
      bySlices([2, 2.1, 2.5, 2.9], [0.4, 0.2, 0.25, 0]),
      1e-7,
    );
  });

  it('lies inside, mirrors with the bone, and follows its length alone', () => {
    const x = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(x, x, x, x, x, (a, b, c, p, q) => {
        const at = known(girthBalance([0, p, p + q], [a, b, c]));
        expect(at).toBeGreaterThan(0);
        expect(at).toBeLessThan(p + q);
        expectNear(girthBalance([0, q, p + q], [c, b, a]), p + q - at, 1e-11);
        expectNear(girthBalance([0, p, p + q], [3 * a, 3 * b, 3 * c]), at, ROUNDING);
        expectNear(girthBalance([0, 2 * p, 2 * (p + q)], [a, b, c]), 2 * at, ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('keeps its answer for extreme girths and lengths', () => {
    expectNear(girthBalance([0, 1e307], [1e308, 1e308]), 5e306, ROUNDING);
    expectNear(girthBalance([0, 1e-300], [1e-300, 1e-300]), 5e-301, ROUNDING);
  });

  it('refuses a chain that is wrong, and says when a result is too large', () => {
    expectFault(girthBalance([1, 0], [1, 1]), 'value', 'stations');
    expectFault(girthBalance([-1e308, 1e308], [1, 1]), 'overflow');
  });
});
