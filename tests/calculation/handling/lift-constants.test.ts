import { describe, expect, it } from 'vitest';
import { LIFT_CONSTANTS } from '../../../src/calculation/handling/lift-constants.ts';

/** Kilograms in a pound, centimetres in an inch. Exact. */
const KILOGRAMS = 0.45359237;
const CENTIMETRES = 2.54;

const { metric, us } = LIFT_CONSTANTS;

describe('the two published sets of constants', () => {
  it.each([
    'closeReach',
    'mostReach',
    'knuckleHeight',
    'mostHeight',
    'travelSlope',
    'shortTravel',
    'mostTravel',
  ] as const)('agree on %s', (name) => {
    // Parallel, rounded constants: 10 in are 25.4 cm, printed as 25. The widest gap is 1.6 %.
    expect(Math.abs((us[name] * CENTIMETRES) / metric[name] - 1)).toBeLessThan(0.02);
  });

  it('agree on the load to 1 %, and are not converted', () => {
    expect(Math.abs((us.load * KILOGRAMS) / metric.load - 1)).toBeLessThan(0.01);
    expect(us.load * KILOGRAMS).not.toBe(metric.load);
  });

  it('agree on what a hand above or below the knuckles costs', () => {
    // 0.0075 an inch is 0.00295 a centimetre, printed as 0.003: 1.6 %.
    expect(Math.abs(us.heightSlope / CENTIMETRES / metric.heightSlope - 1)).toBeLessThan(0.02);
  });

  it('take nothing off where the travel becomes short', () => {
    // Floating point only: 0.82 + 0.18.
    expect(0.82 + metric.travelSlope / metric.shortTravel).toBeCloseTo(1, 12);
    expect(0.82 + us.travelSlope / us.shortTravel).toBeCloseTo(1, 12);
  });
});
