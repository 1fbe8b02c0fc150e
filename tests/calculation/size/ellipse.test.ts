import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ellipsePerimeter } from '../../../src/calculation/size/ellipse.ts';
import { expectNear, ROUNDING, SEED } from '../kit.ts';
import { perimeterByQuadrature } from './quadrature.ts';

describe('ellipsePerimeter', () => {
  it('is a circle, and twice a line there and back', () => {
    expectNear(ellipsePerimeter(3, 3), 6 * Math.PI, 1e-15);
    expect(ellipsePerimeter(3, 0)).toBe(12);
    expect(ellipsePerimeter(3, 1e-300)).toBe(12);
    expect(ellipsePerimeter(1e-300, 3)).toBe(12);
  });

  it('agrees with the integral of the arc, up to 100:1', () => {
    const ratio = fc.double({ min: 0.01, max: 1, noNaN: true });
    const size = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(size, ratio, (a, b) => {
        // 20000 steps of a periodic function: exact to rounding of the sum.
        expectNear(ellipsePerimeter(a, a * b), perimeterByQuadrature(a, a * b), ROUNDING);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('lies between its bounds and does not mind the order', () => {
    const size = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(size, size, (a, b) => {
        const p = ellipsePerimeter(a, b);
        expect(p).toBe(ellipsePerimeter(b, a));
        // π(a + b) from below, 2π·√((a² + b²)/2) from above; rounding allowed at a circle.
        expect(p).toBeGreaterThanOrEqual(Math.PI * (a + b) * (1 - ROUNDING));
        expect(p).toBeLessThanOrEqual(2 * Math.PI * Math.hypot(a, b) * Math.SQRT1_2 * (1 + ROUNDING));
      }),
      { seed: SEED },
    );
  });
});
