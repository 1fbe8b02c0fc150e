import { expect, test } from 'vitest';
import { rangeForOneCell } from '../../src/engine/one-cell.ts';

test.each([
  ['SUM(A1:A3*2)', 'A1:A3'],
  ['A:A+1', 'A:A'],
  ['-A1:A3', 'A1:A3'],
  ['LEN(A1:A3)', 'A1:A3'],
  ['IF(A1:A3>1,1,2)', 'A1:A3'],
  ['MAX(IF(B1:B9="x",C1:C9))', 'B1:B9'],
  ['SUM(T[a]*2)', 'T[a]'],
  ['"x"&Data!A1:B1', 'Data!A1:B1'],
])('%s takes one cell of %s', (formula, range) => {
  expect(rangeForOneCell(formula)).toBe(range);
});

test.each([
  'SUM(A1:A3)*2',
  'SUM(A1*2,B1:B3)',
  'A1+A2',
  'A1:A1+1',
  'SUMPRODUCT(A1:A3*2)',
  'SUMPRODUCT(--(A1:A3="x"),B1:B3)',
  'SUMPRODUCT(LEN(A1:A3))',
  'LOOKUP(2,1/(A1:A3="x"),B1:B3)',
  'INDEX(A1:A3*2,1)',
  'SUM({1,2}*2)',
  'T[[#This Row],[a]]*2',
  'T[@a]*2',
  'COUNTIF(A1:A3,">1")',
  'IF(A1,SUM(B1:B3),C1)',
  'SUM(A1:INDEX(A1:A9,3))',
  'ROUND(SUM(A1:A3),2)',
])('%s works as it is', (formula) => {
  expect(rangeForOneCell(formula)).toBeUndefined();
});
