/** The lifting calculations against published tables and examples. Row numbers such as L-01 name the check value. */

import { describe, expect, it } from 'vitest';
import { couplingMultiplier } from '../../src/calculation/handling/coupling.ts';
import { crew } from '../../src/calculation/handling/crew.ts';
import { frequencyMultiplier } from '../../src/calculation/handling/frequency.ts';
import { liftIndex } from '../../src/calculation/handling/lift-index.ts';
import { type Lift, liftLimit, liftMultipliers } from '../../src/calculation/handling/lift-limit.ts';
import { COUPLING_ROWS, FREQUENCY_COLUMNS, FREQUENCY_ROWS, TWIST_ROWS } from './lifting-tables.ts';

/** Nothing takes anything off: the ideal lift of each system. */
const IDEAL = {
  metric: { reach: 25, height: 75, travel: 25, twist: 0, rate: 0.2, hours: 1, grip: 'good' },
  us: { reach: 10, height: 30, travel: 10, twist: 0, rate: 0.2, hours: 1, grip: 'good' },
} as const satisfies Record<string, Lift>;

const us = (changes: Partial<Lift>): Lift => ({ ...IDEAL.us, ...changes });

describe('published tables, Publication 94-110', () => {
  it.each(
    FREQUENCY_ROWS.flatMap(([rate, ...cells]) =>
      FREQUENCY_COLUMNS.map((column, i) => ({ rate: rate!, ...column, printed: cells[i]! })),
    ),
  )('frequency: $rate/min, up to $hours h, hands low $low: $printed', ({ rate, hours, low, printed }) => {
    // Exact: a listed rate takes its cell without interpolation.
    expect(frequencyMultiplier(rate, hours, low)).toBe(printed);
  });

  it.each(FREQUENCY_COLUMNS)('frequency: above 15/min nothing is left, up to $hours h, hands low $low', (column) => {
    expect(frequencyMultiplier(15.000001, column.hours, column.low)).toBe(0);
  });

  it.each(COUPLING_ROWS)('coupling: %s, hands low %d, high %d', (grip, low, high) => {
    expect(couplingMultiplier(grip, true)).toBe(low);
    expect(couplingMultiplier(grip, false)).toBe(high);
  });

  it.each(TWIST_ROWS)('twist: %d degrees, %d', (twist, printed) => {
    // Half a unit of the last printed place, and rounding of half cells.
    const m = liftMultipliers({ ...IDEAL.metric, twist }, 'metric');
    expect(Math.abs((m as { twist: number }).twist - printed)).toBeLessThanOrEqual(0.005 + 1e-12);
  });
});

describe('load constants, Publication 94-110, published', () => {
  it('L-09 gives 23 kg for the ideal lift in centimetres', () => {
    expect(liftLimit(IDEAL.metric, 'metric')).toBe(23);
  });

  it('gives 51 lb for the ideal lift in inches: a parallel constant, not 23 kg converted', () => {
    expect(liftLimit(IDEAL.us, 'us')).toBe(51);
  });
});

describe('worked examples of Publication 94-110', () => {
  // The printed worksheets multiply multipliers of two decimals, so a full calculation may differ by 2.5 %.
  const PRINTED = 0.025;

  const cases = [
    // Published: limit, multipliers, height and travel read in the publication's example 4; weight, reach, rate and index from memory.
    {
      id: 'L-01',
      lift: us({ reach: 10, height: 22, travel: 37, rate: 3, grip: 'fair' }),
      weight: 26,
      limit: 34.9,
      index: 0.7,
      full: 34.814,
      fullIndex: 0.747,
    },
    // From memory: example 1, origin.
    {
      id: 'L-03',
      lift: us({ reach: 23, height: 15, travel: 49, grip: 'fair' }),
      weight: 44,
      limit: 16.3,
      index: 2.7,
      full: 16.017,
      fullIndex: 2.747,
    },
    // From memory: example 1, destination.
    {
      id: 'L-04',
      lift: us({ reach: 23, height: 64, travel: 49, grip: 'fair' }),
      weight: 44,
      limit: 14.5,
      index: 3.0,
      full: 14.153,
      fullIndex: 3.109,
    },
    // From memory: example 2, origin.
    {
      id: 'L-05',
      lift: us({ reach: 20, height: 27, travel: 17, grip: 'poor' }),
      weight: 35,
      limit: 20.9,
      index: 1.7,
      full: 20.771,
      fullIndex: 1.685,
    },
    // From memory: example 3, origin.
    {
      id: 'L-06',
      lift: us({ reach: 18, height: 15, travel: 21, twist: 45, grip: 'fair' }),
      weight: 40,
      limit: 18.9,
      index: 2.1,
      full: 18.521,
      fullIndex: 2.16,
    },
  ];

  it.each(cases)('$id: limit near the printed $limit lb', ({ lift, limit }) => {
    const got = liftLimit(lift, 'us') as number;
    expect(Math.abs(got / limit - 1)).toBeLessThanOrEqual(PRINTED);
  });

  it.each(cases)('$id: $full lb and index $fullIndex in full precision, derived from the formulas', (example) => {
    // Derived values are given to three decimals.
    expect(Math.abs((liftLimit(example.lift, 'us') as number) - example.full)).toBeLessThanOrEqual(0.0005 + 1e-9);
    const index = liftIndex(example.weight, example.lift, 'us') as number;
    expect(Math.abs(index - example.fullIndex)).toBeLessThanOrEqual(0.0005 + 1e-9);
    // The index is printed to one decimal and rests on the rounded limit: half a unit and 2.5 %.
    expect(Math.abs(index - example.index)).toBeLessThanOrEqual(0.05 + PRINTED * example.index);
  });

  it('L-01: the multipliers are the printed ones, 1, .94, .87, 1, .88, .95', () => {
    const m = liftMultipliers(us({ reach: 10, height: 22, travel: 37, rate: 3, grip: 'fair' }), 'us');
    // Published multipliers of example 4, two decimals: half a unit of the last place.
    expect(m).toMatchObject({ reach: 1, twist: 1, rate: 0.88, grip: 0.95 });
    expect((m as { height: number }).height).toBeCloseTo(0.94, 2);
    expect((m as { travel: number }).travel).toBeCloseTo(0.87, 2);
  });
});

