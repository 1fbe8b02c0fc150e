import { describe, expect, it } from 'vitest';
import { BETA, beta, plate } from '../../../src/calculation/strength/plate.ts';
import { expectNear, ROUNDING } from '../kit.ts';

describe('plate', () => {
  it('is linear between the rows of the table and 1 from a ratio of 3 on', () => {
    for (const [ratio, value] of BETA) expect(beta(ratio)).toBe(value);
    expectNear(beta(1.1), (0.435 + 0.65) / 2, ROUNDING);
    expectNear(beta(2.5), (0.958 + 1) / 2, ROUNDING);
    expect(beta(50)).toBe(1);
    expect(beta(0.999)).toBe(0.435);
  });

  it('does not depend on which side is given first', () => {
    expect(plate(100, 0.05, 0.01, 1.2, 0.4)).toBe(plate(100, 0.05, 0.01, 0.4, 1.2));
  });

  it('keeps its last part under a foot as wide as the plate', () => {
    // ln of 1 or less counts as 0.
    expectNear(plate(100, 0.4, 0.01, 0.4, 0.4), ((3 * 100) / (2 * Math.PI * 1e-4)) * 0.435, ROUNDING);
  });

  it('falls with the square of the wall and rises with the force', () => {
    expectNear(plate(200, 0.05, 0.02, 1, 1), plate(100, 0.05, 0.01, 1, 1) / 2, ROUNDING);
  });
});
