import { describe, expect, it } from 'vitest';
import type { Feet } from '../../../src/calculation/feet/points.ts';
import { limits, tipAngle } from '../../../src/calculation/feet/tip-angle.ts';
import { EXAMPLE, expectFault, expectNear, known, NOT_POSITIVE } from '../kit.ts';

const FEET: Feet = [
  [-0.25, -0.12],
  [0.25, -0.12],
  [0, 0.18],
];

describe('tipAngle', () => {
  it('gives the example value', () => {
    expectNear(tipAngle(FEET, [0.02, 0.01], 0.25), 20.49914593, EXAMPLE);
  });

  it('falls with the height and with the margin, and is below 0 outside', () => {
    expect(known(tipAngle(FEET, [0, 0], 0.3))).toBeLessThan(known(tipAngle(FEET, [0, 0], 0.2)));
    expect(known(tipAngle(FEET, [0, -0.1], 0.2))).toBeLessThan(known(tipAngle(FEET, [0, 0], 0.2)));
    expect(known(tipAngle(FEET, [0, -0.15], 0.2))).toBeLessThan(0);
    expect(tipAngle(FEET, [0, -0.12], 0.2)).toBe(0);
  });

  it('says that a jacket outside of its feet is doubtful', () => {
    expect(limits.every((l) => l.holds(FEET, [0, 0], 0.2))).toBe(true);
    expect(limits.every((l) => l.holds(FEET, [0, -0.15], 0.2))).toBe(false);
  });

  it('refuses a height that is not above 0', () => {
    for (const bad of NOT_POSITIVE) expectFault(tipAngle(FEET, [0, 0], bad), 'value', 'balance_height');
    expectFault(tipAngle([FEET[0], FEET[0], FEET[1]], [0, 0], 0.2), 'value', 'feet');
  });
});
