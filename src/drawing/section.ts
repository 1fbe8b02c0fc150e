/** The section of a lower half that STRENGTH takes, with its rib: a sketch with the letters of the formulas, not to scale. */

import { dimensionBelow, measure } from './dimension.ts';
import { hatched, hatchPatterns } from './hatch.ts';
import {
  CAPTION,
  type Drawing,
  element,
  FAINT,
  INK,
  LETTERS,
  line,
  MEDIUM,
  pathThrough,
  sheet,
  short,
  THIN,
  textWidth,
  words,
} from './svg.ts';

export interface SectionInput {
  /** Beginning of the ids in the drawing, unlike those of other drawings of the page. */
  readonly id: string;
  /** Width that it is shown at [px]. */
  readonly width: number;
}

/** Proportions of the sketch over its width [1]: half axes of the arc's mid-line, thickness, flange, rib. */
const HALF_WIDTH = 0.29;
const DEPTH = 0.23;
const THICKNESS = 0.026;
const FLANGE = 0.1;
const RIB_WIDTH = 0.13;
const RIB_HEIGHT = 0.085;
const RIB_THICKNESS = 0.021;

const EDGE = 8;
const ABOVE = 46;

const MEANINGS = [
  ['A, B', 'half axes of the arc, to the middle of its thickness'],
  ['s', 'thickness of the shell'],
  ['f', 'width of a flange'],
  ['h', 'height of the rib: the foam core, which carries nothing'],
  ['w', 'width of the rib'],
  ['t', 'thickness of the rib: two webs, and a cap under them'],
  ['y', 'depth below the seam plane, where the halves meet'],
] as const;

/** The lower half of an ellipse from one end to the other, as path commands. */
const lowerArc = (x: number, y: number, a: number, b: number, back = false): string =>
  `A${short(a)} ${short(b)} 0 0 ${back ? 1 : 0} ${short(back ? x - a : x + a)} ${short(y)}`;

/** @returns the sketch, and the meaning of its letters */
export const sectionDrawing = ({ id, width }: SectionInput): Drawing => {
  const x = width / 2;
  const y = ABOVE;
  const [a, b, s] = [HALF_WIDTH * width, DEPTH * width, THICKNESS * width];
  const [f, h, t, ribWidth] = [FLANGE * width, RIB_HEIGHT * width, RIB_THICKNESS * width, RIB_WIDTH * width];
  const cut = { fill: hatched(id, 'section'), stroke: INK, 'stroke-width': MEDIUM };
  const crown = y + b + s / 2;
  const cap = crown + h;
  const [half, outer, inner] = [ribWidth / 2, a + s / 2, a - s / 2];

  /** The shell with both flanges as one cut face. */
  const shell =
    `M${short(x - outer - f)} ${short(y - s / 2)}H${short(x - inner)}V${short(y)}` +
    lowerArc(x, y, inner, b - s / 2) +
    `V${short(y - s / 2)}H${short(x + outer + f)}V${short(y + s / 2)}H${short(x + outer)}` +
    lowerArc(x, y + s / 2, outer, b, true) +
    `H${short(x - outer - f)}Z`;
  const rib = pathThrough(
    [
      [x - half, crown - s * 0.1],
      [x - half, cap + t],
      [x + half, cap + t],
      [x + half, crown - s * 0.1],
      [x + half - t, crown],
      [x + half - t, cap],
      [x - half + t, cap],
      [x - half + t, crown],
    ],
    true,
  );
  const letter = (atX: number, atY: number, text: string, anchor: 'start' | 'middle' | 'end' = 'middle') =>
    words(atX, atY, text, { anchor });
  const leader = (x1: number, y1: number, x2: number, y2: number) =>
    line(x1, y1, x2, y2, { stroke: INK, 'stroke-width': THIN });
  const note = 'seam plane';
  const noteRoom = textWidth(note, CAPTION);
  const height = cap + t + 36;
  const slantX = x + a * Math.cos(0.8);
  const slantY = y + b * Math.sin(0.8);

  const svg = sheet(
    {
      id,
      width,
      height,
      title: 'Section of the lower half',
      description:
        'A sketch, not to scale: an arc of thickness s with half axes A and B, a flange of width f at each end in the seam plane, and under the crown a rib of height h with two webs and a cap of thickness t.',
    },
    hatchPatterns(id, ['section']),
    line(EDGE, y, width - EDGE, y, { stroke: FAINT, 'stroke-width': THIN, 'stroke-dasharray': '12 3 2 3' }),
    line(x, y - 12, x, cap + t + 8, { stroke: FAINT, 'stroke-width': THIN, 'stroke-dasharray': '12 3 2 3' }),
    element('path', { d: shell, ...cut, 'stroke-linejoin': 'round' }),
    element('path', { d: rib, ...cut, 'stroke-linejoin': 'round' }),
    // Half axes, from the middle.
    measure(x - a, y + 18, x, y + 18),
    measure(x - 14, y, x - 14, y + b),
    letter(x - a / 2, y + 18 - 5, 'A'),
    letter(x - 20, y + b * 0.66, 'B', 'end'),
    // Depth below the seam plane.
    element('path', {
      d: `M${short(x + 14)} ${short(y)}v${short(b * 0.42)}m-3 -6l3 6l3 -6`,
      stroke: INK,
      'stroke-width': THIN,
    }),
    letter(x + 22, y + b * 0.36, 'y', 'start'),
    // Thickness of the shell, with a leader.
    leader(slantX, slantY, slantX + 26, slantY + 18),
    letter(slantX + 30, slantY + 18 + LETTERS * 0.6, 's', 'start'),
    // Rib.
    leader(x + half - t / 2, (crown + cap) / 2, x + half + 26, (crown + cap) / 2),
    letter(x + half + 30, (crown + cap) / 2 + LETTERS * 0.36, 't', 'start'),
    words(EDGE, y - s / 2 - 22, note, { size: CAPTION, fill: FAINT }),
    leader(EDGE + noteRoom / 2, y - s / 2 - 18, EDGE + noteRoom / 2, y),
    dimensionBelow(x + outer, x + outer + f, y + s / 2, y + s / 2 + 26, 'f'),
    letter(x - half - 16, (crown + cap) / 2 + LETTERS * 0.36, 'h', 'end'),
    measure(x - half - 9, crown, x - half - 9, cap),
    line(x - half - 13, crown, x - half - 3, crown, { stroke: INK, 'stroke-width': THIN }),
    line(x - half - 13, cap, x - half - 3, cap, { stroke: INK, 'stroke-width': THIN }),
    dimensionBelow(x - half, x + half, cap + t, cap + t + 24, 'w'),
  );
  return { svg, table: [['letter', 'meaning'], ...MEANINGS.map((row) => [...row])] };
};
