import { expect, test } from 'vitest';
import { amount, noAnswer } from '../../../src/calculation/result.ts';
import { planCell } from '../../../src/functions/calling/plan-table.ts';

test('numbers get their quantity, words and faults stay', () => {
  const fault = noAnswer('no room');
  expect(planCell(2, 'mass')).toEqual(amount(2, 'mass'));
  expect(planCell('hoist', 'count')).toBe('hoist');
  expect(planCell(true, null)).toBe(true);
  expect(planCell(fault, 'mass')).toBe(fault);
});
