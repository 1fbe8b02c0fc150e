import { describe, expect, it } from 'vitest';
import { parallelCurve } from '../../../src/calculation/feet/outline.ts';
import { threeFeet } from '../../../src/calculation/feet/three-feet.ts';
import { expectNear, settings } from '../kit.ts';

describe('threeFeet', () => {
  it('finds the triangle with equal sides in a circle, margin half the radius', () => {
    const circle = parallelCurve(2, 2, 0, settings())!;
    const best = threeFeet(circle, [0, 0], 1e-9)!;
    // Any turned triangle is as good: the root is what is compared.
    expectNear(best.margin, 0.5, 1e-9);
    for (const [x, y] of best.feet) expectNear(Math.hypot(x, y), 1, 1e-9);
  });

  it('for a balance point off the middle of a circle reaches what the theorem of Euler says', () => {
    const circle = parallelCurve(2, 2, 0, settings())!;
    for (const d of [0.1, 0.3, 0.6]) {
      // Euler's theorem: d² = R(R − 2r) for the circle in and the circle around a triangle.
      expectNear(threeFeet(circle, [-d, 0], 1e-9)!.margin, (1 - d * d) / 2, 1e-9);
    }
  });

  it('finds nothing where nothing beats what is known, or nothing fits', () => {
    const circle = parallelCurve(2, 2, 0, settings())!;
    expect(threeFeet(circle, [0, 0], 0.51)).toBeUndefined();
    expect(threeFeet(circle, [0, 0], 1e-9, () => false)).toBeUndefined();
  });
});
