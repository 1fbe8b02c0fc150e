import { describe, expect, test } from 'vitest';
import { asksForUs, inUs } from '../../../src/build/help/systems.ts';
import type { OutCell } from '../../../src/functions/calling/cell.ts';
import { isCellError, isRows } from '../../../src/functions/calling/cell.ts';
import { fromSi, toSi } from '../../../src/functions/calling/units.ts';
import { functions } from '../../../src/functions/index.ts';

const byId = (id: string) => functions.find((f) => f.id === id)!;

const first = functions.flatMap((f) => {
  const example = f.examples.find(({ args }) => !asksForUs(f, args));
  const us = example && inUs(f, example.args);
  return us ? [{ f, metric: example.args, us }] : [];
});

describe.each(first.map((one) => [one.f.id, one] as const))('%s in US units', (_, { f, metric, us }) => {
  test('is the metric example, but for the rounding of what is typed', () => {
    const [a, b] = [f.call(metric), f.call(us)];
    expect(isCellError(b)).toBe(false);
    if (f.result.kind !== 'number' || isRows(a) || isRows(b)) {
      expect(isRows(b)).toBe(isRows(a));
      return;
    }
    const back = fromSi(toSi(b as number, f.result.quantity, 'us'), f.result.quantity, 'metric');
    // Sizes keep five digits, so that a product of four of them is off by 0.02 % at most. LIFT_LIMIT and LIFT_INDEX have constants of
    // their own in each system: 10 in is 1.6 % more than 25 cm, 51 lb is 0.6 % more than 23 kg.
    const tolerance = f.id.startsWith('LIFT_') ? 0.023 : 0.0002;
    expect(Math.abs(back - (a as number))).toBeLessThanOrEqual(tolerance * Math.abs(a as OutCell as number));
  });
});

test('sizes are converted by their units, words and counts are not', () => {
  expect(inUs(byId('SHELL_AREA'), [60, 40, 30])).toEqual([23.622, 15.748, 11.811, 'us']);
  expect(inUs(byId('PLASTER'), [1, 8.5])).toEqual([10.764, 8.5, 'us']);
  expect(inUs(byId('PADDING_CHOICE'), [20, false, 'low'])).toEqual([44.092, false, 'low', 'us']);
  expect(inUs(byId('WEIGHT'), [1, 8])).toEqual([10.764, 8, null, 'us']);
});

test('settings are converted and say their units', () => {
  expect(inUs(byId('AREA'), [60, 40, 30, [['padding thickness', 25.4]]])![3]).toEqual([
    ['units', 'us'],
    ['padding thickness', 1],
  ]);
});

test('tables are converted by the names of their columns', () => {
  const table = [
    ['no', 'length', 'weight'],
    [1, 25.4, 20],
  ];
  expect(inUs(byId('COLLECTION'), [table])![0]).toEqual([
    ['no', 'length', 'weight'],
    [1, 10, 44.092],
  ]);
});

test('what is in US units already, or takes none, is left alone', () => {
  expect(inUs(byId('AREA'), [24, 16, 12, 'us'])).toBeUndefined();
  expect(inUs(byId('DENSITY'), ['sandstone'])).toBeUndefined();
});
