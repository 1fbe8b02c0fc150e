import { describe, expect, it } from 'vitest';
import { largest } from '../../../src/calculation/feet/largest.ts';

describe('largest', () => {
  it('finds the top of a smooth hill and of a roof', () => {
    // 40 cuts leave 2·0.618⁴⁰ of the interval, 1e-8; a smooth top is level to the root of rounding.
    expect(Math.abs(largest((x) => -((x - 0.3) ** 2), 0, 1, 40) - 0.3)).toBeLessThan(1e-7);
    expect(Math.abs(largest((x) => -Math.abs(x + 0.4), 0, 1, 40) + 0.4)).toBeLessThan(1e-7);
  });

  it('finds an end where the function only rises', () => {
    expect(largest((x) => x, 5, 1, 40)).toBeCloseTo(6, 6);
    expect(largest((x) => -x, 5, 1, 40)).toBeCloseTo(4, 6);
  });
});
