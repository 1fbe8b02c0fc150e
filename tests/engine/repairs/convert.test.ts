import { describe, expect, test } from 'vitest';
import { converted } from '../../../src/engine/repairs/convert.ts';

describe('exact by definition', () => {
  test.each([
    // [value, from, to, result]; the international yard and pound, the litre, the calorie, the degree.
    [1, 'in', 'mm', 25.4],
    [1, 'lbm', 'g', 453.59237],
    [1, 'gal', 'l', 3.785411784],
    [1, 'm3', 'l', 1000],
    [1, 'km2', 'm2', 1_000_000],
    [212, 'F', 'C', 100],
    [0, 'K', 'C', -273.15],
    [80, 'Reau', 'C', 100],
    [1, 'Mibyte', 'byte', 1_048_576],
    [1, 'dam', 'm', 10],
  ])('%d %s in %s is %d', (value, from, to, result) => {
    // The way through the first unit of the kind costs last digits.
    expect(converted(value, from, to)).toBeCloseTo(result, 10);
  });
});

test.each([
  ['m', 'g'],
  ['x', 'm'],
  ['kin', 'm'],
  ['kim', 'm'],
  ['M', 'm'],
])('%s in %s is nothing', (from, to) => {
  expect(converted(1, from, to)).toBeUndefined();
});

test('a unit in itself stays as it is to the last digit', () => {
  expect(converted(0.1, 'C', 'C')).toBe(0.1);
});
