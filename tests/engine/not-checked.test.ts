import { afterAll, describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/engine.ts';
import { countedFrom1904, functionName, notCheckedReason, unknownFunctions } from '../../src/engine/not-checked.ts';
import { fakeFunctions } from './fake-functions.ts';

const engine = createEngine(fakeFunctions);
afterAll(() => engine.dispose());
const reason = (formula: string): string | undefined => notCheckedReason(formula, engine.knows);

describe('formulas that can be relied on', () => {
  test.each([
    'SUM(A1:A3)',
    'JACKET.ECHO(A1)',
    'jacket.echo(A1)',
    '_xldudf_JACKET_ECHO(A1)',
    'SEARCH("a",B1)',
    'IF("TRUE",1,2)',
    'IF(A1="x",1,2)',
    'LET(x,1,x+1)',
    'SUMPRODUCT(--({1,2,3}>1))',
    '-A1',
    '1-"1"',
    '"A1#"',
    'LAMBDA(x,x)(1)',
    'SUM( A1 , B1 )',
    'IF(A1, SUM(B1), 2)',
    'T[[#This Row],[a]]',
  ])('%s', (formula) => {
    expect(reason(formula)).toBeUndefined();
  });
});

describe('formulas that cannot, with the reason', () => {
  test.each([
    ['SEARCH("a*",B1)', 'SEARCH: wildcards are not understood here'],
    ['SEARCH(A1,B1)', 'SEARCH: wildcards are not understood here'],
    ['1+CONVERT(1,"m","ft")', 'CONVERT: the result is rounded here'],
    ['second(A1)', 'SECOND: seconds are cut off here, not rounded'],
    ['HYPERLINK("x")', 'HYPERLINK: links are not made here'],
    ['NOW()', 'NOW: the answer changes with time or place, so it is kept as it was'],
    ['IF("abc",1,2)', 'IF: a text as the condition is not refused here'],
    [
      '-"3"',
      'a minus in front of a text, a name or an array is not understood here; put brackets around what follows it',
    ],
    [
      '-{1,2}',
      'a minus in front of a text, a name or an array is not understood here; put brackets around what follows it',
    ],
    ['@A1', 'the sign @ in front of a reference is not understood here'],
    ['SUM(A1#)', 'a reference to a whole spill (A1#) is not understood here'],
    ['_xlfn.ANCHORARRAY(A1)', 'ANCHORARRAY: a reference to a whole spill (A1#) is not understood here'],
    ['A1:B2 B1:C3', 'the part that two references share (a space between them) is not understood here'],
    ['SUM((A1,B2))', 'references joined by a comma are not understood here'],
    ['[1]Data!A1', 'another workbook is not read here'],
    ['SUM(Jan:Mar!A1)', 'a reference across several sheets is not understood here'],
    ['SUM(T[#Totals])', 'the totals row of a table is not understood here'],
    ['TRIMRANGE(A1:A9)', 'TRIMRANGE: there is no such function here'],
    ['LET(f,LAMBDA(x,x),(f)(1))', 'a LAMBDA kept under a name cannot be called here'],
    ['_xldudf_OTHER_AREA(A1)', '_XLDUDF_OTHER_AREA: there is no such function here'],
    ['LET(f,LAMBDA(x,x),f(1))', 'F: a LAMBDA kept under a name cannot be called here'],
  ])('%s', (formula, expected) => {
    expect(reason(formula)).toBe(expected);
  });
});

test('functions that are not known', () => {
  expect(unknownFunctions('FOO(1)+SUM(BAR(2))', engine.knows)).toEqual(['FOO', 'BAR']);
  expect(unknownFunctions('LET(f,LAMBDA(x,x),f(1))', engine.knows)).toEqual([]);
});

test('names as files store them', () => {
  expect(functionName('_xlfn._xlws.SORT')).toBe('SORT');
  expect(functionName('[2]!_xldudf_jacket_area')).toBe('_XLDUDF_JACKET_AREA');
});

describe('the faults are still there: a mended engine makes a line of the list needless', () => {
  test('rounded CONVERT', async () => {
    // 100 °F is 37.777… °C; the shipped result has two places.
    expect(await engine.evaluate('CONVERT(100,"F","C")')).toBe(37.78);
  });

  test('a LAMBDA kept under a name', async () => {
    // Both would be 3.
    expect(await engine.evaluate('LET(f,LAMBDA(x,x+1),(f)(2))')).toBe(2);
    expect(await engine.evaluate('LET(f,LAMBDA(x,x+1),f(2))')).toMatchObject({ code: '#NAME?' });
  });

  test('SEARCH without wildcards, IF with a text', async () => {
    expect(await engine.evaluate('SEARCH("a*","banana")')).toMatchObject({ code: '#VALUE!' });
    expect(await engine.evaluate('IF("abc",1,2)')).toBe(1);
  });
});

test('functions of the calendar, in workbooks that count from 1904', () => {
  expect(countedFrom1904('IF(A1>1,_xlfn.DAYS(B1,A1),WEEKDAY(A1))')).toMatch(/^WEEKDAY: /);
  expect(countedFrom1904('DAYS(B1,A1)+YEARS')).toBeUndefined();
});
