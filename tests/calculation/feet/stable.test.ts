import { describe, expect, it } from 'vitest';
import type { Feet } from '../../../src/calculation/feet/points.ts';
import { stable } from '../../../src/calculation/feet/stable.ts';
import { expectFault, settings } from '../kit.ts';

const FEET: Feet = [
  [-0.25, -0.12],
  [0.25, -0.12],
  [0, 0.18],
];

describe('stable', () => {
  it('gives the example value', () => {
    expect(stable(FEET, [0.02, 0.01], 0.6, settings())).toBe(false);
    expect(stable(FEET, [0.02, 0.01], 0.25, settings())).toBe(true);
  });

  it('follows the least tilt', () => {
    // atan(0.12/0.2) is 30.96 degrees.
    expect(stable(FEET, [0, 0], 0.2, settings({ leastTilt: 27 }))).toBe(true);
    expect(stable(FEET, [0, 0], 0.2, settings({ leastTilt: 31 }))).toBe(false);
  });

  it('at a least tilt of 0 asks only that the feet hold the balance point', () => {
    expect(stable(FEET, [0, -0.1199], 5, settings({ leastTilt: 0 }))).toBe(true);
    expect(stable(FEET, [0, -0.1201], 5, settings({ leastTilt: 0 }))).toBe(false);
  });

  it('passes faults on', () => {
    expectFault(stable(FEET, [0, 0], 0, settings()), 'value', 'balance_height');
  });
});
