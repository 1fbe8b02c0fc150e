import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { liftIndex } from '../../../src/calculation/handling/lift-index.ts';
import { type Lift, liftLimit } from '../../../src/calculation/handling/lift-limit.ts';
import type { Fault } from '../../../src/calculation/result.ts';

const LIFT: Lift = { reach: 40, height: 70, travel: 50, twist: 30, rate: 1, hours: 1, grip: 'fair' };

describe('liftIndex', () => {
  it('is the weight over the limit', () => {
    // Value of an independent calculation, compared to 1e-6 relative as printed there.
    const index = liftIndex(20, LIFT, 'metric') as number;
    expect(Math.abs(index / 1.922758014 - 1)).toBeLessThanOrEqual(1e-6);
  });

  it.each([
    { change: { reach: 64 }, system: 'metric', says: 'reach above 63 cm' },
    { change: { reach: 26, height: 30, travel: 10 }, system: 'us', says: 'reach above 25 in' },
    { change: { height: 176 }, system: 'metric', says: 'height above 175 cm' },
    { change: { reach: 10, height: 71 }, system: 'us', says: 'height above 70 in' },
    { change: { travel: 176 }, system: 'metric', says: 'travel above 175 cm' },
    { change: { reach: 10, travel: 71 }, system: 'us', says: 'travel above 70 in' },
    { change: { twist: 136 }, system: 'metric', says: 'twist above 135 degrees' },
    { change: { rate: 16 }, system: 'metric', says: 'at this rate over these hours' },
    { change: { rate: 10, hours: 8 }, system: 'metric', says: 'at this rate over these hours' },
  ] as const)('has no answer with $change and says: $says', ({ change, system, says }) => {
    const fault = liftIndex(20, { ...LIFT, ...change }, system) as Fault;
    expect(fault.code).toBe('none');
    expect(fault.problem).toContain(says);
    expect(fault.problem.length).toBeLessThan(200);
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses a weight of %d', (weight) => {
    expect(liftIndex(weight, LIFT, 'metric')).toMatchObject({ code: 'value', field: 'weight' });
  });

  it('passes on the fault of the lift', () => {
    expect(liftIndex(20, { ...LIFT, hours: 9 }, 'metric')).toMatchObject({ code: 'value', field: 'hours' });
  });

  it('overflows to a fault, never to infinity', () => {
    expect(liftIndex(1.7e308, { ...LIFT, rate: 8.99999, hours: 8 }, 'metric')).toMatchObject({ code: 'overflow' });
  });

  it('is 1 for a weight of just the limit', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 63, noNaN: true }),
        fc.double({ min: 0, max: 175, noNaN: true }),
        (reach, height) => {
          const lift = { ...LIFT, reach, height };
          expect(liftIndex(liftLimit(lift, 'metric') as number, lift, 'metric')).toBe(1);
        },
      ),
      { seed: 1704, numRuns: 200 },
    );
  });
});
