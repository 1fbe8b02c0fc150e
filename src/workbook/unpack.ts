import { Inflate } from 'fflate';
import { UNPACK_STEP } from './limits.ts';

/**
 * Unpacks deflated bytes to exactly `size` bytes.
 *
 * Answers undefined when the packed bytes are broken, or hold more or less than `size`: unpacking stops as soon as there is one byte too
 * many, so a size stated falsely cannot fill the memory.
 */
export function unpack(packed: Uint8Array, size: number): Uint8Array | undefined {
  const out = new Uint8Array(size);
  let length = 0;
  let tooLong = false;
  const inflate = new Inflate((chunk) => {
    if (length + chunk.length > size) tooLong = true;
    else out.set(chunk, length);
    length += chunk.length;
  });
  try {
    for (let at = 0; at < packed.length && !tooLong; at += UNPACK_STEP) {
      inflate.push(packed.subarray(at, at + UNPACK_STEP), at + UNPACK_STEP >= packed.length);
    }
  } catch {
    return undefined;
  }
  return length === size ? out : undefined;
}
