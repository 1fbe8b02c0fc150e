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
  const lead = SAMPLE_WIDTH + TEXT_GAP;
  const labels = entries.map(({ label }) => fitted(label, width - lead));
  /** Widths of so many columns: each as wide as its widest entry. */
  const widths = (columns: number): number[] =>
    Array.from({ length: columns }, (_, c) =>
      Math.max(...labels.filter((_, i) => i % columns === c).map((label) => lead + textWidth(label) + ENTRY_GAP)),
    );
  const fits = (columns: number): boolean => widths(columns).reduce((sum, one) => sum + one, 0) - ENTRY_GAP <= width;
  let columns = Math.max(1, entries.length);
  while (columns > 1 && !fits(columns)) columns--;
  // As few columns as the same number of rows takes, so that the last row is not nearly empty.
  const rows = Math.ceil(entries.length / columns);
  while (columns > 1 && Math.ceil(entries.length / (columns - 1)) === rows) columns--;
  const starts = [left];
  for (const one of widths(columns)) starts.push(starts.at(-1)! + one);
  const parts = entries.map(({ sample }, i) => {
    const x = starts[i % columns]!;
    const middle = top + (Math.floor(i / columns) + 0.5) * KEY_ROW;
    return (
      sample(x, middle - SAMPLE_HEIGHT / 2, SAMPLE_WIDTH, SAMPLE_HEIGHT) +
      words(x + lead, middle + LETTERS * 0.35, labels[i]!)
    );
  });
  return { svg: group({}, ...parts), height: rows * KEY_ROW };
};