describe('cut-offs of Publication 94-110, published, on both sides', () => {
  const sides = [
    { what: 'reach' as const, system: 'metric' as const, most: 63, left: 25 / 63 },
    { what: 'reach' as const, system: 'us' as const, most: 25, left: 10 / 25 },
    { what: 'height' as const, system: 'metric' as const, most: 175, left: 1 - 0.003 * 100 },
    { what: 'height' as const, system: 'us' as const, most: 70, left: 1 - 0.0075 * 40 },
    { what: 'travel' as const, system: 'metric' as const, most: 175, left: 0.82 + 4.5 / 175 },
    { what: 'travel' as const, system: 'us' as const, most: 70, left: 0.82 + 1.8 / 70 },
    { what: 'twist' as const, system: 'metric' as const, most: 135, left: 1 - 0.0032 * 135 },
    { what: 'twist' as const, system: 'us' as const, most: 135, left: 1 - 0.0032 * 135 },
  ];

  it.each(sides)(
    '$system: $what of just $most keeps its share, more leaves nothing',
    ({ what, system, most, left }) => {
      const load = system === 'metric' ? 23 : 51;
      // L-10 for the reach. Floating point only: the same products in another order.
      expect(liftLimit({ ...IDEAL[system], [what]: most }, system)).toBeCloseTo(load * left, 10);
      expect(liftLimit({ ...IDEAL[system], [what]: most * (1 + 1e-9) }, system)).toBe(0);
    },
  );

  it.each([
    { what: 'reach', system: 'metric', at: 25 },
    { what: 'reach', system: 'us', at: 10 },
    { what: 'travel', system: 'metric', at: 25 },
    { what: 'travel', system: 'us', at: 10 },
  ] as const)('$system: $what up to $at takes nothing off, a little more does', ({ what, system, at }) => {
    const load = system === 'metric' ? 23 : 51;
    expect(liftLimit({ ...IDEAL[system], [what]: at / 2 }, system)).toBe(load);
    expect(liftLimit({ ...IDEAL[system], [what]: at }, system)).toBe(load);
    expect(liftLimit({ ...IDEAL[system], [what]: at * 1.01 }, system)).toBeLessThan(load);
  });
});

describe('special frequency, Publication 94-110, published', () => {
  it('L-08: 10 lifts a minute for 8 of 15 minutes are 5.33 a minute, read between 5 and 6', () => {
    const rate = (10 * 8) / 15;
    // A third of the way from .80 to .75; floating point only.
    expect(frequencyMultiplier(rate, 1, true)).toBeCloseTo(0.8 - 0.05 / 3, 12);
  });
});

describe('L-11: team shares of HSE L23, published', () => {
  // 20 kg each: 26.6 kg for two. 50 kg each: 66 kg for two, 75 kg for three. The printed figures cut thirds off to a tenth or to a whole.
  it.each([
    { each: 20, people: 2, printed: 26.6, next: 26.7 },
    { each: 50, people: 2, printed: 66, next: 67 },
    { each: 50, people: 3, printed: 75, next: 75.001 },
  ])('$people people of $each kg lift $printed kg, not $next kg', ({ each, people, printed, next }) => {
    expect(crew(printed, each)).toBe(people);
    expect(crew(next, each)).not.toBe(people);
  });
});
