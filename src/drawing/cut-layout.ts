/**
 * The pieces of a cut list on the roll, to scale: the roll from left to right, in as many lengths under each other as it takes.
 *
 * Sizes are SI; labels come from the caller in the units in force.
 */

import type { CutList, Purpose } from '../calculation/cloth/cut-list.ts';
import type { Placed } from '../calculation/cloth/packing/layout.ts';
import { dimensionLeft } from './dimension.ts';
import { type Hatch, hatched, hatchPatterns } from './hatch.ts';
import { type KeyEntry, key, SAMPLE_HEIGHT } from './key.ts';
import {
  CAPTION,
  CLAY,
  type Drawing,
  element,
  FAINT,
  group,
  HEAVY,
  INK,
  LETTERS,
  line,
  MEDIUM,
  sheet,
  short,
  THIN,
  textWidth,
  words,
} from './svg.ts';

export interface CutLayoutInput {
  /** Beginning of the ids in the drawing, unlike those of other drawings of the page. */
  readonly id: string;
  /** Width that it is shown at [px]. */
  readonly width: number;
  readonly list: CutList;
  readonly labels: {
    /** Width of the roll: «127 cm». */
    readonly roll: string;
    /** Length of roll that it takes: «6.3 m». */
    readonly length: string;
    /** Size of one piece of each purpose, in the order of the list: «42 × 42 cm». */
    readonly sizes: readonly string[];
    /** A place along the roll [m] in the units in force: «2.5 m». */
    readonly place: (along: number) => string;
  };
}

/** Letters that stand for the purposes in the drawing, in the order of the list. */
export const LETTERS_OF_CUTS = ['A', 'B', 'C', 'D'] as const;

/** Fills that tell the purposes apart without any colour. */
const FILLS: Readonly<Record<Purpose, Hatch | undefined>> = {
  cover: undefined,
  'edge strip': 'felt',
  'foot patch': 'grain',
  'tip patch': 'cross',
};

/** The roll is drawn at least this wide where that takes no more than so many lengths, and never wider than that [px, 1, px]. Our own choice. */
const LEAST_ROLL = 96;
const MOST_LENGTHS = 8;
const MOST_ROLL = 200;

/** Room at the left for the dimension, at the right, and above each length for its place on the roll [px]. */
const LEFT = 34;
const EDGE = 8;
const ABOVE = 20;
const BETWEEN = 6;

/** Sides of the smallest piece that holds its letter [px]. */
const LETTER_ROOM = 15;

/** Pieces beyond which letters are left out, since the fills tell enough [1]. Our own choice. */
const MOST_LETTERS = 400;

/** Height of the zigzag at the end of a length that goes on [px]. */
const ZIGZAG = 6;

const table = ({ list, labels }: CutLayoutInput): Drawing['table'] => [
  ['letter', 'purpose', 'pieces', 'size of one'],
  ...list.cuts.map(({ purpose, count }, i) => [LETTERS_OF_CUTS[i]!, purpose, String(count), labels.sizes[i]!]),
  ['', 'roll', labels.length, `${labels.roll} wide`],
];

/** Line across the roll where it goes on below, or goes on from above. */
const zigzag = (x: number, top: number, height: number): string => {
  const teeth = Math.max(2, Math.round(height / (2 * ZIGZAG)));
  const step = height / teeth / 2;
  let d = `M${short(x)} ${short(top)}`;
  for (let i = 0; i < teeth; i++) d += `l${short(-3)} ${short(step)}l${short(3)} ${short(step)}`;
  return element('path', { d, stroke: INK, 'stroke-width': THIN });
};

/**
 * @param input cut list, labels in the units in force
 * @returns the drawing, and a table that says the same
 */
