import { afterAll, describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/engine.ts';
import { functionName } from '../../src/engine/formula-text.ts';
import { countedFrom1904, NOT_CHECKED, notCheckedReason, unknownFunctions } from '../../src/engine/not-checked.ts';
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
    'T[@a]',
    'SUM(T[#Totals])',
    'SUM(A1#)',
    '@A1',
    'A1:B2 B1:C3',
    '-"3"',
    '-{1,2}',
    'IF("abc",1,2)',
    'SEARCH(A1,B1)',
    'CONVERT(1,"m","ft")',
  ])('%s', (formula) => {
    expect(reason(formula)).toBeUndefined();
  });
});

describe('formulas that cannot, with the reason', () => {
  test.each([
    ['NOW()', 'NOW: the answer changes with time or place, so it is kept as it was'],
    ['a b', 'the part that two names or tables share (a space between them) is not understood here'],
    ['SUM((A1,B2))', 'references joined by a comma are not understood here'],
    ['[1]Data!A1', 'another workbook is not read here'],
    ['SUM(Jan:Mar!A1)', 'a reference across several sheets is not understood here'],
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
  test('a LAMBDA kept under a name', async () => {
    // Both would be 3.
    expect(await engine.evaluate('LET(f,LAMBDA(x,x+1),(f)(2))')).toBe(2);
    expect(await engine.evaluate('LET(f,LAMBDA(x,x+1),f(2))')).toMatchObject({ code: '#NAME?' });
  });
});

describe('the list for people', () => {
  test.each(NOT_CHECKED)('$what', ({ what, reason: listed }) => {
    const formula = /^[A-Z]+$/.test(what) ? `${what}()` : what;
    expect(reason(formula)?.endsWith(listed)).toBe(true);
  });
});

test('functions of the calendar, in workbooks that count from 1904', () => {
  expect(countedFrom1904('IF(A1>1,_xlfn.DAYS(B1,A1),WEEKDAY(A1))')).toMatch(/^WEEKDAY: /);
  expect(countedFrom1904('DAYS(B1,A1)+YEARS')).toBeUndefined();
});
