import { describe, expect, it } from 'vitest';
import { margin } from '../../../src/calculation/feet/margin.ts';
import { footOutline, parallelCurve } from '../../../src/calculation/feet/outline.ts';
import { symmetricFeet } from '../../../src/calculation/feet/symmetric-feet.ts';
import { EXAMPLE, expectNear, known, settings } from '../kit.ts';

describe('symmetricFeet', () => {
  it('is the triangle with equal sides in a circle', () => {
    const found = symmetricFeet(parallelCurve(2, 2, 0, settings())!, [0, 0], 0.1)!;
    expectNear(found.margin, 0.5, EXAMPLE);
    expectNear(found.feet[0][0], -0.5, EXAMPLE);
    expect(found.feet[1]).toEqual([1, 0]);
  });

  it('has the margin that it says', () => {
    const curve = footOutline(0.6, 0.4, settings())!;
    for (const balance of [
      [0, 0],
      [-0.05, 0.02],
      [-0.1, 0],
    ] as const) {
      const found = symmetricFeet(curve, balance, 0.1)!;
      expectNear(found.margin, known(margin(found.feet, balance)), 1e-9);
    }
  });

  it('keeps the two feet at least so far apart, or has no answer', () => {
    const curve = footOutline(0.6, 0.4, settings())!;
    const close = symmetricFeet(curve, [-0.15, 0], 0.1)!;
    const apart = symmetricFeet(curve, [-0.15, 0], 0.26)!;
    expect(close.feet[2][1] - close.feet[0][1]).toBeLessThan(0.26);
    expect(apart.feet[2][1] - apart.feet[0][1]).toBeGreaterThanOrEqual(0.26);
    expect(apart.margin).toBeLessThan(close.margin);
    expect(symmetricFeet(curve, [0, 0], 0.4)).toBeUndefined();
  });
});
