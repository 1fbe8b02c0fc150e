import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { LiftSystem } from '../../../src/calculation/handling/lift-constants.ts';
import { type Lift, liftLimit, liftMultipliers, limits } from '../../../src/calculation/handling/lift-limit.ts';

const LIFT: Lift = { reach: 40, height: 70, travel: 50, twist: 30, rate: 1, hours: 1, grip: 'fair' };

describe('liftLimit', () => {
  // Values of an independent calculation, compared to 1e-6 relative as printed there.
  it.each([
    { change: {}, system: 'metric', limit: 10.40172495 },
    { change: { reach: 16, height: 28, travel: 20 }, system: 'us', limit: 23.06469445 },
    { change: { reach: 63 }, system: 'metric', limit: 6.604269808 },
    { change: { reach: 64 }, system: 'metric', limit: 0 },
    { change: { twist: 135 }, system: 'metric', limit: 6.535597091 },
    { change: { rate: 2.5, hours: 8, grip: 'poor' }, system: 'metric', limit: 6.289956855 },
  ] as const)('$system with $change: $limit', ({ change, system, limit }) => {
    const got = liftLimit({ ...LIFT, ...change }, system) as number;
    expect(Math.abs(got - limit)).toBeLessThanOrEqual(1e-6 * limit);
  });

  it('is the hand calculation: 23 · 25/40 · 0.985 · 0.91 · 0.904 · 0.94 · 0.95', () => {
    // Floating point only.
    expect(liftLimit(LIFT, 'metric')).toBeCloseTo(23 * (25 / 40) * 0.985 * 0.91 * 0.904 * 0.94 * 0.95, 12);
  });

  it('takes hands at the very knuckle height as high, for frequency and grip', () => {
    const at = (height: number, system: LiftSystem) => liftMultipliers({ ...LIFT, height, rate: 13 }, system);
    expect(at(75, 'metric')).toMatchObject({ rate: 0.34, grip: 1, height: 1 });
    expect(at(74.999, 'metric')).toMatchObject({ rate: 0, grip: 0.95 });
    expect(liftMultipliers({ ...LIFT, reach: 10, height: 30, rate: 13 }, 'us')).toMatchObject({ rate: 0.34, grip: 1 });
    expect(liftMultipliers({ ...LIFT, reach: 10, height: 29.99, rate: 13 }, 'us')).toMatchObject({
      rate: 0,
      grip: 0.95,
    });
  });

  it('allows a height, travel, twist and rate of 0', () => {
    // From the floor, nothing else: 1 − 0.003·75, floating point only.
    const lift = { ...LIFT, reach: 25, height: 0, travel: 0, twist: 0, rate: 0, grip: 'good' } as const;
    expect(liftLimit(lift, 'metric')).toBeCloseTo(23 * 0.775, 12);
  });

  it.each(['reach', 'height', 'travel', 'twist', 'rate', 'hours'] as const)(
    'refuses an impossible %s and names it',
    (field) => {
      for (const bad of [Number.NaN, Infinity, -Infinity, -1])
        expect(liftLimit({ ...LIFT, [field]: bad }, 'metric')).toMatchObject({ code: 'value', field });
    },
  );

  it.each(['reach', 'hours'] as const)('refuses a %s of 0', (field) => {
    expect(liftLimit({ ...LIFT, [field]: 0 }, 'metric')).toMatchObject({ code: 'value', field });
  });

  it('refuses more than 8 hours even where the limit would be 0', () => {
    expect(liftLimit({ ...LIFT, reach: 200, hours: 9 }, 'metric')).toMatchObject({ code: 'value', field: 'hours' });
  });

  it('stays between 0 and the load constant, and never rises with reach, travel, twist or rate', () => {
    const size = fc.double({ min: 0.1, max: 200, noNaN: true });
    const twist = fc.double({ min: 0, max: 180, noNaN: true });
    const rate = fc.double({ min: 0, max: 20, noNaN: true });
    const grip = fc.constantFrom('good' as const, 'fair' as const, 'poor' as const);
    const lift = fc.record({
      reach: size,
      height: size,
      travel: size,
      twist,
      rate,
      hours: fc.constantFrom(1, 2, 8),
      grip,
    });
    fc.assert(
      fc.property(lift, fc.constantFrom('reach', 'travel', 'twist', 'rate'), (easy, harder) => {
        const limit = liftLimit(easy, 'metric') as number;
        const less = liftLimit({ ...easy, [harder]: easy[harder as 'reach'] * 1.1 }, 'metric') as number;
        expect(limit).toBeGreaterThanOrEqual(0);
        expect(limit).toBeLessThanOrEqual(23);
        // Floating point only: where the multiplier stays the same.
        expect(less).toBeLessThanOrEqual(limit * (1 + 1e-12));
      }),
      { seed: 1702, numRuns: 500 },
    );
  });

  it('gives nearly the same answer in both systems away from the steps', () => {
    const cm = 2.54;
    const lift = fc.record({
      reach: fc.double({ min: 11, max: 24.5, noNaN: true }),
      height: fc.double({ min: 0, max: 29, noNaN: true }),
      travel: fc.double({ min: 11, max: 68, noNaN: true }),
      twist: fc.double({ min: 0, max: 135, noNaN: true }),
    });
    fc.assert(
      fc.property(lift, (given) => {
        const inches: Lift = { ...LIFT, ...given };
        const metric: Lift = {
          ...inches,
          reach: given.reach * cm,
          height: given.height * cm,
          travel: given.travel * cm,
        };
        const ratio = ((liftLimit(inches, 'us') as number) * 0.45359237) / (liftLimit(metric, 'metric') as number);
        // The published constants are rounded apart: load 0.6 %, reach 1.6 %, height and travel below 2 % together.
        expect(Math.abs(ratio - 1)).toBeLessThan(0.045);
      }),
      { seed: 1703, numRuns: 300 },
    );
  });
});

describe('limits', () => {
  it.each([/two hands/, /not for carrying/, /teams/, /unstable/, /8 hours/])('says %s', (words) => {
    expect(limits.filter(({ text }) => words.test(text))).toHaveLength(1);
  });

  it('is made of clauses without a full stop, as all limits are', () => {
    for (const { text } of limits) expect(text).toMatch(/^[a-z].*[a-z]$/);
  });
});
