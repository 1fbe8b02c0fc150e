import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { calibrate } from '../../../src/calculation/plans/calibrate.ts';
import { isFault } from '../../../src/calculation/result.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED } from '../kit.ts';

/** Jackknife standard error of a ratio: another way to the spread, near to the formula for jobs of like sizes. */
const jackknife = (x: number[], y: number[]): number => {
  const n = x.length;
  const sum = (list: number[]) => list.reduce((total, one) => total + one, 0);
  const without = x.map((_, i) => (sum(y) - y[i]!) / (sum(x) - x[i]!));
  const mean = sum(without) / n;
  return Math.sqrt(((n - 1) / n) * sum(without.map((r) => (r - mean) ** 2)));
};

describe('calibrate', () => {
  it('gives the values of EXAMPLES 4.9', () => {
    const found = known(calibrate([10, 20, 30], [11, 24, 33]));
    expectNear(found.ratio, 1.133333333, EXAMPLE);
    expectNear(found.low, 0.9840552351, EXAMPLE);
    expectNear(found.high, 1.282611432, EXAMPLE);
    expect(found.jobs).toBe(3);
  });

  it('agrees with leaving out one job at a time', () => {
    const x = Array.from({ length: 30 }, (_, i) => 20 + ((7 * i) % 5));
    const y = x.map((one, i) => one * (1.1 + 0.02 * (((11 * i) % 7) - 3)));
    const { ratio, high } = known(calibrate(x, y));
    // t of 29 degrees of freedom, 2.045 by table. The two ways differ by about the square of the sizes' spread over the jobs: 2 %.
    expectNear((high - ratio) / 2.045, jackknife(x, y), 0.02);
  });

  it('leaves out pairs in which either is blank or 0', () => {
    const found = known(calibrate([10, null, 20, 0, 30, 5, 7], [11, 4, 24, 3, 33, null, 0]));
    expect(found).toEqual(known(calibrate([10, 20, 30], [11, 24, 33])));
  });

  it('keeps the low end at 0 or above', () => {
    const { low, ratio, high } = known(calibrate([10, 10], [1, 30]));
    expect(low).toBe(0);
    expect(high).toBeGreaterThan(2 * ratio);
  });

  it('has no width where all jobs agree', () => {
    const { low, ratio, high } = known(calibrate([10, 20, 40], [5, 10, 20]));
    expect([low, ratio, high]).toEqual([0.5, 0.5, 0.5]);
  });

  it('scales with what was used, and does not mind the unit or the order', () => {
    const amounts = fc.array(
      fc.tuple(fc.double({ min: 0.1, max: 100, noNaN: true }), fc.double({ min: 0.1, max: 100, noNaN: true })),
      { minLength: 2, maxLength: 12 },
    );
    fc.assert(
      fc.property(amounts, (jobs) => {
        const x = jobs.map(([one]) => one);
        const y = jobs.map(([, one]) => one);
        const found = known(calibrate(x, y));
        expect(found.low).toBeLessThanOrEqual(found.ratio);
        expect(found.high).toBeGreaterThanOrEqual(found.ratio);
        const pounds = known(
          calibrate(
            x.map((one) => one / 0.45359237),
            y.map((one) => one / 0.45359237),
          ),
        );
        const more = known(
          calibrate(
            x.toReversed(),
            y.toReversed().map((one) => 3 * one),
          ),
        );
        expectNear(pounds.ratio, found.ratio, ROUNDING);
        expectNear(more.ratio, 3 * found.ratio, ROUNDING);
        // The spread is a difference of like numbers where jobs agree.
        expect(Math.abs(more.high - 3 * found.high)).toBeLessThanOrEqual(1e-9 * more.high);
        expect(Math.abs(pounds.high - found.high)).toBeLessThanOrEqual(1e-9 * found.high);
      }),
      { seed: SEED },
    );
  });

  it('keeps its answer for extreme amounts, and says when it is too large', () => {
    expectNear(known(calibrate([1e308, 1e308], [1e308, 1e308])).ratio, 1, ROUNDING);
    expectNear(known(calibrate([1e-300, 2e-300], [1e-300, 2e-300])).ratio, 1, ROUNDING);
    expectFault(calibrate([1e-300, 1e-300], [1e300, 1e300]), 'overflow');
  });

  it('takes a column as long as a sheet', () => {
    const found = known(calibrate(Array(300_000).fill(2), Array(300_000).fill(3)));
    expect(found.jobs).toBe(300_000);
    expect(found.ratio).toBe(1.5);
  });

  it('needs two jobs', () => {
    for (const [x, y] of [
      [[], []],
      [[10], [11]],
      [
        [10, 0, null],
        [11, 3, 5],
      ],
    ] as (number | null)[][][]) {
      const fault = calibrate(x!, y!);
      expectFault(fault, 'none');
      if (isFault(fault)) expect(fault.problem).toMatch(/note what the next jacket really takes$/);
    }
  });

  it('refuses ranges of unlike length and amounts below 0', () => {
    expectFault(calibrate([1, 2, 3], [1, 2]), 'value', 'used');
    for (const bad of [-1, Number.NaN, Infinity]) {
      expectFault(calibrate([1, bad], [1, 2]), 'value', 'estimated');
      expectFault(calibrate([1, 2], [1, bad]), 'value', 'used');
    }
  });
});
