/** The check sum of zip files (ISO 3309, polynomial 0xEDB88320, least significant bit first). */

/** Generator polynomial, bits reversed. */
const POLYNOMIAL = 0xedb88320;

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let rest = byte;
  for (let bit = 0; bit < 8; bit++) rest = rest & 1 ? (rest >>> 1) ^ POLYNOMIAL : rest >>> 1;
  return rest;
});

export function crc32(bytes: Uint8Array): number {
  let sum = 0xffffffff;
  for (let i = 0; i < bytes.length; i++) sum = TABLE[(sum ^ bytes[i]!) & 255]! ^ (sum >>> 8);
  return (sum ^ 0xffffffff) >>> 0;
}
