/**
 * A small bar chart: felt against foam, a pair of bars for each item, with the ends of its plausible range.
 *
 * Each pair has its own scale, since items have different units. Numbers are drawn as they are; labels come from the caller.
 */

import { type Hatch, hatched, hatchPatterns } from './hatch.ts';
import { type KeyEntry, key } from './key.ts';
import {
  type Drawing,
  element,
  FAINT,
  fitted,
  group,
  INK,
  LETTERS,
  line,
  MEDIUM,
  sheet,
  THIN,
  textWidth,
  words,
} from './svg.ts';

/** One bar: its number, and where its plausible range ends. */
export interface Bar {
  readonly value: number;
  readonly low?: number;
  readonly high?: number;
  /** The number with its unit: «16.6 kg». */
  readonly label: string;
}

/** One pair. */
export interface Pair {
  readonly item: string;
  readonly felt: Bar;
  readonly foam: Bar;
}

export interface BarsInput {
  /** Beginning of the ids in the drawing, unlike those of other drawings of the page. */
  readonly id: string;
  /** Width that it is shown at [px]. */
  readonly width: number;
  readonly title: string;
  readonly pairs: readonly Pair[];
}

/** Sizes [px]. Our own choice: a bar as high as small letters, a pair apart from the next. */
const EDGE = 8;
const BAR = 14;
const BAR_GAP = 4;
const ITEM = 20;
const PAIR_GAP = 12;
const WHISKER = 4;

/** From this width on the item stands at the left of its bars instead of above them [px]. */
const WIDE = 480;

const PADDINGS: readonly Hatch[] = ['felt', 'foam'];

const positive = (x: number | undefined): number => (x !== undefined && x > 0 && x < Infinity ? x : 0);

const mostOf = ({ felt, foam }: Pair): number =>
  Math.max(...[felt, foam].flatMap(({ value, low, high }) => [value, low, high].map(positive)));

/** A range: a line with a stroke across each end. */
const whisker = (from: number, to: number, y: number): string =>
  group(
    { stroke: INK, 'stroke-width': MEDIUM },
    line(from, y, to, y),
    line(from, y - WHISKER, from, y + WHISKER),
    line(to, y - WHISKER, to, y + WHISKER),
  );

/**
 * @param input pairs of numbers, labels in the units in force
 * @returns the drawing, and a table that says the same
 */
export const barsDrawing = ({ id, width, title, pairs }: BarsInput): Drawing => {
  const wide = width >= WIDE;
  const itemRoom = wide ? Math.max(...pairs.map(({ item }) => textWidth(item)), 0) + 16 : 0;
  const left = EDGE + Math.min(itemRoom, width / 3);
  const labelRoom =
    Math.max(0, ...pairs.flatMap(({ felt, foam }) => [textWidth(felt.label), textWidth(foam.label)])) + 10;
  const room = Math.max(40, width - left - EDGE - labelRoom);
  const entries = PADDINGS.map(
    (hatch): KeyEntry => ({
      label: hatch,
      sample: (x, y, w, h) =>
        element('rect', { x, y, width: w, height: h, stroke: INK, 'stroke-width': MEDIUM, fill: hatched(id, hatch) }),
    }),
  );
  if (pairs.some(({ felt, foam }) => felt.high !== undefined || foam.high !== undefined))
    entries.push({ label: 'plausible range', sample: (x, y, w, h) => whisker(x, x + w, y + h / 2) });
  const legend = key(entries, left, 2, width - left - EDGE);
  const pitch = (wide ? 0 : ITEM) + 2 * BAR + BAR_GAP + PAIR_GAP;
  const begin = legend.height + 10;
  const drawn = pairs.map((pair, i) => {
    const most = mostOf(pair);
    const top = begin + i * pitch;
    const bars = top + (wide ? 0 : ITEM);
    const name = wide
      ? words(EDGE, bars + BAR + BAR_GAP / 2 + LETTERS * 0.36, fitted(pair.item, left - EDGE - 8))
      : words(EDGE, top + LETTERS, fitted(pair.item, width - 2 * EDGE));
    const bar = ({ value, low, high, label }: Bar, hatch: Hatch, y: number): string => {
      const at = (x: number | undefined): number => left + (most > 0 ? (positive(x) / most) * room : 0);
      const end = at(value);
      const [lowX, highX] = [at(low ?? value), at(high ?? value)];
      const middle = y + BAR / 2;
      return (
        element('rect', {
          x: left,
          y,
          width: end - left,
          height: BAR,
          stroke: INK,
          'stroke-width': MEDIUM,
          fill: hatched(id, hatch),
        }) +
        (highX - lowX > 1 ? whisker(lowX, highX, middle) : '') +
        words(Math.max(end, highX) + 7, middle + LETTERS * 0.36, label)
      );
    };
    return group({}, name, bar(pair.felt, 'felt', bars), bar(pair.foam, 'foam', bars + BAR + BAR_GAP));
  });
  const height = begin + pairs.length * pitch;
  const svg = sheet(
    {
      id,
      width,
      height,
      title,
      description: `A pair of bars for each of ${pairs.length} items, felt above foam, each pair to its own scale; the thin line on a bar is its plausible range.`,
    },
    hatchPatterns(id, PADDINGS),
    legend.svg,
    ...drawn,
    line(left, begin - 4, left, height - PAIR_GAP + 4, { stroke: FAINT, 'stroke-width': THIN }),
  );
  return {
    svg,
    table: [['item', 'felt', 'foam'], ...pairs.map(({ item, felt, foam }) => [item, felt.label, foam.label])],
  };
};
