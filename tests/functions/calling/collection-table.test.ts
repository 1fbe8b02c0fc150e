import { expect, test } from 'vitest';
import { isFault } from '../../../src/calculation/result.ts';
import { type Cell, CellError } from '../../../src/functions/calling/cell.ts';
import { type CollectionTable, collectionTable } from '../../../src/functions/calling/collection-table.ts';
import { tableCells } from '../../../src/functions/calling/tables.ts';
import { expectFault, settings } from '../../calculation/kit.ts';

const made = (first: Cell[]): CollectionTable => {
  const table = collectionTable(first, settings(), 'metric');
  if (isFault(table)) throw new Error(table.problem);
  return table;
};

test('says which columns are read, so that all others may stay text', () => {
  const table = made(['no', 'weight', 'length', 'remark', 'width', 'height']);
  expect([table.named, [...table.inputs].sort()]).toEqual([true, [1, 2, 4, 5]]);
  expect(table.header.slice(0, 2)).toEqual(['no', 'padding']);
});

test('without names the first row is a specimen', () => {
  const table = made([60, 40, 30, 20]);
  expect([table.named, table.inputs.size, table.header[0]]).toEqual([false, 4, 'padding']);
});

test('a row that is refused keeps what identifies it', () => {
  const error = new CellError('#VALUE!', 'the row has 9 fields');
  const row = made(['no', 'length', 'width', 'height', 'weight']).refused(['A7', 1, 2, 3, 4], error);
  expect([row[0], row[1], row[2], row.at(-1)]).toEqual(['A7', '', error, 'the row has 9 fields']);
});

test('many rows that each say something of their own are as good as few', () => {
  const names = ['length', 'width', 'height', 'weight', 'relief factor'];
  const table = made(names);
  const factors = Array.from({ length: 1200 }, (_, i) => 1 + i / 1000);
  const first = factors.map((factor) => table.row([60, 40, 30, 20, factor]));
  for (const i of [0, 499, 500, 501, 1199])
    expect(tableCells([table.row([60, 40, 30, 20, factors[i]!])], 'metric')).toEqual(tableCells([first[i]!], 'metric'));
});

test('a table that cannot be read is one fault', () => {
  expectFault(collectionTable(['a', 'b'], settings(), 'metric'), 'value', 'table');
  expectFault(collectionTable([], settings(), 'metric'), 'value', 'table');
});
