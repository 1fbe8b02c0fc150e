import { describe, expect, it } from 'vitest';
import { mixTemperature } from '../../../src/calculation/mixing/mix-temperature.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, settings } from '../kit.ts';

const rise = (waterRatio: number): number => known(mixTemperature(0, settings({ waterRatio })));

describe('mixTemperature', () => {
  it('gives the example value', () => {
    expectNear(mixTemperature(20, settings()), 76.35695598, EXAMPLE);
  });

  it('is worked out by hand for both kinds of hemihydrate', () => {
    expectNear(rise(0.7), 133 / (1.18618 * 1.0815 + 0.51382 * 4.184), ROUNDING);
    expectNear(rise(0.45), 118 / (1.18618 * 1.0815 + 0.26382 * 4.184), ROUNDING);
    expectNear(rise(0.5), 133 / (1.18618 * 1.0815 + 0.31382 * 4.184), ROUNDING);
  });

  it('adds the same rise to any start', () => {
    expectNear(known(mixTemperature(35, settings())) - 35, rise(0.38), ROUNDING);
    expectNear(known(mixTemperature(-10, settings())) + 10, rise(0.38), ROUNDING);
  });

  it('is lower the more water there is', () => {
    expect(rise(0.45)).toBeLessThan(rise(0.3));
    expect(rise(0.8)).toBeLessThan(rise(0.7));
  });

  it('refuses temperatures that nothing can have', () => {
    for (const t of [Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY, -273.15, -1e308])
      expectFault(mixTemperature(t, settings()), 'value', 'temperature');
    expectNear(mixTemperature(-273.1, settings()), -273.1 + rise(0.38), ROUNDING);
    // The line is drawn at absolute zero: a tenth of a degree above it is answered, a few degrees below it are not.
    expectFault(mixTemperature(-278, settings()), 'value', 'temperature');
    expect(known(mixTemperature(1e308, settings()))).toBe(1e308);
  });
});
