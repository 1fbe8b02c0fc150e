import { describe, expect, it } from 'vitest';
import { associateAll, callable } from '../../src/addin/functions.ts';
import type { WorksheetFunction } from '../../src/functions/define.ts';
import { functions } from '../../src/functions/index.ts';

const find = (id: string): WorksheetFunction => functions.find((f) => f.id === id)!;
const make = (code: string, message?: string) => ({ code, message });
const plaster = callable(find('PLASTER'), make);
const check = callable(find('CHECK'), make);
const invocation = { functionName: 'PLASTER' };

it('every function is handed over, under its id', () => {
  const ids: string[] = [];
  associateAll({ associate: (id) => void ids.push(id) });
  expect(ids).toEqual(functions.map(({ id }) => id));
});

it('what comes last is never an argument', () => {
  // A third argument would be settings; the host's own object there would be refused.
  expect(plaster([[1]], [[8]], invocation)).toEqual([[find('PLASTER').call([1, 8])]]);
  expect(plaster([[1]], [[8]], null, { parameterAddresses: ['A1'] })).toEqual([[find('PLASTER').call([1, 8])]]);
});

it('arguments that repeat are taken out of their list', () => {
  expect(check([['PLASTER']], [[[1]], [[8]]], invocation)).toEqual([['ok']]);
  expect(check([['VERSION']], null, invocation)).toEqual([['ok']]);
  expect(check([['VERSION']], [], invocation)).toEqual([['ok']]);
  expect(check([['PLASTER']], [[[1]], null, [['us']]], invocation)[0]![0]).toContain('layers is blank');
});

it('a single error is thrown, so that the host shows its reason', () => {
  expect(() => plaster([['x']], [[8]], null, invocation)).toThrow(
    expect.objectContaining({ code: '#VALUE!', message: 'shell_area is text; type a number' }),
  );
});

it('an error inside of a column stays in its row', () => {
  expect(plaster([[1], ['x'], [null]], [[8]], null, invocation)).toEqual([
    [find('PLASTER').call([1, 8])],
    [{ code: '#VALUE!', message: 'shell_area is text; type a number' }],
    [''],
  ]);
});

it('without the host’s error class a plain error carries the reason', () => {
  expect(() => callable(find('PLASTER'))([['x']], [[8]], null, invocation)).toThrow(
    'shell_area is text; type a number',
  );
});

describe('addresses of arguments', () => {
  const call = (parameterAddresses: unknown) => plaster([[null]], [[8]], null, { parameterAddresses });

  it('tell a blank cell beside a typed value: the row stays blank', () => {
    expect(call(['Rows!A1', null, null])).toEqual([['']]);
    expect(call(['Rows!A1', '', undefined])).toEqual([['']]);
  });

  it.each([[undefined], [null], ['Rows!A1'], [[]], [[null, null, null]], [[undefined, '']]])(
    'say nothing where there are none: %o',
    (addresses) => {
      expect(() => call(addresses)).toThrow(expect.objectContaining({ code: '#VALUE!' }));
    },
  );

  it('may come in a list of their own for arguments that repeat', () => {
    const answer = check([['PLASTER']], [[[null]], [[8]]], { parameterAddresses: [null, ['Rows!A1', null]] });
    expect(answer).toEqual([['']]);
  });
});
