import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { area } from '../../../src/calculation/size/area.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';
import { ellipsoidByQuadrature, perimeterByQuadrature } from './quadrature.ts';

const SQUARE_FOOT = 0.3048 ** 2;
const size = fc.double({ min: 0.01, max: 10, noNaN: true });
const SHAPES = ['ellipsoid', 'box', 'cylinder'] as const;

describe('area', () => {
  it('gives the example values', () => {
    expectNear(area(0.6, 0.4, 0.3, settings()), 0.5781205375, EXAMPLE);
    expectNear(area(24 * 0.0254, 16 * 0.0254, 12 * 0.0254, settings({ shape: 'box' })), 12 * SQUARE_FOOT, EXAMPLE);
    expectNear(area(0.6, 0.2, 0.16, settings({ shape: 'cylinder' })), 0.3906054971, EXAMPLE);
    expectNear(area(0.6, 0.4, 0.3, settings({ reliefFactor: 1.3 })), 0.7515566988, EXAMPLE);
  });

  it('agrees with brute force', () => {
    expectNear(area(0.8, 0.5, 0.3, settings()), ellipsoidByQuadrature(0.4, 0.25, 0.15), ROUNDING);
    const cylinder = perimeterByQuadrature(0.25, 0.15) * 0.8 + 2 * Math.PI * 0.25 * 0.15;
    expectNear(area(0.8, 0.5, 0.3, settings({ shape: 'cylinder' })), cylinder, ROUNDING);
  });

  it('multiplies every shape by the relief factor', () => {
    for (const shape of SHAPES) {
      const smooth = known(area(0.6, 0.4, 0.3, settings({ shape })));
      expectNear(area(0.6, 0.4, 0.3, settings({ shape, reliefFactor: 1.25 })), 1.25 * smooth, ROUNDING);
    }
  });

  it('does not mind the order of sizes where the shape does not', () => {
    fc.assert(
      fc.property(size, size, size, (l, w, h) => {
        for (const shape of ['ellipsoid', 'box'] as const)
          expectNear(area(h, l, w, settings({ shape })), known(area(l, w, h, settings({ shape }))), ROUNDING);
        const cylinder = settings({ shape: 'cylinder' });
        expect(area(l, h, w, cylinder)).toBe(area(l, w, h, cylinder));
      }),
      { seed: SEED },
    );
  });

  it('grows with each size, and with the square of all three', () => {
    fc.assert(
      fc.property(size, size, size, fc.constantFrom(...SHAPES), (l, w, h, shape) => {
        const s = settings({ shape });
        const a = known(area(l, w, h, s));
        expect(known(area(l * 1.01, w, h, s))).toBeGreaterThan(a);
        expect(known(area(l, w * 1.01, h, s))).toBeGreaterThan(a);
        expect(known(area(l, w, h * 1.01, s))).toBeGreaterThan(a);
        expect(area(2 * l, 2 * w, 2 * h, s)).toBe(4 * a);
      }),
      { seed: SEED },
    );
  });

  it('takes a cylinder along its length', () => {
    const cylinder = settings({ shape: 'cylinder' });
    expect(area(0.6, 0.2, 0.2, cylinder)).not.toBe(area(0.2, 0.6, 0.2, cylinder));
    // A round one: π·d·l + π·d²/2.
    expectNear(area(0.6, 0.2, 0.2, cylinder), Math.PI * 0.2 * 0.6 + (Math.PI * 0.04) / 2, ROUNDING);
  });

  it('refuses sizes that are not above 0, and says when a result is too large', () => {
    for (const shape of SHAPES) {
      const s = settings({ shape });
      expectPositiveArguments((l, w, h) => area(l!, w!, h!, s), [3, 2, 1], ['length', 'width', 'height']);
      expectFault(area(1e308, 1e308, 1e308, s), 'overflow');
      expectFault(area(1e308, 1e308, 1e-308, s), 'overflow');
      expect(Number.isFinite(area(1e-308, 1e-308, 1e-308, s))).toBe(true);
      expect(Number.isFinite(area(1e300, 1e-300, 1e-300, s))).toBe(true);
    }
  });
});
