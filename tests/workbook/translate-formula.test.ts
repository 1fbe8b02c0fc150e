import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { translateFormula, translator } from '../../src/workbook/translate-formula.ts';

describe('one row down and one column right', () => {
  test.each([
    ['A1', 'B2'],
    ['a1+$A1+A$1+$A$1', 'B2+$A2+B$1+$A$1'],
    ['SUM(A1:B10)', 'SUM(B2:C11)'],
    ['SUM(A:A,1:1,$B:C,$2:3)', 'SUM(B:B,2:2,$B:D,$2:4)'],
    ['LOG10(A1)', 'LOG10(B2)'],
    ['"A1"&A1&"say ""A1"""', '"A1"&B2&"say ""A1"""'],
    ["'A1 B2'!C3+'it''s A1'!D4", "'A1 B2'!D4+'it''s A1'!E5"],
    ['Sheet1!A1+Sheet1!A1:B2', 'Sheet1!B2+Sheet1!B2:C3'],
    ['First:Last!A1', 'First:Last!B2'],
    ['AB1:AC1!A1', 'AB1:AC1!B2'],
    ['[1]Data!A1+[2]!name1', '[1]Data!B2+[2]!name1'],
    [
      'Jackets[A1]+Jackets[[#This Row],[B2]]+Jackets[[#All],[C]:[D3]]',
      'Jackets[A1]+Jackets[[#This Row],[B2]]+Jackets[[#All],[C]:[D3]]',
    ],
    ["Jackets[It'[s A1]+A1", "Jackets[It'[s A1]+B2"],
    ['TAX1[Net]+A1', 'TAX1[Net]+B2'],
    ['weights*A1', 'weights*B2'],
    ['_xldudf_JACKET_PLASTER(A1,layers)', '_xldudf_JACKET_PLASTER(B2,layers)'],
    ['_xlfn.LET(_xlpm.a,A1,_xlpm.a+1)', '_xlfn.LET(_xlpm.a,B2,_xlpm.a+1)'],
    ['A1.5+x.A1+A1_+_A1', 'A1.5+x.A1+A1_+_A1'],
    ['1E5+1.5E+3+A1', '1E5+1.5E+3+B2'],
    ['#REF!+#N/A+A1', '#REF!+#N/A+B2'],
    ['A1:INDEX(B1:B9,3)', 'B2:INDEX(C2:C10,3)'],
    ['OFFSET(A1,1,1):B9', 'OFFSET(B2,1,1):C10'],
    ['{1,2;3,"A1"}*A1', '{1,2;3,"A1"}*B2'],
    ['IF(TRUE,A1,FALSE)', 'IF(TRUE,B2,FALSE)'],
    ['A1 B1 , C1', 'B2 C2 , D2'],
    ['XFE1+A1048577', 'XFE1+A1048577'],
    ['-A1%^A1<>A1', '-B2%^B2<>B2'],
    ['A1#', 'B2#'],
  ])('%s', (from, to) => {
    expect(translateFormula(from, 1, 1)).toBe(to);
  });
});

describe('off the sheet', () => {
  test.each<[string, number, number, string]>([
    ['A1', -1, 0, '#REF!'],
    ['A1', 0, -1, '#REF!'],
    ['$A$1', -1, -1, '$A$1'],
    ['XFD1048576', 1, 0, '#REF!'],
    ['XFD1', 0, 1, '#REF!'],
    ['SUM(A1:A5)', -1, 0, 'SUM(#REF!)'],
    ['Sheet1!A1', -1, 0, 'Sheet1!#REF!'],
    ['A:A', 0, -1, '#REF!'],
    ['1:1', -1, 0, '#REF!'],
    ['A:A', 5, 0, 'A:A'],
    ['1:1', 0, 5, '1:1'],
  ])('%s by %d, %d', (from, rows, columns, to) => {
    expect(translateFormula(from, rows, columns)).toBe(to);
  });
});

test('there and back again is where it was', () => {
  const cell = fc
    .tuple(fc.integer({ min: 0, max: 200 }), fc.integer({ min: 500, max: 900 }), fc.boolean(), fc.boolean())
    .map(([column, row, fixedColumn, fixedRow]) => {
      const letters = String.fromCharCode(66 + Math.floor(column / 26)) + String.fromCharCode(65 + (column % 26));
      return `${fixedColumn ? '$' : ''}${letters}${fixedRow ? '$' : ''}${row}`;
    });
  const piece = fc.oneof(
    cell,
    fc.constantFrom('+', '(', ')', ',', ' ', '"A1"', 'SUM(', "'A1'!", 'T1[A1]', '1.5', '#REF!', ':'),
  );
  fc.assert(
    fc.property(
      fc.array(piece, { maxLength: 12 }),
      fc.integer({ min: -100, max: 100 }),
      fc.integer({ min: -20, max: 20 }),
      (pieces, rows, columns) => {
        const formula = pieces.join(' ');
        expect(translateFormula(translateFormula(formula, rows, columns), -rows, -columns)).toBe(formula);
      },
    ),
    { seed: 20261125, numRuns: 500 },
  );
});

test('a translator shifts one formula many times', () => {
  const shift = translator('A1*$B$1');
  expect([shift(0, 0), shift(1, 0), shift(2, 3)]).toEqual(['A1*$B$1', 'A2*$B$1', 'D3*$B$1']);
});
