import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Argument, OutCell } from '../../src/functions/calling/cell.ts';
import { functions } from '../../src/functions/index.ts';
import { difference } from './compare.ts';

const settings = functions.find((f) => f.id === 'SETTINGS')!;
const table = (argument?: Argument) => settings.call(argument === undefined ? [] : [argument]) as OutCell[][];
const listed = readFileSync(new URL('settings.tsv', import.meta.url), 'utf8')
  .trimEnd()
  .split('\n')
  .map((line) => line.split('\t'));
const [header, ...rows] = listed as [string[], ...string[][]];

test('the table has the rows and columns of the committed list, in its order', () => {
  expect(table()[0]).toEqual([...header, 'source']);
  expect(
    table()
      .slice(1)
      .map(([name]) => name),
  ).toEqual(rows.map(([name]) => name));
});

describe('each default is the committed one', () => {
  test.each(rows.map((row, i) => [row[0]!, row, i] as const))('%s', (_, row, i) => {
    const made = table()[i + 1]!;
    for (const [column, text] of row.entries()) {
      const cell = made[column];
      // Written with all digits that count; conversion costs the last one.
      if (typeof cell === 'number') expect(cell / Number(text)).toBeCloseTo(1, 12);
      else expect(cell).toBe(text);
    }
    expect(String(made[7]).length, 'a source').toBeGreaterThan(5);
  });
});

describe('round values in US units', () => {
  const us = new Map(table('us').map((row) => [row[0], row]));
  test.each([
    ['padding thickness', 0.25, 'in'],
    ['padding sheet length', 108, 'in'],
    ['padding sheet width', 48, 'in'],
    ['cloth weight', 6, 'oz/yd²'],
    ['roll width', 50, 'in'],
    ['edge strip width', 4, 'in'],
    ['clay thickness', 0.125, 'in'],
    ['plaster pack', 50, 'lb'],
    ['cloth pack', 50, 'yd'],
    ['sealer pack', 4, 'US qt'],
    ['room temperature', 68, '°F'],
  ])('%s is %d %s', (name, value, unit) => {
    const [, shown, shownUnit] = us.get(name)!;
    expect((shown as number) / value).toBeCloseTo(1, 9);
    expect(shownUnit).toBe(unit);
  });
});

test('calibration with both ends has that range, and what it was measured with keeps its central value', () => {
  const rows = table([
    ['calibration', 1.1],
    ['calibration low', 1],
    ['calibration high', 1.25],
  ]);
  const ends = (name: string) => rows.find(([first]) => first === name)!.slice(4, 6);
  expect(ends('calibration')).toEqual([1, 1.25]);
  for (const name of ['layer thickness', 'finish coat', 'water ratio', 'waste']) expect(ends(name)).toEqual(['', '']);
  expect(difference([ends('flange')], [[4, 7]])).toBeUndefined();
});
