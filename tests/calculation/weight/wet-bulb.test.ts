import { describe, expect, it } from 'vitest';
import { saturationPressure } from '../../../src/calculation/weight/saturation-pressure.ts';
import { WET_BULB_LIMITS, wetBulb } from '../../../src/calculation/weight/wet-bulb.ts';
import { expectNear, ROUNDING } from '../kit.ts';

/** Pressure of air [kPa]. */
const AIR = 101.325;

/** Kilograms of vapour per kilogram of dry air at a vapour pressure in kPa. 0.622 is the ratio of the molar masses. */
const moisture = (vapour: number): number => (0.622 * vapour) / (AIR - vapour);

/** The temperature up to `most` at which a rising function reaches 0, by halving. */
const rootOf = (f: (t: number) => number, most: number): number => {
  let [low, high] = [-40, most];
  for (let pass = 0; pass < 60; pass++) {
    const middle = (low + high) / 2;
    if (f(middle) < 0) low = middle;
    else high = middle;
  }
  return low;
};

/**
 * Wet bulb as the formula's author has it: r = rs(Twb) − 0.40224 g/(kg·K)·(T − Twb), with humidity as the ratio of the two moistures r/rs.
 * From memory: R. Stull, Meteorology for Scientists and Engineers.
 */
const byPsychrometer = (temperature: number, humidity: number): number => {
  const there = humidity * moisture(saturationPressure(temperature));
  return rootOf((t) => moisture(saturationPressure(t)) - 0.40224e-3 * (temperature - t) - there, temperature);
};

/**
 * Thermodynamic wet bulb, with humidity as the ratio of pressures:
 * W = ((2501 − 2.326·Twb)·Ws − 1.006·(T − Twb))/(2501 + 1.86·T − 4.186·Twb).
 * From memory: ASHRAE Handbook, Fundamentals, chapter Psychrometrics.
 */
const byEnthalpy = (temperature: number, humidity: number): number => {
  const there = moisture(humidity * saturationPressure(temperature));
  return rootOf(
    (t) =>
      ((2501 - 2.326 * t) * moisture(saturationPressure(t)) - 1.006 * (temperature - t)) /
        (2501 + 1.86 * temperature - 4.186 * t) -
      there,
    temperature,
  );
};

const HUMIDITIES = [0.2, 0.3, 0.4, 0.5, 0.6, 0.7, 0.8, 0.9, 0.95, 0.99];

describe('wetBulb', () => {
  it('is the published formula', () => {
    // Each coefficient as printed, in another arrangement; exact to rounding.
    for (const [t, h] of [
      [20, 50],
      [35, 5],
      [5, 99],
      [-3, 80],
    ] as const)
      expectNear(
        wetBulb(t, h / 100),
        t * Math.atan(0.151977 * (h + 8.313659) ** 0.5) +
          Math.atan(t + h) -
          Math.atan(h - 1.676331) +
          0.00391838 * h ** (3 / 2) * Math.atan(0.023101 * h) -
          4.686035,
        ROUNDING,
      );
  });

  it('is within its stated error of the psychrometer equation', () => {
    let [sum, count] = [0, 0];
    for (let t = 5; t <= 50; t += 2.5)
      for (const h of HUMIDITIES) {
        const error = wetBulb(t, h) - byPsychrometer(t, h);
        // Published: −1.0 to +0.65 °C (Stull 2011, abstract).
        expect(error, `${t} °C at ${h}`).toBeGreaterThanOrEqual(-1);
        expect(error, `${t} °C at ${h}`).toBeLessThanOrEqual(0.65);
        sum += Math.abs(error);
        count++;
      }
    // Published: mean absolute error below 0.3 °C (same place).
    expect(sum / count).toBeLessThan(0.3);
  });

  it('is within the same error of the thermodynamic wet bulb in the rooms where people work', () => {
    for (let t = 5; t <= 30; t += 2.5)
      for (const h of HUMIDITIES) {
        const error = wetBulb(t, h) - byEnthalpy(t, h);
        expect(error, `${t} °C at ${h}`).toBeGreaterThanOrEqual(-1);
        expect(error, `${t} °C at ${h}`).toBeLessThanOrEqual(0.65);
      }
  });

  it('rises with humidity and temperature', () => {
    for (let h = 0.1; h < 0.99; h += 0.05) {
      expect(wetBulb(20, h + 0.01)).toBeGreaterThan(wetBulb(20, h));
      expect(wetBulb(21, h)).toBeGreaterThan(wetBulb(20, h));
    }
  });

  it('states where it holds', () => {
    expect(WET_BULB_LIMITS).toEqual({ temperature: { from: -20, to: 50 }, humidity: { from: 0.05, to: 0.99 } });
  });
});
