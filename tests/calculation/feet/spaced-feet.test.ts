import { describe, expect, it } from 'vitest';
import { margin } from '../../../src/calculation/feet/margin.ts';
import { parallelCurve } from '../../../src/calculation/feet/outline.ts';
import { spacedFeet } from '../../../src/calculation/feet/spaced-feet.ts';
import { expectNear, known, settings } from '../kit.ts';

const circle = parallelCurve(2, 2, 0, settings())!;

describe('spacedFeet', () => {
  it('has two feet just so far apart and the margin that it says', () => {
    for (const apart of [0.5, 1, 1.7]) {
      const found = spacedFeet(circle, [-0.5, 0.2], apart)!;
      const [a, b, c] = found.feet;
      const least = Math.min(
        Math.hypot(a[0] - b[0], a[1] - b[1]),
        Math.hypot(b[0] - c[0], b[1] - c[1]),
        Math.hypot(c[0] - a[0], c[1] - a[1]),
      );
      // The excess against rounding, and never less.
      expect(least).toBeGreaterThanOrEqual(apart);
      expectNear(least, apart, 2e-9);
      expectNear(found.margin, known(margin(found.feet, [-0.5, 0.2])), 1e-9);
    }
  });

  it('is the triangle with equal sides where nothing else fits, and nothing beyond', () => {
    const found = spacedFeet(circle, [0, 0], Math.sqrt(3) * (1 - 1e-6))!;
    expectNear(found.margin, 0.5, 1e-5);
    expect(spacedFeet(circle, [0, 0], Math.sqrt(3) * 1.001)).toBeUndefined();
  });
});
