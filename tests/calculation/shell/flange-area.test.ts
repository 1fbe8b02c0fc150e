import { describe, expect, it } from 'vitest';
import { flangeArea } from '../../../src/calculation/shell/flange-area.ts';
import { expectNear, ROUNDING } from '../kit.ts';

describe('flangeArea', () => {
  it('is two rings round a round seam', () => {
    // Between radii 1 and 1.2: π(1.44 − 1).
    expectNear(flangeArea(2 * Math.PI, 0.2), 2 * Math.PI * 0.44, ROUNDING);
  });

  it('is nothing without a flange', () => {
    expect(flangeArea(1.6, 0)).toBe(0);
  });
});
