import { expect, test } from 'vitest';
import schedule from '../../src/functions/schedule.ts';

test('hours are hours in both systems of units', () => {
  const metric = schedule.call([1, 8]) as (number | string)[][];
  const us = schedule.call([1 / 0.3048 ** 2, 8, 'us']) as (number | string)[][];
  expect(us.map(([step]) => step)).toEqual(metric.map(([step]) => step));
  for (const [i, row] of us.slice(1).entries()) {
    // Conversions of the settings round.
    expect(row[1]).toBeCloseTo(metric[i + 1]![1] as number, 9);
    expect(row[2]).toBeCloseTo(metric[i + 1]![2] as number, 9);
  }
});

test('air in which nothing dries says what to do', () => {
  const damp = [
    ['room temperature', 1],
    ['room humidity', 0.99],
  ];
  expect(schedule.call([1, 8, damp])).toMatchObject({ code: '#N/A', reason: expect.stringMatching(/warm the room$/) });
  expect(schedule.call([0, 8])).toMatchObject({ code: '#VALUE!', reason: 'shell_area is 0; type a number above 0' });
});
