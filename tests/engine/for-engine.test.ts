import { afterAll, describe, expect, test } from 'vitest';
import { createEngine } from '../../src/engine/engine.ts';
import { forEngine } from '../../src/engine/for-engine.ts';

const engine = createEngine([]);
afterAll(() => engine.dispose());

describe('what the engine reads wrongly is written another way', () => {
  test.each([
    ['1e3', '1000', 1000],
    ['1E-3*2', '0.001*2', 0.002],
    ['1.5e30', '(1.5*10^30)', 1.5e30],
    ['{1e3,2}', '{1000,2}', [[1000, 2]]],
    ['0.12345678901234567', '0.123456789012345', 0.123456789012345],
    ['000000000000000001', '1', 1],
    ['-"3"', '-("3")', -3],
    ['--"3"', '--("3")', 3],
    ['-TRUE', '-(TRUE)', -1],
    ['2*{1,2}', '(2)*{1,2}', [[2, 4]]],
    ['1+2*{1,2}', '(1)+(2)*{1,2}', [[3, 5]]],
    ['"a"&({"b","c"})', '("a")&({"b","c"})', [['ab', 'ac']]],
    ['SUM(1-{1,2})', 'SUM((1)-{1,2})', -1],
    ['2*-{1,2}', '(2)*-({1,2})', [[-2, -4]]],
    ['1=1={TRUE,FALSE}', '(1)=(1)={TRUE,FALSE}', [[true, false]]],
    ['TRUE+{1,2}', '(TRUE)+{1,2}', [[2, 3]]],
    ['{1,2}*2*{1,2}', '{1,2}*(2)*{1,2}', [[2, 8]]],
    ['-0', '-(0)', 0],
    ['200%%', '(200%)%', 0.02],
    ['SUM(1,2)%%', '(SUM(1,2)%)%', 0.0003],
    ['@A1', 'SINGLE(A1)', 0],
    ['1+@A1:A3*2', '1+SINGLE(A1:A3)*2', 1],
    ['SUM(@A1,@A1)', 'SUM(SINGLE(A1),SINGLE(A1))', 0],
    ['A1:B2 B1:C3', '$B$1:$B$2', [[0], [0]]],
    ['A1:A2 B1:B2', '#NULL!', { code: '#NULL!', reason: '' }],
    ['_xlfn.SINGLE(A1)', 'SINGLE(A1)', 0],
    ['LET(x,2,-x)', 'LET(x,2,-(x))', -2],
    ['LET(x,2,1-x)', 'LET(x,2,1-x)', -1],
  ])('%s', async (formula, written, value) => {
    expect(forEngine(formula)).toBe(written);
    expect(await engine.evaluate(written)).toEqual(value);
  });
});

test('spills and the row of a table', () => {
  expect(forEngine('SUM(A1#)')).toBe('SUM(ANCHORARRAY(A1))');
  expect(forEngine('@Data!A1#')).toBe('SINGLE(ANCHORARRAY(Data!A1))');
  expect(forEngine('T[@a]*T[@[b c]]')).toBe('T[[#This Row],[a]]*T[[#This Row],[b c]]');
  expect(forEngine('SUM(T[@])')).toBe('SUM(T[#This Row])');
  expect(forEngine('@INDEX(A1:A9,2)')).toBe('SINGLE(INDEX(A1:A9,2))');
});

test('a formula without such pieces stays as it is', () => {
  for (const formula of [
    '-A1^2',
    '{-1,-2}',
    '1-"1"',
    'SUM(-1,-(2))',
    '"1e3"',
    "'1e3'!A1",
    '-SUM(1)',
    '1+SUM({1,2})',
    '{1,2}*2',
    '5%*2',
  ])
    expect(forEngine(formula)).toBe(formula);
});
