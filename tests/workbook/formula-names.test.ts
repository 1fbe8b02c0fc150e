import { expect, test } from 'vitest';
import { functionCalls, localNames } from '../../src/workbook/formula-names.ts';
import { tokenise } from '../../src/workbook/formula-tokens.ts';

test('calls with their arguments', () => {
  const tokens = tokenise('SUM(A1,{1,2},MAX(B1,(C1,D1)))+(E1)');
  const calls = [...functionCalls(tokens)].map(([name, call]) => [
    tokens[name]!.text,
    ...call.arguments.map(({ from, to }) =>
      tokens
        .slice(from, to)
        .map(({ text }) => text)
        .join(''),
    ),
  ]);
  expect(calls).toEqual([
    ['MAX', 'B1', '(C1,D1)'],
    ['SUM', 'A1', '{1,2}', 'MAX(B1,(C1,D1))'],
  ]);
});

test('names that a formula makes, only inside the call that makes them', () => {
  const marked = (formula: string) => {
    const tokens = tokenise(formula);
    const locals = localNames(tokens);
    return tokens.map(({ text }, i) => (locals.has(i) ? `<${text}>` : text)).join('');
  };
  expect(marked('a+LET(a,b,c,A*2,a+b+c)+c')).toBe('a+LET(<a>,b,<c>,<A>*2,<a>+b+<c>)+c');
  expect(marked('LAMBDA(x,y,x+y+z)(1,2)+x')).toBe('LAMBDA(<x>,<y>,<x>+<y>+z)(1,2)+x');
  expect(marked('LET(a,LAMBDA(b,a+b),b)')).toBe('LET(<a>,LAMBDA(<b>,<a>+<b>),b)');
  expect(marked('SUM(a,b)')).toBe('SUM(a,b)');
  expect(marked('LET(a,1')).toBe('LET(a,1');
});
