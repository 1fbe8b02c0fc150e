/** Rules of other trades for water and plaster. Row numbers such as G-19 name the check value. */

import { describe, expect, it } from 'vitest';
import { consistency } from '../../src/calculation/mixing/consistency.ts';
import { mixVolume } from '../../src/calculation/mixing/mix-volume.ts';
import { water } from '../../src/calculation/mixing/water.ts';
import { waterRatio } from '../../src/calculation/mixing/water-ratio.ts';
import { expectNear, known, settings } from '../calculation/kit.ts';

const OUNCE = 0.45359237 / 16;
const CUBIC_INCH = 0.0254 ** 3;

describe('rule of a mould maker: water two thirds of the mould, plaster 1.5 times the water by mass', () => {
  it('G-19: a mould of 36.42187 cubic inches takes 13.52 oz of water and 20.28 oz of plaster', () => {
    const s = settings({ waterRatio: 1 / 1.5 });
    const plaster = (36.42187 * CUBIC_INCH) / known(mixVolume(1, s));
    // Published rule; 3 % as the row says: it is a rounded rule of thumb, and comes out 1 % above absolute volumes.
    expectNear(plaster, 20.28 * OUNCE, 0.03);
    expectNear(water(plaster, s), 13.52 * OUNCE, 0.03);
  });
});

describe('class table of a pottery', () => {
  it('G-20: 946 ml of water to 1248 g of plaster is a consistency of 76', () => {
    // Published; derived from the printed row to its three digits.
    expect(known(consistency(1.248, 0.946))).toBeCloseTo(75.8, 1);
  });
});

describe('definition of consistency in a supplier’s guide', () => {
  it('G-21: 1 kg of water to 1.5 kg of plaster is 67', () => {
    // Published, rounded to a whole number.
    expect(Math.round(known(consistency(1.5, 1)))).toBe(67);
  });
});

describe('dental textbook, chapter on gypsum materials', () => {
  it('G-22 and G-23: dental stone takes 25 to 35 g of water to 100 g', () => {
    // Published ranges that disagree: 25 to 30, 28 to 30, 30 to 35. Their union.
    const ratio = known(waterRatio('dental stone'));
    expect(ratio).toBeGreaterThanOrEqual(0.25);
    expect(ratio).toBeLessThanOrEqual(0.35);
  });
});
