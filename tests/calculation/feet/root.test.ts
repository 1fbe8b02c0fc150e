import { describe, expect, it } from 'vitest';
import { root } from '../../../src/calculation/feet/root.ts';

describe('root', () => {
  it('finds roots of straight, bent and jumping functions from the side that is at least 0', () => {
    const functions = [
      [(x: number) => 0.3 - x, 0.3],
      [(x: number) => Math.cos(x), Math.PI / 2],
      [(x: number) => 2 - Math.exp(x), Math.log(2)],
      [(x: number) => (x < 0.7 ? 1 : -Infinity), 0.7],
      [(x: number) => 1 - x ** 9, 1],
    ] as const;
    for (const [f, expected] of functions) {
      const found = root(f, 0, 2);
      // The accuracy asked of the root, with room for a function that is nearly level there.
      expect(Math.abs(found - expected)).toBeLessThan(1e-9);
      expect(f(found)).toBeGreaterThanOrEqual(0);
    }
  });

  it('gives an end where the function does not change its sign', () => {
    expect(root(() => -1, 0, 2)).toBe(0);
    expect(root(() => 1, 0, 2)).toBe(2);
  });
});
