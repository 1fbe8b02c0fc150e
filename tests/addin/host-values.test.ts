import { describe, expect, it } from 'vitest';
import { toArgument, toCell, toHostError, toHostRows } from '../../src/addin/host-values.ts';
import { CellError, type ErrorCode } from '../../src/functions/calling/cell.ts';

const make = (code: string, message?: string) => ({ code, message });

describe('from the host', () => {
  it.each([
    [1, 1],
    ['', ''],
    ['text', 'text'],
    [false, false],
    [null, null],
    [undefined, null],
    [{ type: 'Double', basicValue: 2, numberFormat: '0.0' }, 2],
    [{ type: 'FormattedNumber', basicValue: 2, numberFormat: '0.0' }, 2],
    [{ type: 'String', basicType: 'String', basicValue: 'felt' }, 'felt'],
    [{ type: 'Boolean', basicValue: true }, true],
    [{ type: 'Empty', basicType: 'Empty', basicValue: '' }, null],
    [{ type: 'Entity', text: 'a card', basicType: 'Double', basicValue: 3 }, 3],
  ])('%o is %o', (given, cell) => {
    expect(toCell(given)).toBe(cell);
  });

  it.each([
    [{ code: '#REF!' }, '#REF!'],
    [{ type: 'Error', basicType: 'Error', basicValue: '#DIV/0!' }, '#DIV/0!'],
    [{ type: 'CustomFunctionError', code: '#N/A' }, '#N/A'],
  ])('%o is the error %s', (given, code) => {
    expect(toCell(given)).toEqual(new CellError(code as ErrorCode, ''));
  });

  it.each([
    [{ type: 'Entity', text: 'a card', basicType: 'Error', basicValue: '#VALUE!' }, 'data card'],
    [{ type: 'WebImage', address: 'x' }, 'neither a number nor text'],
    [{}, 'neither a number nor text'],
    [{ type: 'Error', basicValue: '#FIELD!' }, '#FIELD!'],
    [[[1]], 'neither a number nor text'],
    [() => 1, 'neither a number nor text'],
    [1n, 'neither a number nor text'],
  ])('%o is an error that says why', (given, words) => {
    const cell = toCell(given);
    expect(cell).toBeInstanceOf(CellError);
    expect((cell as CellError).reason).toContain(words);
  });

  it('rows are kept, and made equally long', () => {
    expect(toArgument([[1, 2], [3]])).toEqual([
      [1, 2],
      [3, null],
    ]);
    expect(toArgument([1, 2])).toEqual([[1, 2]]);
    expect(toArgument([])).toEqual([[]]);
    expect(toArgument(5)).toBe(5);
  });
});

describe('to the host', () => {
  it.each([
    ['#VALUE!', { code: '#VALUE!', message: 'why' }],
    ['#N/A', { code: '#N/A', message: 'why' }],
    // These show no reason, so none is sent.
    ['#NUM!', { code: '#NUM!', message: undefined }],
    ['#DIV/0!', { code: '#DIV/0!', message: undefined }],
    ['#NULL!', { code: '#NULL!', message: undefined }],
    // These are not taken as results.
    ['#REF!', { code: '#VALUE!', message: '#REF!: why' }],
    ['#NAME?', { code: '#VALUE!', message: '#NAME?: why' }],
    ['#SPILL!', { code: '#VALUE!', message: '#SPILL!: why' }],
  ])('%s', (code, sent) => {
    expect(toHostError(new CellError(code as ErrorCode, 'why'), make)).toEqual(sent);
  });

  it('a code that the reason names already is not named twice', () => {
    const error = new CellError('#REF!', 'length is the error #REF!; mend that cell first');
    expect(toHostError(error, make)).toEqual({
      code: '#VALUE!',
      message: 'length is the error #REF!; mend that cell first',
    });
    expect(toHostError(new CellError('#REF!', ''), make)).toEqual({
      code: '#VALUE!',
      message: 'the input holds the error #REF!',
    });
  });

  it('one cell is one row of one cell', () => {
    expect(toHostRows(5, make)).toEqual([[5]]);
    expect(toHostRows('', make)).toEqual([['']]);
  });

  it('nothing goes out that the host would show as 0', () => {
    const rows = [[Number.NaN, Number.POSITIVE_INFINITY, null, undefined, new CellError('#N/A', 'none')]];
    expect(toHostRows(rows as never, make)).toEqual([
      [
        { code: '#NUM!', message: undefined },
        { code: '#NUM!', message: undefined },
        '',
        '',
        { code: '#N/A', message: 'none' },
      ],
    ]);
  });
});
