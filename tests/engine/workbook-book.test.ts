import { expect, test } from 'vitest';
import { areaOf, isSame, refOf } from '../../src/engine/workbook-book.ts';

test('the last digit of another program is no change', () => {
  expect(isSame(1, 1 + 1e-13)).toBe(true);
  expect(isSame(1e20, 1e20 * (1 + 1e-11))).toBe(false);
  expect(isSame(0, 0)).toBe(true);
  expect(isSame(0, 1e-300)).toBe(false);
  expect(isSame('1', 1)).toBe(false);
  expect(isSame(true, 1)).toBe(false);
  expect(isSame(null, '')).toBe(false);
  expect(isSame({ error: '#N/A' }, { error: '#N/A' })).toBe(true);
  expect(isSame({ error: '#N/A' }, { error: '#REF!' })).toBe(false);
  expect(isSame({ error: '#N/A' }, null)).toBe(false);
});

test('areas and references', () => {
  expect(areaOf('$B$2:AA10')).toEqual({ firstRow: 2, firstColumn: 2, lastRow: 10, lastColumn: 27 });
  expect(areaOf('C4')).toEqual({ firstRow: 4, firstColumn: 3, lastRow: 4, lastColumn: 3 });
  expect(refOf(2, 27, 3, 2)).toBe('AA2:AB4');
  expect(refOf(2, 27, 1, 1)).toBe('AA2');
});
