import { strToU8 } from 'fflate';
import { expect, test } from 'vitest';
import { crc32 } from '../../src/workbook/crc32.ts';

test('the check value of the standard, and of nothing', () => {
  // "123456789" gives CBF43926: the check value printed in catalogues of this check sum.
  expect(crc32(strToU8('123456789')).toString(16)).toBe('cbf43926');
  expect(crc32(new Uint8Array(0))).toBe(0);
});
