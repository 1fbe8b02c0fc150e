import { deflateSync, strToU8 } from 'fflate';
import { expect, test } from 'vitest';
import { unpack } from '../../src/workbook/unpack.ts';

const text = strToU8('plaster and cloth '.repeat(5000));

test('unpacks what was packed', () => {
  expect(unpack(deflateSync(text), text.length)).toEqual(text);
  expect(unpack(deflateSync(text, { level: 0 }), text.length)).toEqual(text);
  expect(unpack(deflateSync(new Uint8Array(0)), 0)).toEqual(new Uint8Array(0));
});

test('a false size, broken or missing bytes give nothing', () => {
  const packed = deflateSync(text);
  expect(unpack(packed, text.length - 1)).toBeUndefined();
  expect(unpack(packed, text.length + 1)).toBeUndefined();
  expect(unpack(packed.slice(0, -5), text.length)).toBeUndefined();
  expect(unpack(Uint8Array.of(7, 7, 7, 7), 10)).toBeUndefined();
  expect(unpack(new Uint8Array(0), 10)).toBeUndefined();
});

test('a bomb that says it is small is left soon after its stated size', () => {
  const bomb = deflateSync(new Uint8Array(200_000_000), { level: 1 });
  const before = process.memoryUsage().arrayBuffers;
  expect(unpack(bomb, 1000)).toBeUndefined();
  // One step of 16 kB unpacks to at most 17 MB and its working copies: far below the 200 MB of the whole.
  expect(process.memoryUsage().arrayBuffers - before).toBeLessThan(100_000_000);
});
