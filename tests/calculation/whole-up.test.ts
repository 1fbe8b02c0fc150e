import { describe, expect, it } from 'vitest';
import { wholeUp } from '../../src/calculation/whole-up.ts';

describe('wholeUp', () => {
  // Exact: whole numbers.
  it.each([
    [9.2, 10],
    [9, 9],
    [0, 0],
    [0.001, 1],
    [1.000001, 2],
  ])('%d needs %d', (x, n) => {
    expect(wholeUp(x)).toBe(n);
  });

  it('keeps an exact multiple that was converted from other units', () => {
    // 3 × 0.1/0.1 is 3.0000000000000004 in doubles.
    expect((3 * 0.1) / 0.1).toBeGreaterThan(3);
    expect(wholeUp((3 * 0.1) / 0.1)).toBe(3);
  });

  it('passes on what is no number', () => {
    expect(wholeUp(Number.POSITIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
    expect(wholeUp(Number.NaN)).toBeNaN();
  });
});
