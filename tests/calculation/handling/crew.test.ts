import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type Crew, crew } from '../../../src/calculation/handling/crew.ts';

const LIMIT = 23;

describe('crew', () => {
  // Values of an independent calculation, exact: counts.
  it.each<[number, number | null, Crew]>([
    [20, null, 1],
    [20, 0.6, 2],
    [33, null, 3],
    [35, null, 'hoist'],
  ])('%d kg, width %s m: %s', (weight, width, people) => {
    expect(crew(weight, LIMIT, width)).toBe(people);
  });

  it.each<[number, Crew, Crew]>([
    [23, 1, 2],
    [23 * 2 * (2 / 3), 2, 3],
    [23 * 3 * (1 / 2), 3, 'hoist'],
  ])('changes just above %d kg', (weight, at, above) => {
    expect(crew(weight, LIMIT)).toBe(at);
    expect(crew(weight * (1 + 1e-12), LIMIT)).toBe(at);
    expect(crew(weight * 1.000001, LIMIT)).toBe(above);
  });

  it('lets a width of 10 cm be held close, and takes the reach of a wider load', () => {
    // 25/(20 + 10/2) is 1; at 60 cm it is a half.
    expect(crew(23, LIMIT, 0.1)).toBe(1);
    expect(crew(23, LIMIT, 0.11)).toBe(2);
    expect(crew(11.5, LIMIT, 0.6)).toBe(1);
    expect(crew(11.501, LIMIT, 0.6)).toBe(2);
  });

  it('gives no person more than the limit, however narrow the load', () => {
    expect(crew(23.01, LIMIT, 0.001)).toBe(2);
  });

  it('takes the width for one person only', () => {
    expect(crew(30, LIMIT, 5)).toBe(2);
    expect(crew(34, LIMIT, 5)).toBe(3);
  });

  it.each([0, -1, Number.NaN, Infinity])('refuses %d and names the argument', (bad) => {
    expect(crew(bad, LIMIT)).toMatchObject({ code: 'value', field: 'total_weight' });
    expect(crew(20, LIMIT, bad)).toMatchObject({ code: 'value', field: 'width' });
    expect(crew(20, bad)).toMatchObject({ code: 'value', field: 'one-person limit' });
  });

  it('never falls with a heavier or wider load, nor rises with a higher limit', () => {
    const order = (c: unknown): number => (c === 'hoist' ? 4 : (c as number));
    const size = fc.double({ min: 0.01, max: 80, noNaN: true });
    fc.assert(
      fc.property(size, size, size, fc.double({ min: 1, max: 2, noNaN: true }), (weight, limit, width, more) => {
        const people = order(crew(weight, limit, width));
        expect(order(crew(weight * more, limit, width))).toBeGreaterThanOrEqual(people);
        expect(order(crew(weight, limit, width * more))).toBeGreaterThanOrEqual(people);
        expect(order(crew(weight, limit * more, width))).toBeLessThanOrEqual(people);
        expect(order(crew(weight, limit))).toBeLessThanOrEqual(people);
      }),
      { seed: 1705, numRuns: 300 },
    );
  });
});
