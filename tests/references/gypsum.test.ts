/** Gypsum: chemistry, densities of slurry and cast, porosity, strength. Row numbers such as G-10 name the check value. */

import { describe, expect, it } from 'vitest';
import { mixVolume } from '../../src/calculation/mixing/mix-volume.ts';
import { dryDensity, slurryVolume, wetDensity } from '../../src/calculation/mixing/slurry.ts';
import { water } from '../../src/calculation/mixing/water.ts';
import { waterRatio } from '../../src/calculation/mixing/water-ratio.ts';
import { DEFAULT_SETTINGS } from '../../src/calculation/settings.ts';
import { glassReinforcedStrength, porosity } from '../../src/calculation/strength/flexural-strength.ts';
import { freeWater, plasterInShell } from '../../src/calculation/weight/areal-mass.ts';
import { weight } from '../../src/calculation/weight/weight.ts';
import { wetWeight } from '../../src/calculation/weight/wet-weight.ts';
import { expectNear, known, settings } from '../calculation/kit.ts';

const POUND_PER_CUBIC_FOOT = 0.45359237 / 0.3048 ** 3;

/** A plain cast of 1 mm a layer: no cloth, no finish coat, no padding. */
const cast = (ratio: number) =>
  settings({ waterRatio: ratio, clothWeight: 0, finishCoat: 0, paddingThickness: 0, layerThickness: 0.001 });

/** Share of a wet cast that dries off. */
const dryingLoss = (ratio: number): number =>
  1 - known(weight(1, 10, 0, cast(ratio))) / known(wetWeight(1, 10, 0, cast(ratio)));

/** The water ratio whose cast has a density [kg/m³], for either hemihydrate [kg/m³]. */
const ratioOf = (dry: number, hemihydrate: number): number => (1.18618 / dry - 1 / hemihydrate) * 998;

describe('standard atomic weights, CIAAW', () => {
  // Derived from the abridged weights H 1.0080, O 15.999, S 32.06, Ca 40.078 (from memory; inside the published intervals).
  const HEMIHYDRATE = 40.078 + 32.06 + 4 * 15.999 + 0.5 * (2 * 1.008 + 15.999);
  const WATER = 2 * 1.008 + 15.999;
  const DIHYDRATE = 40.078 + 32.06 + 4 * 15.999 + 2 * WATER;

  it('G-03: combined water of hemihydrate, 18.618 g to 100 g', () => {
    const s = cast(0.38);
    const bound = 0.38 - freeWater(8, s) / plasterInShell(8, s);
    // 0.01 g to 100 g, as the intervals of the atomic weights allow.
    expect(Math.abs(bound * 100 - 18.618)).toBeLessThan(0.01);
    expect(Math.abs(bound * 100 - (150 * WATER) / HEMIHYDRATE)).toBeLessThan(0.01);
  });

  it('G-04: dihydrate from a kilogram of hemihydrate, 1.186180 kg', () => {
    // 1e-5, as the row says; the product function is the cast from one kilogram.
    expectNear(dryDensity(0.38) * slurryVolume(0.38), DIHYDRATE / HEMIHYDRATE, 1e-5);
    expectNear(dryDensity(0.38) * slurryVolume(0.38), 1.18618, 1e-5);
  });
});

