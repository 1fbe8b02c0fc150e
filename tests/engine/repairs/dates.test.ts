import { describe, expect, test } from 'vitest';
import { daySerial, monthsLater } from '../../../src/engine/repairs/dates.ts';

describe('months later, as serial numbers of days', () => {
  test.each([
    // [start, months, result]; 1 is 1 January 1900, 59 is 28 February 1900, 61 is 1 March 1900.
    [1, 0, 1],
    [31, 1, 59],
    [1, 2, 61],
    [61, -1, 32],
    [45_322, 1, 45_351],
    [45_322, 13, 45_716],
    [45_351, -12, 44_985],
    [45_322.75, 1, 45_351],
  ])('%d and %i months', (start, months, result) => {
    expect(monthsLater(start, months)).toBe(result);
  });
});

describe('the day of a year, month and day', () => {
  test.each([
    [1900, 1, 1, 1],
    [1900, 2, 29, 60],
    [1900, 3, 1, 61],
    [0, 1, 1, 1],
    [2024, 2, 30, 45_352],
    [2024, 0, 31, 45_291],
    [9999, 12, 31, 2_958_465],
  ])('%i-%i-%i', (year, month, day, serial) => {
    expect(daySerial(year, month, day)).toBe(serial);
  });

  test.each([
    [-1, 1, 1],
    [10_000, 1, 1],
    [9999, 12, 32],
    [1900, 1, -1],
  ])('%i-%i-%i is no day', (year, month, day) => {
    expect(daySerial(year, month, day)).toBeNaN();
  });
});
