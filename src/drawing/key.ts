/** The key of a drawing: a sample of each line or fill with what it means, in as many rows as the width asks for. */

import { fitted, group, LETTERS, textWidth, words } from './svg.ts';

export interface KeyEntry {
  readonly label: string;
  /** Draws the sample in a box of this size with its upper left corner at a place [px]. */
  readonly sample: (x: number, y: number, width: number, height: number) => string;
}

/** Size of a sample [px]. */
export const SAMPLE_WIDTH = 26;
export const SAMPLE_HEIGHT = 12;

/** Height of a row, and distances between sample and text and between entries [px]. */
export const KEY_ROW = 20;
const TEXT_GAP = 7;
const ENTRY_GAP = 20;

export interface Key {
  readonly svg: string;
  readonly height: number;
}

/**
 * @param left where the rows begin, `top` the first of them, `width` the room for them [px]
 * @returns the drawing of the key and its height [px]
 */
export const key = (entries: readonly KeyEntry[], left: number, top: number, width: number): Key => {
  const room = width - SAMPLE_WIDTH - TEXT_GAP;
  const labels = entries.map(({ label }) => fitted(label, room));
  // Columns of one width, as many as fit: rows that line up are easier to read.
  const column = SAMPLE_WIDTH + TEXT_GAP + Math.max(0, ...labels.map((label) => textWidth(label))) + ENTRY_GAP;
  const columns = Math.max(1, Math.min(entries.length, Math.floor((width + ENTRY_GAP) / column)));
  const parts = entries.map(({ sample }, i) => {
    const x = left + (i % columns) * column;
    const y = top + Math.floor(i / columns) * KEY_ROW;
    const middle = y + KEY_ROW / 2;
    return (
      sample(x, middle - SAMPLE_HEIGHT / 2, SAMPLE_WIDTH, SAMPLE_HEIGHT) +
      words(x + SAMPLE_WIDTH + TEXT_GAP, middle + LETTERS * 0.35, labels[i]!)
    );
  });
  return { svg: group({}, ...parts), height: Math.ceil(entries.length / columns) * KEY_ROW };
};
