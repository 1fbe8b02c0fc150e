import { describe, expect, test } from 'vitest';
import { csvValue, readCsv, writeCsv } from '../../src/workbench/csv.ts';

describe('reading', () => {
  test.each([
    [
      'a,b\r\n1,2\r\n',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    [
      'a;b\n1,5;2\n',
      [
        ['a', 'b'],
        ['1,5', '2'],
      ],
    ],
    [
      'a\tb\n1\t2',
      [
        ['a', 'b'],
        ['1', '2'],
      ],
    ],
    ['"a,b",c', [['a,b', 'c']]],
    ['"say ""here""",c', [['say "here"', 'c']]],
    ['"two\nlines",c\n', [['two\nlines', 'c']]],
    [
      'a,\n,b',
      [
        ['a', ''],
        ['', 'b'],
      ],
    ],
    ['\uFEFFa,b', [['a', 'b']]],
    ['', []],
  ])('%j', (text, rows) => {
    expect(readCsv(text)).toEqual(rows);
  });
});

describe('values', () => {
  test.each([
    ['12', 12],
    ['-0.5', -0.5],
    ['007', '007'],
    ['1e5', '1e5'],
    ['12345678901234567890', '12345678901234567890'],
    ['TRUE', true],
    ['=SUM(A1)', '=SUM(A1)'],
    ['', null],
    ['1,5', '1,5'],
  ])('%j', (text, value) => {
    expect(csvValue(text)).toBe(value);
  });
});

test('what is written reads back the same', () => {
  const rows = [
    ['plain', 'with, comma', 'with "marks"'],
    ['two\nlines', ' space', ''],
  ];
  expect(readCsv(writeCsv(rows))).toEqual(rows);
});
