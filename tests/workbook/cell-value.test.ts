import { expect, test } from 'vitest';
import { sameValue, storableValue, writeValue } from '../../src/workbook/cell-value.ts';

test('values that the file cannot hold become the nearest that it can', () => {
  expect(storableValue(Number.POSITIVE_INFINITY)).toEqual({ error: '#NUM!' });
  expect(storableValue(Number.NaN)).toEqual({ error: '#NUM!' });
  expect(Object.is(storableValue(-0), 0)).toBe(true);
  expect(storableValue({ error: '#BUSY!' })).toEqual({ error: '#VALUE!' });
  expect(storableValue({ error: '#REF!' })).toEqual({ error: '#REF!' });
  expect(storableValue('')).toBe('');
});

test('same values', () => {
  expect(sameValue({ error: '#N/A' }, { error: '#N/A' })).toBe(true);
  expect(sameValue({ error: '#N/A' }, '#N/A')).toBe(false);
  expect(sameValue(1, '1')).toBe(false);
  expect(sameValue(null, '')).toBe(false);
  expect(sameValue(null, { error: '#N/A' })).toBe(false);
});

test('a number is written as short as it can be and comes back the same', () => {
  for (const x of [0.1, 1 / 3, 1e21, 1e-7, 123456789012345680000, Number.MIN_VALUE, Number.MAX_VALUE]) {
    const { xml } = writeValue(x, true, '');
    expect(Number(xml.slice('<v>'.length, -'</v>'.length))).toBe(x);
  }
  expect(writeValue(0.1, false, 'x:')).toEqual({ type: null, xml: '<x:v>0.1</x:v>' });
});