export const cutLayoutDrawing = (input: CutLayoutInput): Drawing => {
  const { id, width, list, labels } = input;
  const { cuts, layout, roll } = list;
  const room = width - LEFT - EDGE;
  const whole = room / layout.length;
  const scale = Math.min(MOST_ROLL / roll, Math.max(whole, Math.min(LEAST_ROLL / roll, MOST_LENGTHS * whole)));
  const span = room / scale;
  const lengths = Math.max(1, Math.ceil(layout.length / span - 1e-9));
  const height = roll * scale;
  const pitch = ABOVE + height + BETWEEN;
  const lettered = layout.placed.length <= MOST_LETTERS;

  const inLength = (piece: Placed, from: number): boolean =>
    piece.along < from + span * (1 - 1e-9) && piece.along + piece.length > from + span * 1e-9;

  const lengthOfRoll = (i: number): string => {
    const from = i * span;
    const last = i === lengths - 1;
    const end = last ? layout.length : from + span;
    const top = i * pitch + ABOVE;
    const right = LEFT + scale * (end - from);
    const pieces = layout.placed.filter((piece) => inLength(piece, from));
    const shown = (piece: Placed) => {
      const x = LEFT + scale * Math.max(0, piece.along - from);
      const until = LEFT + scale * Math.min(span, piece.along + piece.length - from);
      return { x, y: top + scale * piece.across, w: until - x, h: scale * piece.width };
    };
    const paths = cuts.map(({ purpose }, kind) => {
      const d = pieces
        .filter((piece) => piece.kind === kind)
        .map((piece) => {
          const { x, y, w, h } = shown(piece);
          return `M${short(x)} ${short(y)}h${short(w)}v${short(h)}h${short(-w)}z`;
        })
        .join('');
      const fill = FILLS[purpose];
      return d
        ? element('path', { d, stroke: INK, 'stroke-width': MEDIUM * 0.8, fill: fill ? hatched(id, fill) : undefined })
        : '';
    });
    const letters = lettered
      ? pieces.flatMap((piece) => {
          // A piece that goes on has its letter once, in the length where it begins.
          const { x, y, w, h } = shown(piece);
          const goesOn = piece.along + piece.length > from + span * (1 + 1e-9);
          const least = goesOn ? LETTER_ROOM + ZIGZAG : LETTER_ROOM;
          if (piece.along < from - 1e-9 || w < least || h < LETTER_ROOM || FILLS[cuts[piece.kind]!.purpose]) return [];
          return [
            words(x + w / 2, y + h / 2 + CAPTION * 0.36, LETTERS_OF_CUTS[piece.kind]!, {
              size: CAPTION,
              anchor: 'middle',
            }),
          ];
        })
      : [];
    const start = labels.place(from);
    const clear = right - LEFT > textWidth(start, CAPTION) + textWidth(labels.length) + 12;
    return group(
      {},
      line(LEFT, top, right, top, { stroke: FAINT, 'stroke-width': THIN }),
      line(LEFT, top + height, right, top + height, { stroke: FAINT, 'stroke-width': THIN }),
      ...paths,
      ...letters,
      i > 0 ? zigzag(LEFT, top, height) : line(LEFT, top, LEFT, top + height, { stroke: INK, 'stroke-width': MEDIUM }),
      last
        ? line(right, top - 4, right, top + height + 4, { stroke: CLAY, 'stroke-width': HEAVY })
        : zigzag(right, top, height),
      !last || clear ? words(LEFT, top - 6, start, { size: CAPTION, fill: FAINT }) : '',
      last
        ? words(Math.max(right, LEFT + textWidth(labels.length)), top - 6, labels.length, {
            anchor: 'end',
            fill: CLAY,
            weight: 600,
          })
        : '',
    );
  };

  const drawn = Array.from({ length: lengths }, (_, i) => lengthOfRoll(i));
  const entries: KeyEntry[] = cuts.flatMap(({ purpose, count }, i) => {
    if (count === 0) return [];
    const fill = FILLS[purpose];
    const letter = fill ? '' : LETTERS_OF_CUTS[i]!;
    return [
      {
        label: `${purpose}: ${count} of ${labels.sizes[i]}`,
        sample: (x, y, w) =>
          element('rect', {
            x,
            y: y - 1,
            width: w,
            height: SAMPLE_HEIGHT + 2,
            stroke: INK,
            'stroke-width': MEDIUM * 0.8,
            fill: fill ? hatched(id, fill) : undefined,
          }) +
          (letter
            ? words(x + w / 2, y + SAMPLE_HEIGHT / 2 + CAPTION * 0.36, letter, { size: CAPTION, anchor: 'middle' })
            : ''),
      },
    ];
  });
  const legend = key(entries, EDGE, lengths * pitch + 8, width - 2 * EDGE);
  const pieces = cuts.reduce((sum, { count }) => sum + count, 0);
  const svg = sheet(
    {
      id,
      width,
      height: lengths * pitch + 8 + legend.height + LETTERS / 2,
      title: 'Pieces of cloth on the roll',
      description: `To scale: ${pieces} pieces on ${labels.length} of a roll ${labels.roll} wide${
        lengths > 1 ? `, drawn in ${lengths} lengths one below the other` : ''
      }.`,
    },
    hatchPatterns(id, ['felt', 'grain', 'cross']),
    ...drawn,
    dimensionLeft(ABOVE, ABOVE + height, LEFT, LEFT - 13, labels.roll),
    legend.svg,
  );
  return { svg, table: table(input) };
};
