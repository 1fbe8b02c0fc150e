import { describe, expect, test } from 'vitest';
import { readTableReference, rowsOfSections } from '../../src/engine/table-reference.ts';

describe('references into a table', () => {
  test.each([
    ['T', { table: 'T', sections: [] }],
    ['T[]', { table: 'T', sections: [] }],
    ['T[a]', { table: 'T', sections: [], columns: ['a', 'a'] }],
    ['T[ two words ]', { table: 'T', sections: [], columns: ['two words', 'two words'] }],
    ['T[#All]', { table: 'T', sections: ['#all'] }],
    ['T[[a]:[b]]', { table: 'T', sections: [], columns: ['a', 'b'] }],
    ['T[[#Totals],[a]]', { table: 'T', sections: ['#totals'], columns: ['a', 'a'] }],
    ['T[[#Headers],[#Data],[a]:[b]]', { table: 'T', sections: ['#headers', '#data'], columns: ['a', 'b'] }],
    ['T[[#This Row], [a]]', { table: 'T', sections: ['#this row'], columns: ['a', 'a'] }],
    ["T[[it''s '[m']]]", { table: 'T', sections: [], columns: ["it's [m]", "it's [m]"] }],
  ])('%s', (text, expected) => {
    expect(readTableReference(text)).toEqual(expected);
  });

  test.each(['T[[a][b]]', 'T[[a],[b]]', 'T[[a],[#Totals]]', 'T[[#This Row],[#Totals]]', 'T[[a]:[b]:[c]]'])(
    '%s cannot be read',
    (text) => {
      expect(readTableReference(text)).toBeUndefined();
    },
  );
});

test('rows of the sections', () => {
  const rows = { headers: 0, first: 1, last: 3, totals: 4 };
  expect(rowsOfSections([], rows)).toEqual([1, 3]);
  expect(rowsOfSections(['#all'], rows)).toEqual([0, 4]);
  expect(rowsOfSections(['#headers', '#data'], rows)).toEqual([0, 3]);
  expect(rowsOfSections(['#totals'], { ...rows, totals: undefined })).toBeUndefined();
  expect(rowsOfSections(['#all'], { ...rows, headers: undefined, totals: undefined })).toEqual([1, 3]);
});
