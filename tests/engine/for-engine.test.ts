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
    ['0.12345678901234567', '0.123456789012346', 0.123456789012346],
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
    ['LET(x,2,-x)', 'LET(x,2,-(x))', -2],
    ['LET(x,2,1-x)', 'LET(x,2,1-x)', -1],
  ])('%s', async (formula, written, value) => {
    expect(forEngine(formula)).toBe(written);
    expect(await engine.evaluate(written)).toEqual(value);
  });
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
