import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { volume } from '../../../src/calculation/size/volume.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

const SHAPES = ['ellipsoid', 'box', 'cylinder'] as const;
const size = fc.double({ min: 0.01, max: 10, noNaN: true });

describe('volume', () => {
  it('gives the example value', () => {
    // 24 × 16 × 12 in, in ft³.
    expectNear(volume(24 * 0.0254, 16 * 0.0254, 12 * 0.0254, settings()), 1.396263402 * 0.3048 ** 3, EXAMPLE);
  });

  it('is that of the solid', () => {
    expectNear(volume(0.2, 0.2, 0.2, settings()), (4 / 3) * Math.PI * 0.1 ** 3, ROUNDING);
    expectNear(volume(0.6, 0.4, 0.3, settings({ shape: 'box' })), 0.072, ROUNDING);
    expectNear(volume(0.6, 0.2, 0.16, settings({ shape: 'cylinder' })), 0.6 * Math.PI * 0.1 * 0.08, ROUNDING);
  });

  it('is largest for the box, least for the ellipsoid, and scales with the cube', () => {
    fc.assert(
      fc.property(size, size, size, (l, w, h) => {
        const [ellipsoid, box, cylinder] = SHAPES.map((shape) => known(volume(l, w, h, settings({ shape }))));
        expect(ellipsoid!).toBeLessThan(cylinder!);
        expect(cylinder!).toBeLessThan(box!);
        expect(volume(2 * l, 2 * w, 2 * h, settings())).toBe(8 * ellipsoid!);
      }),
      { seed: SEED },
    );
  });

  it('does not depend on the relief factor', () => {
    expect(volume(0.6, 0.4, 0.3, settings({ reliefFactor: 1.5 }))).toBe(volume(0.6, 0.4, 0.3, settings()));
  });

  it('refuses sizes that are not above 0, and says when a result is too large', () => {
    expectPositiveArguments((l, w, h) => volume(l!, w!, h!, settings()), [3, 2, 1], ['length', 'width', 'height']);
    expectFault(volume(1e308, 1e308, 1e308, settings()), 'overflow');
  });
});
