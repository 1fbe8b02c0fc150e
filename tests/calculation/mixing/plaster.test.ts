import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { plaster } from '../../../src/calculation/mixing/plaster.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
const POUND = 0.45359237;
const SQUARE_FOOT = 0.3048 ** 2;

describe('plaster', () => {
  it('gives the example values', () => {
    expectNear(plaster(1, 8, settings()), 18.29571642, EXAMPLE);
    expectNear(plaster(1, 8.5, settings()), 19.34667842, EXAMPLE);
    expectNear(plaster(10 * SQUARE_FOOT, 8, settings({ waste: 0.2 })), 40.87917908 * POUND, EXAMPLE);
  });

  it('is worked out by hand', () => {
    const s = settings({
      layerThickness: 0.002,
      clothWeight: 0.25,
      glassDensity: 2500,
      finishCoat: 0.001,
      waterRatio: 0.7,
      waste: 0.2,
      calibration: 1.1,
    });
    // 3 m² of 5·(2 − 0.1) + 1 = 10.5 mm is 31.5 L of slurry, of which a kilogram of plaster makes 1000/2630 + 700/998 L.
    expectNear(plaster(3, 5, s), (0.0315 / (1 / 2630 + 0.7 / 998)) * 1.2 * 1.1, ROUNDING);
  });

  it('is in proportion to area and calibration, and rises with layers by one layer each', () => {
    fc.assert(
      fc.property(positive, positive, positive, (a, n, k) => {
        const s = settings();
        const m = known(plaster(a, n, s));
        expectNear(plaster(a * k, n, s), k * m, ROUNDING);
        expectNear(plaster(a, n, settings({ calibration: 1.3 })), 1.3 * m, ROUNDING);
        // Each layer adds the same: what is lost in the difference is 1e-16 of the whole.
        const step = known(plaster(a, n + 1, s)) - m;
        expectNear(known(plaster(a, n + 2, s)) - m, 2 * step, 1e-11);
        expect(step).toBeGreaterThan(0);
      }),
      { seed: SEED },
    );
  });

  it('needs less plaster in a wetter mix of the same kind', () => {
    expect(known(plaster(1, 8, settings({ waterRatio: 0.45 })))).toBeLessThan(known(plaster(1, 8, settings())));
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a, n) => plaster(a!, n!, settings()), [1, 8], ['shell_area', 'layers']);
    expectFault(plaster(1e308, 1e308, settings()), 'overflow');
    expectFault(plaster(1e308, 8, settings()), 'overflow');
  });
});
