import { describe, expect, test } from 'vitest';
import { type Argument, isCellError, type OutCell } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';

const call = (id: string, ...args: Argument[]) => functions.find((f) => f.id === id)!.call(args) as OutCell[][];

describe.each([
  ['metric', [60, 40, 30, 20]],
  ['us', [24, 16, 12, 44]],
  ['metric', [200, 30, 20, 150]],
] as const)('in %s units, %j', (system, sizes) => {
  const [header, ...rows] = call('COMPARE', ...sizes, system);
  const felt = call('PLAN', ...sizes, 'felt', system).slice(1);
  const foam = call('PLAN', ...sizes, 'foam', system).slice(1);

  test('has the columns of the contract', () => {
    expect(header!.join(', ')).toBe('item, felt, foam, foam − felt, unit, felt low, felt high, foam low, foam high');
  });

  test('holds the rows of both plans side by side', () => {
    expect(rows.map(([label]) => label)).toEqual(felt.map(([label]) => label));
    for (const [i, row] of rows.entries()) {
      const [label, a, unit, aLow, aHigh] = felt[i]!;
      const [, b, , bLow, bHigh] = foam[i]!;
      expect([row[0], row[1], row[2], ...row.slice(4)], String(label)).toEqual([
        label,
        a,
        b,
        unit,
        aLow,
        aHigh,
        bLow,
        bHigh,
      ]);
    }
  });

  test('the difference is that of the two cells, and blank for words', () => {
    for (const [label, a, b, difference] of rows)
      expect(difference, String(label)).toBe(typeof a === 'number' && typeof b === 'number' ? b - a : '');
    expect(rows.find(([label]) => label === 'mix temperature')![3]).toBe(0);
  });
});

test('foam takes two mixes a half, weighs less and uses as many sheets', () => {
  const rows = new Map(call('COMPARE', 60, 40, 30, 20).map((row) => [row[0], row]));
  expect(rows.get('mixes')!.slice(1, 4)).toEqual([2, 4, 2]);
  // Padding of 0.79 m², 6.35 mm, 149.506 and 35.2406 kg/m³.
  expect(rows.get('weight')![3]).toBeCloseTo(0.7923952088 * 6.35e-3 * (35.2406 - 149.506), 8);
  expect(rows.get('padding sheets')![3]).toBe(0);
});

test('an error in both stands in the difference too', () => {
  const margin = call('COMPARE', 60, 40, 30, 20, [['foot size', 35]]).find(([label]) => label === 'margin')!;
  expect(margin.filter(isCellError)).toHaveLength(7);
});
