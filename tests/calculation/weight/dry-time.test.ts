import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Fault, isFault } from '../../../src/calculation/result.ts';
import { dryTime } from '../../../src/calculation/weight/dry-time.ts';
import { saturationPressure } from '../../../src/calculation/weight/saturation-pressure.ts';
import { weight } from '../../../src/calculation/weight/weight.ts';
import { wetBulb } from '../../../src/calculation/weight/wet-bulb.ts';
import { wetWeight } from '../../../src/calculation/weight/wet-weight.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

describe('dryTime', () => {
  it('gives the example values', () => {
    expectNear(dryTime(8, settings()), 57.31283256, EXAMPLE);
    expectNear(dryTime(8, settings({ plaster: 'casting plaster' })), 104.3808841, EXAMPLE);
    expectNear(dryTime(8, settings({ roomTemperature: 25, roomHumidity: 0.4 })), 38.21243685, EXAMPLE);
  });

  it('carries off what the wet jacket weighs more than the dry one', () => {
    const s = settings({ calibration: 1.2 });
    const kilograms = known(wetWeight(1, 8, 0, s)) - known(weight(1, 8, 0, s));
    const surface = wetBulb(20, 0.5);
    const perHour =
      ((saturationPressure(surface) - 0.5 * saturationPressure(20)) * 3600 * (0.089 + 0.0782 * 0.1)) /
      (2501 - 2.381 * surface);
    // The weights differ by an eighth of their size.
    expectNear(dryTime(8, s), kilograms / perHour, 1e-11);
  });

  it('is never less than a day', () => {
    expect(dryTime(0.1, settings())).toBe(24);
    expect(dryTime(4, settings({ airSpeed: 20, roomTemperature: 40, roomHumidity: 0.1 }))).toBe(24);
  });

  it('is longer with more layers and in damper, cooler or stiller air', () => {
    const usual = known(dryTime(8, settings()));
    for (const slower of [
      dryTime(9, settings()),
      dryTime(8, settings({ roomHumidity: 0.6 })),
      dryTime(8, settings({ roomTemperature: 15 })),
      dryTime(8, settings({ airSpeed: 0 })),
    ])
      expect(known(slower)).toBeGreaterThan(usual);
  });

  it('says so where nothing dries', () => {
    const fault = dryTime(8, settings({ roomTemperature: 5, roomHumidity: 0.99 }));
    expectFault(fault, 'none');
    expect((fault as Fault).problem).toBe('nothing dries in air this damp; lower the room humidity or warm the room');
  });

  it('answers a day or more, or a fault, for every room that settings allow', () => {
    const room = fc.record({
      roomTemperature: fc.double({ min: 1, max: 50, noNaN: true }),
      roomHumidity: fc.double({ min: 0.05, max: 0.99, noNaN: true }),
      airSpeed: fc.double({ min: 0, max: 10, noNaN: true }),
    });
    fc.assert(
      fc.property(room, (given) => {
        const hours = dryTime(8, settings(given));
        if (isFault(hours)) expect(given.roomHumidity).toBeGreaterThan(0.95);
        else expect(hours >= 24 && hours < Infinity).toBe(true);
      }),
      { seed: SEED },
    );
  });

  it('rises by the same for each layer', () => {
    const [a, b, c] = [8, 9, 10].map((n) => known(dryTime(n, settings())));
    expectNear(c! - b!, b! - a!, 1e-10);
    expectNear(b! - a!, (known(dryTime(17, settings())) - a!) / 9, ROUNDING * 100);
  });

  it('refuses layers that are not above 0, and says when a result is too large', () => {
    expectPositiveArguments((n) => dryTime(n!, settings()), [8], ['layers']);
    expectFault(dryTime(1e308, settings({ layerThickness: 0.01, calibration: 1000 })), 'overflow');
  });
});
