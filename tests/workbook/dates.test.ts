import { expect, test } from 'vitest';
import { serialDate } from '../../src/workbook/dates.ts';

test.each([
  // The day counts of ECMA-376 part 1, 18.17.4.1: 1 January 1900 is 1, 28 February is 59, 1 March is 61.
  ['1900-01-01', false, 1],
  ['1900-02-28', false, 59],
  ['1900-03-01', false, 61],
  ['1970-01-01', false, 25569],
  ['2026-11-25T12:00:00', false, 46351.5],
  ['2026-11-25T12:00:00.000Z', false, 46351.5],
  ['1904-01-01', true, 0],
  ['1904-01-02T06:00:00', true, 1.25],
  ['18:00:00', false, 0.75],
])('%s, from 1904: %s', (text, from1904, serial) => {
  expect(serialDate(text, from1904)).toBe(serial);
});

test('no date', () => {
  expect(serialDate('soon', false)).toBeUndefined();
});
