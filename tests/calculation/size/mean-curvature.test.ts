import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { meanCurvature } from '../../../src/calculation/size/mean-curvature.ts';
import { expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';
import { gaussLegendre, perimeterByQuadrature } from './quadrature.ts';

const SHAPES = ['ellipsoid', 'box', 'cylinder'] as const;
const ratio = fc.double({ min: 1e-3, max: 1, noNaN: true });

/** 2π × mean width: the integral of the support function √(a²nx² + b²ny² + c²nz²) over all directions. */
const byMeanWidth = (a: number, b: number, c: number): number => {
  const turns = 400;
  let sum = 0;
  for (const [z, weight] of gaussLegendre(200))
    for (let i = 0; i < turns; i++) {
      const u = (2 * Math.PI * i) / turns;
      const r = Math.sqrt(1 - z * z);
      sum += (weight * Math.hypot(a * r * Math.cos(u), b * r * Math.sin(u), c * z) * 2 * Math.PI) / turns;
    }
  return sum;
};

describe('meanCurvature', () => {
  it('is that of a ball, a box and a round cylinder', () => {
    expectNear(meanCurvature(0.2, 0.2, 0.2, settings()), 4 * Math.PI * 0.1, ROUNDING);
    expectNear(meanCurvature(0.6, 0.4, 0.2, settings({ shape: 'box' })), 1.2 * Math.PI, ROUNDING);
    // πh + π²r
    expectNear(
      meanCurvature(0.5, 0.2, 0.2, settings({ shape: 'cylinder' })),
      0.5 * Math.PI + Math.PI ** 2 * 0.1,
      ROUNDING,
    );
    const oval = 0.5 * Math.PI + (Math.PI / 2) * perimeterByQuadrature(0.1, 0.06);
    expectNear(meanCurvature(0.5, 0.2, 0.12, settings({ shape: 'cylinder' })), oval, ROUNDING);
  });

  it('agrees with the mean width of an ellipsoid by brute force', () => {
    // 200 Gauss nodes have converged at these ratios; what is left is rounding.
    expectNear(meanCurvature(0.8, 0.5, 0.3, settings()), byMeanWidth(0.4, 0.25, 0.15), ROUNDING);
    expectNear(meanCurvature(0.3, 2, 1, settings()), byMeanWidth(0.15, 1, 0.5), ROUNDING);
  });

  it('keeps its value at extreme ratios', () => {
    // A needle: π·length, by its mean width. A disc: π²·radius.
    expectNear(meanCurvature(2, 1e-200, 1e-200, settings()), 2 * Math.PI, ROUNDING);
    expectNear(meanCurvature(2, 2, 1e-200, settings()), Math.PI ** 2, ROUNDING);
    expectNear(meanCurvature(1e-300, 1e-300, 1e-300, settings()), 4 * Math.PI * 0.5e-300, ROUNDING);
    expectNear(meanCurvature(1e300, 1e300, 1e300, settings()), 4 * Math.PI * 0.5e300, ROUNDING);
  });

  it('does not mind the order of axes, and grows with each', () => {
    fc.assert(
      fc.property(ratio, ratio, (b, c) => {
        const m = known(meanCurvature(1, b, c, settings()));
        expect(meanCurvature(c, 1, b, settings())).toBe(m);
        expect(meanCurvature(b, c, 1, settings())).toBe(m);
        expect(known(meanCurvature(1, b * 1.01, c, settings()))).toBeGreaterThan(m);
      }),
      { seed: SEED },
    );
  });

  it('refuses sizes that are not above 0, and says when a result is too large', () => {
    for (const shape of SHAPES) {
      const s = settings({ shape });
      expectPositiveArguments((l, w, h) => meanCurvature(l!, w!, h!, s), [3, 2, 1], ['length', 'width', 'height']);
      expectFault(meanCurvature(Number.MAX_VALUE, Number.MAX_VALUE, Number.MAX_VALUE, s), 'overflow');
    }
  });
});
