import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { exposure } from '../../../src/calculation/handling/exposure.ts';

describe('exposure', () => {
  it('averages over 8 hours, whatever part of them is listed', () => {
    // Value of an independent calculation; exact in floating point.
    expect(exposure([10, 2], [2, 3])).toBe(3.25);
  });

  it('divides a longer day by 8 as well', () => {
    expect(exposure([4], [12])).toBe(6);
  });

  it('allows levels and hours of 0', () => {
    expect(exposure([0, 5], [8, 0])).toBe(0);
  });

  it('allows a whole day, also in parts that do not add up exactly, and no more', () => {
    const parts = Array.from({ length: 240 }, () => 0.1);
    expect(parts.reduce((a, b) => a + b)).toBeGreaterThan(24);
    // Floating point only: 240 sums.
    expect(
      exposure(
        parts.map(() => 1),
        parts,
      ),
    ).toBeCloseTo(3, 10);
    expect(exposure([1, 1], [12, 12])).toBe(3);
    expect(exposure([1, 1], [12, 12.5])).toMatchObject({
      code: 'value',
      field: 'hours',
      amounts: { most: { value: 24, quantity: 'hours' }, sum: { value: 24.5, quantity: 'hours' } },
    });
  });

  it.each([-1, Number.NaN, Infinity])('refuses %d and names the argument', (bad) => {
    expect(exposure([1, bad], [1, 1])).toMatchObject({ code: 'value', field: 'levels' });
    expect(exposure([1, 1], [1, bad])).toMatchObject({ code: 'value', field: 'hours' });
  });

  it('refuses no levels at all, and lists of unlike length', () => {
    expect(exposure([], [])).toMatchObject({ code: 'value', field: 'levels' });
    expect(exposure([1, 2, 3], [1, 2])).toMatchObject({
      code: 'value',
      field: 'hours',
      amounts: { levels: { value: 3 }, hours: { value: 2 } },
    });
  });

  it('overflows to a fault, never to infinity', () => {
    expect(exposure([1.7e308], [20])).toMatchObject({ code: 'overflow' });
  });

  it('is the level itself at one level for 8 hours, and lies under the highest for shorter days', () => {
    const part = fc.record({
      level: fc.double({ min: 0, max: 100, noNaN: true }),
      hours: fc.double({ min: 0, max: 2, noNaN: true }),
    });
    fc.assert(
      fc.property(fc.array(part, { minLength: 1, maxLength: 4 }), (parts) => {
        const levels = parts.map((p) => p.level);
        const average = exposure(
          levels,
          parts.map((p) => p.hours),
        ) as number;
        expect(exposure([levels[0]!], [8])).toBe(levels[0]);
        // Floating point only: at most four products.
        expect(average).toBeLessThanOrEqual(Math.max(...levels) * (1 + 1e-12));
        expect(average).toBeGreaterThanOrEqual(0);
      }),
      { seed: 1706, numRuns: 300 },
    );
  });
});
