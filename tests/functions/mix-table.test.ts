import { expect, test } from 'vitest';
import mixTable from '../../src/functions/mix-table.ts';
import plaster from '../../src/functions/plaster.ts';

test('the same mixes in both systems of units', () => {
  const metric = mixTable.call([1, 8, 'metric']) as (number | string)[][];
  const us = mixTable.call([1 / 0.3048 ** 2, 8, 'us']) as (number | string)[][];
  expect(us).toHaveLength(metric.length);
  const [, , water, volume, dry, slurry] = metric[1] as number[];
  const [, , usWater, usVolume, usDry, usSlurry] = us[1] as number[];
  // Pounds and US quarts by their definitions; some roundings lie between.
  expect((usWater! * 0.45359237) / water!).toBeCloseTo(1, 12);
  expect((usDry! * 0.45359237) / dry!).toBeCloseTo(1, 12);
  expect((usVolume! * 0.946352946) / volume!).toBeCloseTo(1, 12);
  expect((usSlurry! * 0.946352946) / slurry!).toBeCloseTo(1, 12);
});

test('the plaster column adds up to PLASTER', () => {
  const rows = mixTable.call([3, 12]) as number[][];
  const sum = rows.slice(1).reduce((total, row) => total + row[4]!, 0);
  expect(sum / (plaster.call([3, 12]) as number)).toBeCloseTo(1, 12);
});

test('a column and a blank are refused, and a bucket that is far too small says so', () => {
  expect(mixTable.call([[[1], [2]], 8])).toMatchObject({ code: '#VALUE!', reason: expect.stringMatching(/one value/) });
  expect(mixTable.call([null, 8])).toMatchObject({ code: '#VALUE!', reason: expect.stringMatching(/is blank/) });
  expect(mixTable.call([1, 0])).toMatchObject({ code: '#VALUE!', reason: 'layers is 0; type a number above 0' });
  expect(mixTable.call([1, 8, [['bucket', 0.001]]])).toMatchObject({
    code: '#N/A',
    reason: 'this takes 13596 mixes, more than the 1000 that a table lists; set a larger bucket or laying rate',
  });
  expect(mixTable.call([1, 8, [['bucket', 0]]])).toMatchObject({ code: '#VALUE!' });
});
