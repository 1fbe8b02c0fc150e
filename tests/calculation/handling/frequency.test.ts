import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { FREQUENCY_RATES, FREQUENCY_TABLE, frequencyMultiplier } from '../../../src/calculation/handling/frequency.ts';
import { Fault } from '../../../src/calculation/result.ts';

describe('frequencyMultiplier', () => {
  it('goes in a straight line between two rates', () => {
    // Floating point only: the mean of two decimals.
    expect(frequencyMultiplier(2.5, 8, true)).toBeCloseTo(0.6, 12);
    expect(frequencyMultiplier(0.3, 1, true)).toBeCloseTo(0.99, 12);
  });

  it('goes in a straight line into a cell of 0 too', () => {
    // Floating point only: quarter of the way from .18 to 0, half of the way from .37 to 0.
    expect(frequencyMultiplier(8.25, 8, true)).toBeCloseTo(0.135, 12);
    expect(frequencyMultiplier(12.5, 1, true)).toBeCloseTo(0.185, 12);
  });

  it('takes a rate below 0.2 as 0.2', () => {
    expect(frequencyMultiplier(0, 8, true)).toBe(0.85);
    expect(frequencyMultiplier(0.1, 2, false)).toBe(0.95);
  });

  it('leaves nothing above 15 a minute', () => {
    expect(frequencyMultiplier(15, 1, false)).toBe(0.28);
    expect(frequencyMultiplier(15.01, 1, false)).toBe(0);
    expect(frequencyMultiplier(1e300, 1, false)).toBe(0);
  });

  it.each([
    [1, 0.94],
    [1.001, 0.88],
    [2, 0.88],
    [2.001, 0.75],
    [8, 0.75],
  ])('takes the column of %d hours', (hours, multiplier) => {
    expect(frequencyMultiplier(1, hours, true)).toBe(multiplier);
  });

  it.each([
    [-1, 1, 'rate'],
    [Number.NaN, 1, 'rate'],
    [Infinity, 1, 'rate'],
    [1, 0, 'hours'],
    [1, Number.NaN, 'hours'],
    [1, Infinity, 'hours'],
    [1, 8.0001, 'hours'],
  ])('refuses rate %d over %d hours and names %s', (rate, hours, field) => {
    expect(frequencyMultiplier(rate, hours, true)).toMatchObject({ code: 'value', field });
  });

  it('says what the longest work is', () => {
    expect((frequencyMultiplier(1, 9, true) as Fault).problem).toMatch(/at most 8\b/);
    expect(frequencyMultiplier(1, 9, true)).toBeInstanceOf(Fault);
  });

  it('has a cell for every rate in every column', () => {
    for (const columns of Object.values(FREQUENCY_TABLE))
      for (const column of Object.values(columns)) expect(column).toHaveLength(FREQUENCY_RATES.length);
  });

  it('never rises with the rate, the hours, or from high to low hands', () => {
    const rate = fc.double({ min: 0, max: 20, noNaN: true });
    const hours = fc.double({ min: 0.01, max: 8, noNaN: true });
    fc.assert(
      fc.property(rate, rate, hours, hours, fc.boolean(), (r1, r2, h1, h2, low) => {
        const lighter = frequencyMultiplier(Math.min(r1, r2), Math.min(h1, h2), false) as number;
        const heavier = frequencyMultiplier(Math.max(r1, r2), Math.max(h1, h2), low) as number;
        // Floating point only: two ends of one straight piece.
        expect(heavier).toBeLessThanOrEqual(lighter + 1e-12);
        expect(heavier).toBeGreaterThanOrEqual(0);
        expect(lighter).toBeLessThanOrEqual(1);
      }),
      { seed: 1701, numRuns: 500 },
    );
  });
});