describe('table of typical gypsum plasters and cements', () => {
  // Published: dry densities at five consistencies.
  it.each([
    ['G-10', 74, 1057],
    ['G-11', 70, 1106],
    ['G-12', 65, 1162],
    ['G-13', 45, 1442],
    ['G-14', 38, 1588],
  ])('%s: consistency %d, %d kg/m³ dry', (_row, consistency, printed) => {
    // 2.5 %: absolute volumes of two nominal hemihydrates against named products.
    expectNear(dryDensity(consistency / 100), printed, 0.025);
  });

  it('G-15: consistency 32, 1914 kg/m³, which can only be wet', () => {
    // Published as dry; a dry cast of that much water cannot be so heavy. 2.5 % as above.
    expectNear(wetDensity(0.32), 1914, 0.025);
    expect(dryDensity(0.32)).toBeLessThan(0.92 * 1914);
  });

  it('G-14: the default ratio of gypsum cement is a printed consistency', () => {
    expect(waterRatio('gypsum cement')).toBe(0.38);
  });

  it('G-11: so is that of casting plaster', () => {
    expect(waterRatio('casting plaster')).toBe(0.7);
  });

  // Derived: porosity fit to the published compressive strengths [kg/cm²], with P from the published densities; the form is from memory
  // (Ryshkewitch 1953).
  it.each([
    ['G-10', 1057, 127],
    ['G-11', 1106, 141],
    ['G-12', 1162, 170],
  ])('G-29 on %s: a cast of %d kg/m³ against one of 1588, as %d to 424', (_row, density, strength) => {
    const weaker = glassReinforcedStrength(ratioOf(density, 2630));
    const stronger = glassReinforcedStrength(ratioOf(1588, 2760));
    // 5 %, as the fit reproduces its points.
    expectNear(weaker / stronger, strength / 424, 0.05);
  });
});

describe('second trade chart', () => {
  it('G-16: consistency 70, 99 lb/ft³ wet', () => {
    // Published; 2 % as the row says.
    expectNear(wetDensity(0.7), 99 * POUND_PER_CUBIC_FOOT, 0.02);
  });
});

describe('model table of absolute volumes', () => {
  // Derived from the stated densities, to the digits printed: litres of slurry a kilogram, wet and dry density, porosity, kilograms of
  // plaster and of water in a litre, loss of wet mass. 1e-3 as the table says.
  it.each([
    [0.3, 0.6629, 1961.0, 1789.3, 0.2287, 1.5085, 0.4525, 0.0876],
    [0.4, 0.7631, 1834.6, 1554.4, 0.33, 1.3104, 0.5242, 0.1527],
    [0.45, 0.8132, 1783.0, 1458.6, 0.3713, 1.2297, 0.5534, 0.1819],
    [0.6, 0.9814, 1630.3, 1208.6, 0.479, 1.0189, 0.6114, 0.2586],
    [0.65, 1.0315, 1599.6, 1149.9, 0.5043, 0.9694, 0.6301, 0.2811],
    [0.7, 1.0816, 1571.7, 1096.7, 0.5273, 0.9245, 0.6472, 0.3022],
    [0.8, 1.1818, 1523.1, 1003.7, 0.5674, 0.8461, 0.6769, 0.341],
  ])('ratio %d', (ratio, litres, wet, dry, pores, plaster, waterInLitre, loss) => {
    const s = cast(ratio);
    expectNear(known(mixVolume(1, s)) * 1000, litres, 1e-3);
    expectNear(wetDensity(ratio), wet, 1e-3);
    expectNear(dryDensity(ratio), dry, 1e-3);
    expectNear(porosity(ratio), pores, 1e-3);
    expectNear(0.001 / known(mixVolume(1, s)), plaster, 1e-3);
    expectNear(water(plaster, s), waterInLitre, 1e-3);
    expectNear(dryingLoss(ratio), loss, 1e-3);
  });
});

describe('Architecture Civil Engineering Environment, doi 10.21307/acee-2019-037', () => {
  it('G-18: gypsum of 998 kg/m³ has 57.5 % of pores', () => {
    // Published; one percentage point as the row says.
    expect(Math.abs(100 * porosity(ratioOf(998, 2630)) - 57.5)).toBeLessThan(1);
  });
});

describe('Gypsum & Lime 13 (1954)', () => {
  it('G-30: saturated gypsum keeps about half of its strength', () => {
    // Published abstract: about a half, 0.4 to 0.6.
    expect(DEFAULT_SETTINGS.wetStrengthFactor).toBeGreaterThanOrEqual(0.4);
    expect(DEFAULT_SETTINGS.wetStrengthFactor).toBeLessThanOrEqual(0.6);
  });
});
