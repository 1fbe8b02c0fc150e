import { expect, test } from 'vitest';
import { NEWER_FUNCTIONS } from '../../src/workbook/newer-functions.ts';

test('each name once, in capital letters, with one of two prefixes', () => {
  expect(NEWER_FUNCTIONS.size).toBeGreaterThan(150);
  for (const [name, prefix] of NEWER_FUNCTIONS) {
    expect(name).toMatch(/^[A-Z0-9.]+$/);
    expect(prefix).toMatch(/^_xlfn\.(_xlws\.)?$/);
  }
});

test.each([
  'SUM',
  'IFERROR',
  'SUMIFS',
  'CEILING',
  'STDEV',
  'NETWORKDAYS.INTL',
  'WORKDAY.INTL',
  'ISO.CEILING',
  'HYPERLINK',
])('%s is stored as it is', (name) => {
  expect(NEWER_FUNCTIONS.has(name)).toBe(false);
});
