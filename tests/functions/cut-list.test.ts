import { expect, test } from 'vitest';
import cutList from '../../src/functions/cut-list.ts';

test('the last row is the length of roll, in the unit of cloth on the roll', () => {
  const metric = cutList.call([60, 40, 30, 6]) as (number | string)[][];
  const us = cutList.call([60 / 2.54, 40 / 2.54, 30 / 2.54, 6, 'us']) as (number | string)[][];
  expect(metric.at(-1)).toEqual(['roll length', expect.any(Number), '', '']);
  expect(((us.at(-1)![1] as number) * 0.9144) / (metric.at(-1)![1] as number)).toBeCloseTo(1, 9);
  expect((us[1]![2] as number) * 2.54).toBeCloseTo(42, 9);
  // 36 squares of 42 cm three across take 5.04 m already; all pieces without a gap 6.2 m.
  const area = (36 * 42 * 42 + 20 * 42 * 10.16 + 36 * 15 * 15 + 30 * 10 * 10) / 1e4;
  expect(metric.at(-1)![1]).toBeGreaterThanOrEqual(area / 1.27);
  expect(metric.at(-1)![1]).toBeLessThan((1.05 * area) / 1.27);
});

test('a roll narrower than a piece says what to change', () => {
  expect(cutList.call([60, 40, 30, 6, [['roll width', 30]]])).toMatchObject({
    code: '#N/A',
    reason:
      'a roll 30 cm wide is too narrow for cover pieces of 42 cm; set a smaller piece size, or the roll width of a wider roll',
  });
  const us = [
    ['units', 'us'],
    ['roll width', 12],
  ];
  expect(cutList.call([24, 16, 12, 6, us])).toMatchObject({
    reason: expect.stringContaining('a roll 12 in wide is too narrow for cover pieces of 16.54 in'),
  });
});

test('more pieces than can be laid out', () => {
  expect(cutList.call([3000, 2000, 1000, 16])).toMatchObject({
    code: '#N/A',
    reason: expect.stringContaining('set a larger piece size, or take the length from CLOTH'),
  });
  expect(cutList.check([60, 40, 30, 6])).toBe('ok');
});
