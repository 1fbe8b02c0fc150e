import { describe, expect, it } from 'vitest';
import { balanceFault, cross, distance, feetFault, isPoint, lengthOf } from '../../../src/calculation/feet/points.ts';

describe('points', () => {
  it('measures lengths and distances', () => {
    expect(lengthOf(3, -4)).toBe(5);
    expect(distance([1, 1], [4, 5])).toBe(5);
  });

  it('gives twice the area of a triangle, above 0 where it turns to the left', () => {
    expect(cross([0, 0], [2, 0], [0, 3])).toBe(6);
    expect(cross([0, 0], [0, 3], [2, 0])).toBe(-6);
  });

  it('knows a point', () => {
    expect(isPoint([0, -1])).toBe(true);
    expect(isPoint([0, Number.NaN])).toBe(false);
    expect(isPoint([Infinity, 0])).toBe(false);
    expect(balanceFault([0, 0])).toBeUndefined();
    expect(balanceFault([Number.NaN, 0])?.field).toBe('balance');
  });

  it('calls three feet in one line a fault in any size, and a flat triangle none', () => {
    for (const size of [1e-3, 1, 1e3]) {
      expect(
        feetFault([
          [0, 0],
          [size, size / 3],
          [3 * size, size],
        ])?.field,
      ).toBe('feet');
      expect(
        feetFault([
          [0, 0],
          [size, 1e-6 * size],
          [3 * size, 0],
        ]),
      ).toBeUndefined();
    }
  });
});
