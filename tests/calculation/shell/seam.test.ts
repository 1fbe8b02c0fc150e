import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { seam } from '../../../src/calculation/shell/seam.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';
import { perimeterByQuadrature } from '../size/quadrature.ts';

const size = fc.double({ min: 0.01, max: 10, noNaN: true });

describe('seam', () => {
  it('gives the example value', () => {
    expectNear(seam(0.6, 0.4, settings()), 1.626442186, EXAMPLE);
  });

  it('is the outline and one turn of the padding thickness', () => {
    expectNear(seam(0.6, 0.4, settings({ paddingThickness: 0 })), perimeterByQuadrature(0.3, 0.2), ROUNDING);
    for (const shape of ['box', 'cylinder'] as const) {
      expectNear(seam(0.6, 0.4, settings({ shape, paddingThickness: 0.01 })), 2 + 2 * Math.PI * 0.01, ROUNDING);
    }
  });

  it('does not mind the order, grows with both sizes, and scales with all lengths', () => {
    fc.assert(
      fc.property(size, size, fc.constantFrom('ellipsoid' as const, 'box' as const), (l, w, shape) => {
        const s = settings({ shape, paddingThickness: 0.005 });
        const p = known(seam(l, w, s));
        expect(seam(w, l, s)).toBe(p);
        expect(known(seam(l * 1.01, w, s))).toBeGreaterThan(p);
        expectNear(seam(3 * l, 3 * w, settings({ shape, paddingThickness: 0.015 })), 3 * p, ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('refuses sizes that are not above 0, and says when a result is too large', () => {
    expectPositiveArguments((l, w) => seam(l!, w!, settings()), [2, 1], ['length', 'width']);
    expectFault(seam(1e308, 1e308, settings()), 'overflow');
  });
});
