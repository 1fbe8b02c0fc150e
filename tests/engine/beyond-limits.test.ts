import { expect, test } from 'vitest';
import { beyondLimits } from '../../src/engine/beyond-limits.ts';

test('within all limits', () => {
  const deep = `${'('.repeat(64)}1${')'.repeat(64)}`;
  for (const formula of ['', 'SUM(A:Z)+SUM(5:9)', 'A1:I1048576', 'SUM(1,2)*"("', deep, 'x'.repeat(8192)])
    expect(beyondLimits(formula)).toBeUndefined();
});

test.each([
  ['x'.repeat(8193), 'the formula is longer than 8192 characters'],
  [`${'('.repeat(65)}1${')'.repeat(65)}`, 'the formula has more than 64 brackets inside each other'],
  ['SUM(A:XFD)', 'A:XFD holds more than 10 million cells, which is more than is looked at here'],
  ['Data!J1048576:A1', 'Data!J1048576:A1 holds more than 10 million cells, which is more than is looked at here'],
])('%.20s', (formula, reason) => {
  expect(beyondLimits(formula)).toBe(reason);
});
