import { describe, expect, test } from 'vitest';
import { unreadable } from '../../src/engine/syntax.ts';

describe('formulas that can be read', () => {
  test.each([
    '1+1',
    '= 1 + 1',
    '-2^-1%',
    'SUM()',
    'IF(A1,,2)',
    'IF(A1,1,)',
    'jacket.area(60,40,30,{"units","us";"waste",-0.2})',
    '{1,TRUE;#N/A,"x"}',
    'LAMBDA(x,x+1)(4)',
    'A1:B2 B1:C3',
    'SUM((A1,B2))',
    'T[[#All],[a]]*@A1',
    "'it''s'!A1&\"a,b)\"",
    'A1#',
    'A1:INDEX(B1:B9,2)',
    '--(A1:A2>1)',
  ])('%s', (formula) => {
    expect(unreadable(formula)).toBeUndefined();
  });
});

describe('formulas that cannot, with the place', () => {
  test.each([
    ['', 'the formula is empty'],
    ['=', 'the formula is empty'],
    ['1+', 'the end of the formula is missing'],
    ['*2', 'a value is missing at «*», character 1'],
    ['1+*2', 'a value is missing at «*», character 3'],
    ['SUM(1,2', 'a bracket is not closed'],
    ['SUM(1,2))', 'a bracket closes that was not opened, at «)», character 9'],
    ['(1}', 'a bracket closes that was not opened, at «}», character 3'],
    ['(1,', 'a bracket is not closed'],
    ['()', 'a value is missing at «)», character 2'],
    ['SUM(1+)', 'a value is missing at «)», character 7'],
    ['1 2', 'an operator or a comma is missing at «2», character 3'],
    ['"a" "b"', 'an operator or a comma is missing at «"b"», character 5'],
    ['2A', 'an operator or a comma is missing at «A», character 2'],
    ['1,2', 'a comma stands outside of brackets, at «,», character 2'],
    ['SUM(1;2)', 'put commas between arguments, not semicolons, at «;», character 6'],
    ['SUM(;2)', 'put commas between arguments, not semicolons, at «;», character 5'],
    ['"abc', 'a text has no closing quotation mark, at «"», character 1'],
    ['1 ¤ 2', 'this cannot be read at «¤», character 3'],
    ['{1,,2}', 'an array cannot leave a value out, at «,», character 4'],
    ['{}', 'an array cannot leave a value out, at «}», character 2'],
    ['{1,2;3}', 'the rows of an array are not of one length, at «}», character 7'],
    ['{1,A1}', 'an array holds numbers, texts, TRUE, FALSE and error values only, at «A1», character 4'],
    ['{1 2}', 'a comma or a semicolon is missing at «2», character 4'],
    ['{1*2}', 'a comma or a semicolon is missing at «*», character 3'],
    ['{*2}', 'a value is missing at «*», character 2'],
    ['{1', 'a bracket is not closed'],
  ])('%s: %s', (formula, reason) => {
    expect(unreadable(formula)).toBe(reason);
  });
});
