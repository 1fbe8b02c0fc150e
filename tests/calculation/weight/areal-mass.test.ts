import { describe, expect, it } from 'vitest';
import { plaster } from '../../../src/calculation/mixing/plaster.ts';
import { dryArealMass, freeWater, plasterInShell, wetArealMass } from '../../../src/calculation/weight/areal-mass.ts';
import { expectNear, known, ROUNDING, settings } from '../kit.ts';

describe('areal mass', () => {
  it('holds the plaster of a square metre, without the waste', () => {
    for (const given of [{}, { calibration: 1.2 }, { plaster: 'casting plaster' as const, waste: 0.3 }]) {
      const s = settings(given);
      expectNear(plasterInShell(8, s) * (1 + s.waste), known(plaster(1, 8, s)), ROUNDING);
    }
  });

  it('is worked out by hand', () => {
    const s = settings({
      layerThickness: 0.002,
      clothWeight: 0.25,
      glassDensity: 2500,
      finishCoat: 0.001,
      waterRatio: 0.7,
      calibration: 1.1,
      paddingThickness: 0.01,
      paddingDensity: 40,
    });
    const dry = (0.0105 / (1 / 2630 + 0.7 / 998)) * 1.1;
    const other = 5 * 0.25 + 0.01 * 40;
    expectNear(plasterInShell(5, s), dry, ROUNDING);
    expectNear(dryArealMass(5, s), dry * 1.18618 + other, ROUNDING);
    expectNear(wetArealMass(5, s), dry * 1.7 + other, ROUNDING);
    expectNear(freeWater(5, s), dry * (0.7 - 0.18618), ROUNDING);
  });

  it('dries by its free water', () => {
    const s = settings();
    // The difference of two masses some eight times larger.
    expectNear(wetArealMass(8, s) - dryArealMass(8, s), freeWater(8, s), 1e-11);
    expect(freeWater(8, s)).toBeGreaterThan(0);
  });
});
