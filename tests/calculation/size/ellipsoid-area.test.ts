import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ellipsoidArea } from '../../../src/calculation/size/ellipsoid-area.ts';
import { expectNear, ROUNDING, SEED } from '../kit.ts';
import { ellipsoidByQuadrature } from './quadrature.ts';

const ratio = fc.double({ min: 1e-3, max: 1, noNaN: true });

/** Surface of an oblate body, a = b > c, in closed form. */
const oblate = (a: number, c: number): number => {
  const e = Math.sqrt((1 - c / a) * (1 + c / a));
  return 2 * Math.PI * a * a * (1 + ((c / a) ** 2 * Math.atanh(e)) / e);
};

/** Surface of a prolate body, a = b < c, in closed form. */
const prolate = (a: number, c: number): number => {
  const e = Math.sqrt((1 - a / c) * (1 + a / c));
  return 2 * Math.PI * a * (a + (c * Math.asin(e)) / e);
};

describe('ellipsoidArea', () => {
  it('is a sphere, and both faces of a disc', () => {
    expectNear(ellipsoidArea(2, 2, 2), 16 * Math.PI, 1e-15);
    expectNear(ellipsoidArea(3, 2, 1e-300), 12 * Math.PI, 1e-15);
    // A needle: π²·a·b. Its next term is smaller by the square of its slenderness.
    expectNear(ellipsoidArea(1, 1e-9, 1e-9), Math.PI ** 2 * 1e-9, 1e-15);
    expectNear(ellipsoidArea(1e-200, 1, 1e-200), Math.PI ** 2 * 1e-200, 1e-15);
  });

  it('agrees with a double integral', () => {
    // Gauss and Legendre with 200 nodes has long converged at ratios up to 6:1; what is left is rounding.
    for (const [a, b, c] of [
      [3, 2, 1],
      [0.3, 0.2, 0.15],
      [1, 0.9, 0.2],
      [5, 1, 0.8],
    ] as const)
      expectNear(ellipsoidArea(a, b, c), ellipsoidByQuadrature(a, b, c), ROUNDING);
  });

  it('agrees with the closed forms of bodies of revolution up to 1000:1', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 0.9, noNaN: true }), (k) => {
        expectNear(ellipsoidArea(1, 1, k), oblate(1, k), ROUNDING);
        expectNear(ellipsoidArea(k, 1, k), prolate(k, 1), ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('is exact near a sphere, where closed forms lose their digits', () => {
    // To second order in small changes of the axes the surface is 4π·(1 + ⅔(x + y + z) + …); with x + y + z = 0 only squares are left.
    const d = 1e-9;
    expectNear(ellipsoidArea(1 + d, 1, 1 - d), 4 * Math.PI, 1e-15);
    expectNear(ellipsoidArea(1 + d, 1 + d, 1 + d), 4 * Math.PI * (1 + d) ** 2, 1e-15);
  });

  it('does not mind the order of the axes and scales with their square, up to 1000:1', () => {
    fc.assert(
      fc.property(ratio, ratio, fc.integer({ min: -40, max: 40 }), (b, c, power) => {
        const s = ellipsoidArea(1, b, c);
        for (const [x, y, z] of [
          [1, c, b],
          [b, 1, c],
          [b, c, 1],
          [c, 1, b],
          [c, b, 1],
        ] as const)
          expect(ellipsoidArea(x, y, z)).toBe(s);
        // A power of two changes no digit.
        const k = 2 ** power;
        expect(ellipsoidArea(k, k * b, k * c)).toBe(k * k * s);
      }),
      { seed: SEED },
    );
  });

  it('grows with each axis and lies between sphere and box', () => {
    fc.assert(
      fc.property(ratio, ratio, (b, c) => {
        const s = ellipsoidArea(1, b, c);
        expect(ellipsoidArea(1, b * 1.01, c)).toBeGreaterThan(s);
        expect(s).toBeLessThan(8 * (b + c + b * c));
        // No body of the same volume has less surface than a ball; rounding allowed.
        expect(s).toBeGreaterThanOrEqual(4 * Math.PI * Math.cbrt(b * c) ** 2 * (1 - ROUNDING));
      }),
      { seed: SEED },
    );
  });
});
