import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { shellArea, shellAreaOver } from '../../../src/calculation/shell/shell-area.ts';
import { area } from '../../../src/calculation/size/area.ts';
import { meanCurvature } from '../../../src/calculation/size/mean-curvature.ts';
import { volume } from '../../../src/calculation/size/volume.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

const SHAPES = ['ellipsoid', 'box', 'cylinder'] as const;
const size = fc.double({ min: 0.05, max: 5, noNaN: true });
const thin = fc.double({ min: 0, max: 0.05, noNaN: true });

describe('shellArea', () => {
  it('gives the example values', () => {
    expectNear(shellArea(0.6, 0.4, 0.3, settings()), 0.7923952088, EXAMPLE);
    expectNear(shellArea(24 * 0.0254, 16 * 0.0254, 12 * 0.0254, settings()), 8.763418158 * 0.3048 ** 2, EXAMPLE);
    expectNear(shellArea(0.6, 0.4, 0.3, settings({ shape: 'box', flange: 0.06 })), 1.399781656, EXAMPLE);
  });

  it('is the larger ball round a ball', () => {
    const padded = settings({ paddingThickness: 0.013, flange: 0 });
    expectNear(shellArea(0.2, 0.2, 0.2, padded), 4 * Math.PI * 0.113 ** 2, ROUNDING);
  });

  it('is the surface itself without padding and flange', () => {
    for (const shape of SHAPES) {
      const bare = settings({ shape, paddingThickness: 0, flange: 0, reliefFactor: 1.2 });
      expect(shellArea(0.6, 0.4, 0.3, bare)).toBe(area(0.6, 0.4, 0.3, bare));
    }
  });

  it('adds flanges as a parallel band round the seam', () => {
    const flanged = known(shellArea(0.2, 0.2, 0.2, settings({ paddingThickness: 0.01, flange: 0.05 })));
    const without = known(shellArea(0.2, 0.2, 0.2, settings({ paddingThickness: 0.01, flange: 0 })));
    // Round a ball both flanges are rings between radii 0.11 and 0.16.
    expectNear(flanged - without, 2 * Math.PI * (0.16 ** 2 - 0.11 ** 2), ROUNDING);
  });

  it('is how fast the volume of the padded body grows (Steiner)', () => {
    fc.assert(
      fc.property(size, size, size, thin, fc.constantFrom(...SHAPES), (l, w, h, t, shape) => {
        const s = settings({ shape, flange: 0, paddingThickness: t });
        const surface = known(area(l, w, h, s));
        const curvature = known(meanCurvature(l, w, h, s));
        const padded = (x: number): number =>
          known(volume(l, w, h, s)) + surface * x + curvature * x * x + (4 / 3) * Math.PI * x ** 3;
        const d = 1e-3;
        // A central difference of a cubic is off by exactly its third coefficient times d²; digits lost: 1e-16·V/(S·d).
        const slope = (padded(t + d) - padded(t - d)) / (2 * d) - (4 / 3) * Math.PI * d * d;
        expectNear(shellArea(l, w, h, s), slope, 1e-10);
      }),
      { seed: SEED },
    );
  });

  it('grows with each size, the padding and the flange, and does not mind the order', () => {
    fc.assert(
      fc.property(size, size, size, (l, w, h) => {
        const a = known(shellArea(l, w, h, settings()));
        for (const larger of [
          shellArea(l * 1.01, w, h, settings()),
          shellArea(l, w * 1.01, h, settings()),
          shellArea(l, w, h * 1.01, settings()),
          shellArea(l, w, h, settings({ paddingThickness: 0.01 })),
          shellArea(l, w, h, settings({ flange: 0.06 })),
        ])
          expect(known(larger)).toBeGreaterThan(a);
        expectNear(shellArea(w, l, h, settings()), a, ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('scales with all lengths', () => {
    fc.assert(
      fc.property(size, size, size, fc.constantFrom(...SHAPES), (l, w, h, shape) => {
        const small = shellArea(l, w, h, settings({ shape, paddingThickness: 0.006, flange: 0.05 }));
        const large = shellArea(2 * l, 2 * w, 2 * h, settings({ shape, paddingThickness: 0.012, flange: 0.1 }));
        expectNear(large, 4 * known(small), ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('refuses sizes that are not above 0, and says when a result is too large', () => {
    expectPositiveArguments((l, w, h) => shellArea(l!, w!, h!, settings()), [3, 2, 1], ['length', 'width', 'height']);
    expectFault(shellArea(1e308, 1e308, 1e308, settings()), 'overflow');
  });
});

describe('shellAreaOver', () => {
  it('moves the surface alone', () => {
    const s = settings();
    const surface = known(area(0.6, 0.4, 0.3, s));
    expect(shellAreaOver(surface, 0.6, 0.4, 0.3, s)).toBe(shellArea(0.6, 0.4, 0.3, s));
    const more = known(shellAreaOver(surface + 0.1, 0.6, 0.4, 0.3, s));
    expectNear(more - known(shellArea(0.6, 0.4, 0.3, s)), 0.1, ROUNDING);
  });

  it('does not multiply a given surface by the relief factor', () => {
    expect(shellAreaOver(0.5, 0.6, 0.4, 0.3, settings({ reliefFactor: 1.5 }))).toBe(
      shellAreaOver(0.5, 0.6, 0.4, 0.3, settings()),
    );
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments(
      (a, l, w, h) => shellAreaOver(a!, l!, w!, h!, settings()),
      [1, 3, 2, 1],
      ['surface_area', 'length', 'width', 'height'],
    );
    expectFault(shellAreaOver(1e308, 1e308, 1, 1, settings({ paddingThickness: 1e3 })), 'overflow');
  });
});
