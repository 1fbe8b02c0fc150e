import { expect, test } from 'vitest';
import { extent } from '../../src/engine/extent.ts';

test('as far as the cells and the references, with room to spill', () => {
  expect(extent([], 3, 2)).toEqual({ rowCount: 10_003, columnCount: 502 });
  expect(extent(['A50+D1', 'B2'], 3, 2)).toEqual({ rowCount: 10_050, columnCount: 504 });
});

test('never larger than a worksheet', () => {
  expect(extent(['XFD1048576'])).toEqual({ rowCount: 1_048_576, columnCount: 16_384 });
});
