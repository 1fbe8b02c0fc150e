import { describe, expect, it } from 'vitest';
import { KEY_ROW, type KeyEntry, key } from '../../src/drawing/key.ts';
import { line } from '../../src/drawing/svg.ts';
import { attribute, readSvg, textBoxes } from './read-svg.ts';

const entries = (...labels: string[]): KeyEntry[] =>
  labels.map((label) => ({ label, sample: (x, y, width) => line(x, y, x + width, y) }));

const rowsOf = (svg: string) => [
  ...new Set(
    readSvg(svg)
      .filter(({ name }) => name === 'text')
      .map((t) => attribute(t, 'y')),
  ),
];

describe('key', () => {
  it('has as many rows as the width asks for', () => {
    const list = entries('shell', 'flange', 'support triangle', 'balance point');
    expect(key(list, 8, 0, 700).height).toBe(KEY_ROW);
    expect(key(list, 8, 0, 320).height).toBe(2 * KEY_ROW);
    expect(key(list, 8, 0, 150).height).toBe(4 * KEY_ROW);
    expect(rowsOf(key(list, 8, 0, 320).svg)).toHaveLength(2);
  });

  it('keeps its entries inside and apart', () => {
    for (const width of [120, 200, 320, 500, 700]) {
      const { svg } = key(entries('a', 'a somewhat longer label', 'b', 'margin: 12.5 cm', 'c'), 8, 0, width);
      const boxes = textBoxes(readSvg(svg));
      for (const [i, box] of boxes.entries()) {
        expect(box.right).toBeLessThanOrEqual(8 + width);
        for (const other of boxes.slice(i + 1))
          expect(box.right <= other.left || other.right <= box.left || box.top !== other.top).toBe(true);
      }
    }
  });

  it('cuts a label that no row holds, and is empty without entries', () => {
    expect(key(entries('a label that is far too long for this'), 0, 0, 100).svg).toContain('…');
    expect(key([], 0, 0, 100).height).toBe(0);
  });
});
