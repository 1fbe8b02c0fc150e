import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { dryDensity, slurryVolume, wetDensity } from '../../../src/calculation/mixing/slurry.ts';
import { expectNear, ROUNDING, SEED } from '../kit.ts';

describe('slurry', () => {
  it('adds the volumes of plaster and water', () => {
    expectNear(slurryVolume(0.38), 1 / 2760 + 0.38 / 998, ROUNDING);
    expectNear(slurryVolume(0.7), 1 / 2630 + 0.7 / 998, ROUNDING);
  });

  it('changes from alpha to beta hemihydrate at 0.5', () => {
    expectNear(slurryVolume(0.5), 1 / 2630 + 0.5 / 998, ROUNDING);
    expectNear(slurryVolume(0.4999), 1 / 2760 + 0.4999 / 998, ROUNDING);
  });

  it('dries to less than it was wet, by its free water', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.19, max: 2, noNaN: true }), (r) => {
        expect(dryDensity(r)).toBeLessThan(wetDensity(r));
        expectNear(wetDensity(r) - dryDensity(r), (r - 0.18618) / slurryVolume(r), 1e-9);
      }),
      { seed: SEED },
    );
  });
});
