/** The add-in's icons as they are committed. Made by `node src/build/icons.mjs`, which needs a browser; these checks do not. */

import { createHash } from 'node:crypto';
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { crc32, inflateSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';

const folder = resolve(import.meta.dirname, '../../manifest/icons');
const PNG_SIGNATURE = '89504e470d0a1a0a';
const CLAY = [0x8a, 0x4b, 0x2f];
const PAPER = [0xfa, 0xf8, 0xf4];
const INK = [0x23, 0x27, 0x2b];

const chunksOf = (png: Buffer): Map<string, Buffer> => {
  const chunks = new Map<string, Buffer>();
  for (let at = PNG_SIGNATURE.length / 2; at < png.length; ) {
    const length = png.readUInt32BE(at);
    const body = png.subarray(at + 4, at + 8 + length);
    expect(crc32(body)).toBe(png.readUInt32BE(at + 8 + length));
    const type = body.toString('latin1', 0, 4);
    chunks.set(type, Buffer.concat([chunks.get(type) ?? Buffer.alloc(0), body.subarray(4)]));
    at += 12 + length;
  }
  return chunks;
};

/** Pixels of an 8-bit picture with four channels, rows filtered as the PNG specification says. */
const pixelsOf = (data: Buffer, width: number, height: number): Uint8Array[] => {
  const raw = inflateSync(data);
  const bytes = width * 4;
  const rows: Uint8Array[] = [];
  for (let y = 0; y < height; y += 1) {
    const filter = raw[y * (bytes + 1)]!;
    const row = Uint8Array.from(raw.subarray(y * (bytes + 1) + 1, (y + 1) * (bytes + 1)));
    const above = rows[y - 1] ?? new Uint8Array(bytes);
    for (let i = 0; i < bytes; i += 1) {
      const left = i < 4 ? 0 : row[i - 4]!;
      const up = above[i]!;
      const corner = i < 4 ? 0 : above[i - 4]!;
      const guess = left + up - corner;
      const [dl, du, dc] = [Math.abs(guess - left), Math.abs(guess - up), Math.abs(guess - corner)];
      const nearest = dl <= du && dl <= dc ? left : du <= dc ? up : corner;
      row[i] = row[i]! + [0, left, up, (left + up) >> 1, nearest][filter]!;
    }
    rows.push(row);
  }
  return rows.flatMap((row) => Array.from({ length: width }, (_, x) => row.subarray(x * 4, x * 4 + 4)));
};

describe.each([
  { size: 16, drawing: 'icon-16.svg' },
  { size: 32, drawing: 'icon-32.svg' },
  { size: 64, drawing: 'icon.svg' },
  { size: 80, drawing: 'icon.svg' },
])('icon of $size px', ({ size, drawing }) => {
  const png = readFileSync(resolve(folder, `icon-${size}.png`));
  const chunks = chunksOf(png);
  const pixels = pixelsOf(chunks.get('IDAT')!, size, size);
  const share = (colour: number[]): number =>
    pixels.filter((p) => p[3] === 255 && colour.every((c, i) => Math.abs(c - p[i]!) <= 2)).length / pixels.length;

  it('is a PNG of that size, 8 bits, with transparency', () => {
    expect(png.toString('hex', 0, 8)).toBe(PNG_SIGNATURE);
    const header = chunks.get('IHDR')!;
    expect([header.readUInt32BE(0), header.readUInt32BE(4)]).toEqual([size, size]);
    expect([header[8], header[9]]).toEqual([8, 6]);
  });

  it('was made from the drawing as it is now', () => {
    const svg = readFileSync(resolve(folder, drawing), 'utf8').replaceAll('\r\n', '\n');
    const made = createHash('sha256').update(svg).digest('hex');
    expect(chunks.get('tEXt')!.toString('latin1')).toBe(`Drawing SHA-256\0${made}`);
  });

  it('leaves its corners clear, so that it stands on light and dark ribbons', () => {
    for (const at of [0, size - 1, size * (size - 1), size * size - 1]) expect(pixels[at]![3]).toBe(0);
  });

  it('shows the flange in clay, the shell in paper and the feet in ink', () => {
    expect(share(CLAY)).toBeGreaterThan(0.1);
    expect(share(PAPER)).toBeGreaterThan(0.1);
    expect(share(INK)).toBeGreaterThan(0.03);
  });
});
