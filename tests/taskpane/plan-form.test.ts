import { describe, expect, it } from 'vitest';
import { EMPTY_FORM, reasonsFor, typedCell } from '../../src/taskpane/plan-form.ts';
import { METRIC_FORM } from './kit.ts';

describe('what was typed', () => {
  it.each([
    ['', null],
    ['  ', null],
    ['60', 60],
    [' 12.5 ', 12.5],
    ['12,5', 12.5],
    ['.5', 0.5],
    ['-3', -3],
    // It may be a thousand: it is asked about, not guessed.
    ['1,200', '1,200'],
    ['1.200,5', '1.200,5'],
    ['12 cm', '12 cm'],
  ])('%j is %j', (text, cell) => {
    expect(typedCell(text)).toBe(cell);
  });
});

describe('reasons', () => {
  it('stand beside every field at once, in the words of the functions and the units of the form', () => {
    expect(reasonsFor({ ...EMPTY_FORM, system: 'us', width: 'wide', weight: '-3' })).toEqual({
      length: 'Length is blank; type the longest size in in.',
      width: 'Width is not a number; type one such as 12.5.',
      height: 'Height is blank; type the height as it lies in the jacket in in.',
      weight: 'Weight is -3; type a number above 0.',
    });
  });

  it('are none where all can be used', () => {
    expect(reasonsFor(METRIC_FORM)).toEqual({});
  });

  it.each(['length', 'width', 'height', 'weight'] as const)('0 is no %s', (size) => {
    expect(Object.keys(reasonsFor({ ...METRIC_FORM, [size]: '0' }))).toEqual([size]);
  });
});
