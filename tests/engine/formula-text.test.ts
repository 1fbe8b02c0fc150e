import { describe, expect, test } from 'vitest';
import { bare, columnLetters, columnNumber, reach, seenFrom, sheetIn, tokens } from '../../src/engine/formula-text.ts';

const kinds = (formula: string): string[] => tokens(formula).map(({ kind, text }) => `${kind} ${text}`);

describe('pieces of a formula', () => {
  test.each([
    ['1.5+.5', ['number 1.5', 'operator +', 'number .5']],
    ['1E-3', ['number 1E-3']],
    ['"a""b"&"="', ['text "a""b"', 'operator &', 'text "="']],
    ['A1', ['reference A1']],
    ['$A$1:b2', ['reference $A$1:b2']],
    ['A:C', ['reference A:C']],
    ['1:3', ['reference 1:3']],
    ["'My ''sheet'!A1", ["reference 'My ''sheet'!A1"]],
    ['Data!A1:B2', ['reference Data!A1:B2']],
    ['LOG10(2)', ['function LOG10', 'bracket (', 'number 2', 'bracket )']],
    ['JACKET.AREA(A1)', ['function JACKET.AREA', 'bracket (', 'reference A1', 'bracket )']],
    ['[2]!_xldudf_JACKET_AREA(1)', ['function [2]!_xldudf_JACKET_AREA', 'bracket (', 'number 1', 'bracket )']],
    ['A1_rate', ['name A1_rate']],
    ['Specimens[length]', ['structured Specimens[length]']],
    ['T[[#This Row],[a b]]*2', ['structured T[[#This Row],[a b]]', 'operator *', 'number 2']],
    ["T[it'] is]", ["structured T[it'] is]"]],
    ['A1#', ['reference A1', 'operator #']],
    ['#N/A', ['error #N/A']],
    [
      '{1,2;3,4}',
      [
        'bracket {',
        'number 1',
        'separator ,',
        'number 2',
        'separator ;',
        'number 3',
        'separator ,',
        'number 4',
        'bracket }',
      ],
    ],
    [
      'A1:INDEX(B1,1)',
      [
        'reference A1',
        'operator :',
        'function INDEX',
        'bracket (',
        'reference B1',
        'separator ,',
        'number 1',
        'bracket )',
      ],
    ],
    ['a<=b', ['name a', 'operator <=', 'name b']],
    ['"open', ['other "', 'name open']],
  ])('%s', (formula, expected) => {
    expect(kinds(formula)).toEqual(expected);
  });

  test('together they are the whole text', () => {
    const formula = ` IF('it''s'!$A1 >= 1e3 , T[[#All],[x]] , "§" ) ¤ `;
    expect(
      tokens(formula)
        .map(({ text }) => text)
        .join(''),
    ).toBe(formula);
  });
});

test('a formula without its sign', () => {
  expect(bare('= 1+1 ')).toBe('1+1');
  expect(bare('1+1')).toBe('1+1');
});

describe('columns', () => {
  test.each([
    [1, 'A'],
    [26, 'Z'],
    [27, 'AA'],
    [702, 'ZZ'],
    [703, 'AAA'],
    [16_384, 'XFD'],
  ])('%i is %s', (number, letters) => {
    expect(columnLetters(number)).toBe(letters);
    expect(columnNumber(letters)).toBe(number);
  });
});

describe('the same formula seen from its own cell', () => {
  test('a filled-down formula', () => {
    expect(seenFrom('A2*$B$1+C:C', 2, 4)).toBe(seenFrom('A9*$B$1+C:C', 9, 4));
  });

  test('a formula filled to the right', () => {
    expect(seenFrom('A$2+Data!B3', 3, 3)).toBe(seenFrom('B$2+Data!C3', 3, 4));
  });

  test('another cell or another fixed sign is another formula', () => {
    expect(seenFrom('A2', 2, 4)).not.toBe(seenFrom('A2', 3, 4));
    expect(seenFrom('A2', 2, 4)).not.toBe(seenFrom('A$2', 2, 4));
    expect(seenFrom('Data!A2', 2, 4)).not.toBe(seenFrom('A2', 2, 4));
  });

  test('what looks like a cell in a text or a name stays', () => {
    expect(seenFrom('"A2"&A2_x', 2, 1)).toBe('"A2"&A2_x');
  });
});

test('how far references reach', () => {
  expect(reach('A1+Data!C20+$B$7:D9')).toEqual({ row: 20, column: 4 });
  expect(reach('SUM(F:F)')).toEqual({ row: 0, column: 6 });
  expect(reach('SUM(30:31)')).toEqual({ row: 31, column: 0 });
  expect(reach('"Z99"')).toEqual({ row: 0, column: 0 });
});

test.each([
  ['A1', undefined],
  ['Data!A1', 'Data'],
  ["'it''s a sheet'!$A$1:B2", "it's a sheet"],
])('the sheet in %s', (text, sheet) => {
  expect(sheetIn(text)).toBe(sheet);
});
