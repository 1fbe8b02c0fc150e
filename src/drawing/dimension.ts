/** Dimension lines: a measure between two extension lines, with slim arrows and its number beside the line. */

import { element, group, INK, line, pathThrough, THIN, words } from './svg.ts';

/** Length and half width of an arrow [px]. Our own choice, about 3 to 1 as on workshop drawings. */
const ARROW = 7;
const ARROW_HALF = 1.75;

/** How far an extension line starts from the drawing, and ends beyond the dimension line [px]. */
const GAP = 3;
const BEYOND = 4;

/** Distance of the number from its line [px]. */
const LIFT = 5;

/** Shortest line with arrows inside of it [px]; a shorter one has them outside, pointing in. */
const LEAST_INSIDE = 3 * ARROW;

const arrow = (x: number, y: number, dx: number, dy: number): string =>
  element('path', {
    d: pathThrough(
      [
        [x, y],
        [x - ARROW * dx + ARROW_HALF * dy, y - ARROW * dy + ARROW_HALF * dx],
        [x - ARROW * dx - ARROW_HALF * dy, y - ARROW * dy - ARROW_HALF * dx],
      ],
      true,
    ),
    fill: INK,
    stroke: 'none',
  });

/** Two arrows at the ends of a line along x or y, and where they stand outside the bits of line behind them. */
const arrows = (from: number, to: number, at: (along: number) => readonly [number, number], dx: number, dy: number) => {
  const inside = to - from >= LEAST_INSIDE;
  const sign = inside ? 1 : -1;
  const [x1, y1] = at(inside ? from : from - 2 * ARROW);
  const [x2, y2] = at(inside ? to : to + 2 * ARROW);
  return line(x1, y1, x2, y2) + arrow(...at(from), -dx * sign, -dy * sign) + arrow(...at(to), dx * sign, dy * sign);
};

/** A measure inside of a drawing, along x or y: a line with an arrow at each end, without extension lines. */
export const measure = (x1: number, y1: number, x2: number, y2: number): string =>
  group(
    { stroke: INK, 'stroke-width': THIN },
    y1 === y2 ? arrows(x1, x2, (x) => [x, y1], 1, 0) : arrows(y1, y2, (y) => [x1, y], 0, 1),
  );

/**
 * A dimension below a drawing.
 *
 * @param from left end, and `to` the right end [px]
 * @param edge where the drawing ends, from which the extension lines come down [px]
 * @param y height of the dimension line [px]
 */
export const dimensionBelow = (from: number, to: number, edge: number, y: number, label: string): string =>
  group(
    { stroke: INK, 'stroke-width': THIN },
    line(from, edge + GAP, from, y + BEYOND),
    line(to, edge + GAP, to, y + BEYOND),
    arrows(from, to, (x) => [x, y], 1, 0),
    group({ stroke: 'none' }, words((from + to) / 2, y - LIFT, label, { anchor: 'middle' })),
  );

/**
 * A dimension at the left of a drawing; its number stands upright along the line.
 *
 * @param from upper end, and `to` the lower end [px]
 * @param edge where the drawing begins [px]
 * @param x place of the dimension line [px]
 */
export const dimensionLeft = (from: number, to: number, edge: number, x: number, label: string): string =>
  group(
    { stroke: INK, 'stroke-width': THIN },
    line(edge - GAP, from, x - BEYOND, from),
    line(edge - GAP, to, x - BEYOND, to),
    arrows(from, to, (y) => [x, y], 0, 1),
    group({ stroke: 'none' }, words(x - LIFT, (from + to) / 2, label, { anchor: 'middle', turned: -90 })),
  );
