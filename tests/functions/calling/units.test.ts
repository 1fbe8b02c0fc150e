import { describe, expect, test } from 'vitest';
import type { Quantity } from '../../../src/calculation/result.ts';
import { fromSi, spoken, toSi, UNIT_SYSTEMS, UNITS } from '../../../src/functions/calling/units.ts';

/** Two roundings of a double, there and back. */
const ROUNDING = 4 * Number.EPSILON;

test.each(Object.keys(UNITS) as Quantity[])('%s goes to SI and back in both systems', (quantity) => {
  for (const system of UNIT_SYSTEMS)
    for (const x of [1, 3.7, 1e-3, 68, 12345.678]) {
      const back = fromSi(toSi(x, quantity, system), quantity, system);
      expect(Math.abs(back - x)).toBeLessThanOrEqual(ROUNDING * Math.max(100, x));
    }
});

describe('what a unit is in SI', () => {
  // [R] NIST SP 811, appendix B.8, to the digits printed there; exact definitions of inch, pound and US gallon.
  test.each<[Quantity, number]>([
    ['length', 0.0254],
    ['mass', 0.45359237],
    ['area', 0.09290304],
    ['bodyVolume', 0.028316846592],
    ['liquidVolume', 0.000946352946],
    ['clothLength', 0.9144],
    ['moment', 1.3558179483314],
  ])('%s', (quantity, si) => {
    expect(toSi(1, quantity, 'us') / si).toBeCloseTo(1, 13);
  });

  test('temperatures have a zero of their own', () => {
    expect(toSi(68, 'temperature', 'us')).toBeCloseTo(20, 12);
    expect(fromSi(-40, 'temperature', 'us')).toBeCloseTo(-40, 12);
  });
});

test('numbers are spoken with their unit and few digits', () => {
  expect(spoken(0.6, 'length', 'metric')).toBe('60 cm');
  expect(spoken(0.0123456, 'thickness', 'metric')).toBe('12.35 mm');
  expect(spoken(20, 'mass', 'us')).toBe('44.09 lb');
  expect(spoken(6, 'count', 'metric')).toBe('6');
});

test('the largest numbers are spoken as numbers, and what lies beyond them in words', () => {
  // Four digits of it would be 1.798e308, which no number can be.
  expect(spoken(1.7976e308, 'hours', 'metric')).toBe('1.7976e+308 hours');
  expect(spoken(1.7976e308, 'length', 'metric')).toBe('a number out of range');
  expect(spoken(Number.NaN, 'count', 'us')).toBe('a number out of range');
});
