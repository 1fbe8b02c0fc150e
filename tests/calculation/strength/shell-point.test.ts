import { describe, expect, it } from 'vitest';
import { circleRatio, coefficients, shellPoint } from '../../../src/calculation/strength/shell-point.ts';
import { expectNear, ROUNDING } from '../kit.ts';

describe('shellPoint', () => {
  it('is the sum of bending and membrane, in proportion to the force', () => {
    const mu = circleRatio(0.05, 0.01, 0.8);
    const [bending, membrane] = coefficients(mu);
    expectNear(mu, (0.05 * (12 * 0.91) ** 0.25) / Math.sqrt(0.8 * 0.01), ROUNDING);
    expectNear(shellPoint(200, 0.05, 0.01, 0.8), (200 * (1.3 * bending + Math.sqrt(0.91) * membrane)) / 1e-4, ROUNDING);
  });

  it('falls with a larger foot, a thicker wall and more curvature', () => {
    const plain = shellPoint(100, 0.05, 0.01, 0.8);
    expect(shellPoint(100, 0.06, 0.01, 0.8)).toBeLessThan(plain);
    expect(shellPoint(100, 0.05, 0.012, 0.8)).toBeLessThan(plain);
    expect(shellPoint(100, 0.05, 0.01, 0.6)).toBeLessThan(plain);
  });
});
