/**
 * The plan of a jacket seen from above, true to scale, its length to the right: outline, flange, feet with their loads, and where it balances.
 *
 * Sizes are SI; labels come from the caller in the units in force.
 */

import { type Outline, parallelCurve, ring } from '../calculation/feet/outline.ts';
import type { Feet, Point } from '../calculation/feet/points.ts';
import type { Settings } from '../calculation/settings.ts';
import { dimensionBelow, dimensionLeft } from './dimension.ts';
import { type KeyEntry, key } from './key.ts';
import { type Box, bestPlace, placesAround } from './place-label.ts';
import {
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
  pathThrough,
  sheet,
  THIN,
  textWidth,
  words,
} from './svg.ts';
import { BLOCK_HEIGHT, titleBlock } from './title-block.ts';

/** One foot in words. */
export interface FootLabels {
  /** Where it stands: «9.7 cm left, 14.4 cm below the middle». */
  readonly place: string;
  /** What it carries: «9.7 kg». */
  readonly load: string;
}

export interface PlanInput {
  /** Beginning of the ids in the drawing, unlike those of other drawings of the page. */
  readonly id: string;
  /** Width that it is shown at [px]. */
  readonly width: number;
  /** Size of the specimen along and across, above 0 [m]. Left out: the jacket is not known, and only the feet are drawn. */
  readonly size?: readonly [length: number, width: number];
  readonly settings: Settings;
  /** Thickness of the shell [m]. */
  readonly thickness: number;
  readonly feet: Feet;
  /** Width and length of a foot [m]. */
  readonly footSize: number;
  /** Balance point [m]. */
  readonly balance: Point;
  /** Distance of the balance point to the nearest edge of the support triangle; 0 or below draws no circle [m]. */
  readonly margin: number;
  /** How far the balance point moves over the ground when the jacket is tilted by the least tilt [m]. */
  readonly tipReach: number;
  readonly labels: {
    /** Number or name of the specimen; may be blank. */
    readonly specimen: string;
    /** Units of all numbers: «cm, kg». */
    readonly units: string;
    /** Length and width over the flanges, or over the feet where the jacket is not known. */
    readonly length: string;
    readonly width: string;
    readonly feet: readonly [FootLabels, FootLabels, FootLabels];
    /** Where the balance point is. */
    readonly balance: string;
    readonly margin: string;
    /** The least tilt, «10°», and how far the balance point moves at it. */
    readonly tilt: string;
    readonly tipReach: string;
  };
}

/** Points by which a curve is drawn [1]; a multiple of 4. So many that corners of the polygon are not seen. */
const CURVE_POINTS = 240;

/** Room at the left for the dimension line, and on the other sides [px]. */
const LEFT = 40;
const EDGE = 8;
const BELOW = 38;

/** The drawing is at most this part of its width high [1]; a wider jacket is drawn smaller. */
const MOST_HEIGHT = 0.9;

/** Radius of the balance point [px]. */
const DOT = 4.5;

/** Dashes [px]: the flange, centre lines, the tip circle. */
const DASHED = '7 4';
const CHAIN = '12 3 2 3';
const DOTTED = '0.1 4';

/** Height of a label with its line spacing, and room beside a load inside of its foot [px]. */
const LABEL_HEIGHT = 16;
const INSET = 8;

/** The two ends of a line between two feet, outside of their squares. */
const betweenFeet = (a: Point, b: Point, half: number): readonly [Point, Point] => {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  const share = half / Math.max(Math.abs(dx), Math.abs(dy), half);
  return [
    [a[0] + share * dx, a[1] + share * dy],
    [b[0] - share * dx, b[1] - share * dy],
  ];
};

const along = ([a, b]: readonly [Point, Point], step: number): Point[] => {
  const count = Math.max(1, Math.ceil(Math.hypot(b[0] - a[0], b[1] - a[1]) / step));
  return Array.from({ length: count + 1 }, (_, i) => [
    a[0] + ((b[0] - a[0]) * i) / count,
    a[1] + ((b[1] - a[1]) * i) / count,
  ]);
};

const aroundCircle = ([x, y]: Point, radius: number): Point[] =>
  Array.from({ length: 48 }, (_, i) => [
    x + radius * Math.cos((Math.PI * i) / 24),
    y + radius * Math.sin((Math.PI * i) / 24),
  ]);

/** A sample of a line for the key. */
const lineSample =
  (attributes: Parameters<typeof line>[4]): KeyEntry['sample'] =>
  (x, y, width, height) =>
    line(x, y + height / 2, x + width, y + height / 2, attributes);

const OUTLINE_LINE = { stroke: INK, 'stroke-width': HEAVY };
const FLANGE_LINE = { stroke: INK, 'stroke-width': MEDIUM, 'stroke-dasharray': DASHED };
const SUPPORT_LINE = { stroke: INK, 'stroke-width': THIN };
const MARGIN_LINE = { stroke: CLAY, 'stroke-width': MEDIUM };
const TIP_LINE = { stroke: CLAY, 'stroke-width': 2, 'stroke-dasharray': DOTTED, 'stroke-linecap': 'round' };

const entries = ({ size, labels, margin, tipReach }: PlanInput): KeyEntry[] => {
  const jacket: KeyEntry[] = [
    { label: 'shell', sample: lineSample(OUTLINE_LINE) },
    { label: 'edge of the flange', sample: lineSample(FLANGE_LINE) },
  ];
  const list: KeyEntry[] = [
    ...(size ? jacket : []),
    { label: 'support triangle', sample: lineSample(SUPPORT_LINE) },
    {
      label: 'balance point',
      sample: (x, y, width, height) => element('circle', { cx: x + width / 2, cy: y + height / 2, r: DOT, fill: CLAY }),
    },
  ];
  if (margin > 0) list.push({ label: `margin: ${labels.margin}`, sample: lineSample(MARGIN_LINE) });
  if (tipReach > 0)
    list.push({ label: `reach at a tilt of ${labels.tilt}: ${labels.tipReach}`, sample: lineSample(TIP_LINE) });
  return list;
};

/** What the two dimensions go over. */
const over = ({ size }: PlanInput): string => (size ? 'over the flanges' : 'over the feet');

const table = (input: PlanInput): Drawing['table'] => {
  const { labels, margin, tipReach } = input;
  return [
    ['part', 'where and how much'],
    [`length ${over(input)}`, labels.length],
    [`width ${over(input)}`, labels.width],
    ...labels.feet.map(({ place, load }, i) => [`foot ${i + 1}`, `${place}; carries ${load}`]),
    ['balance point', labels.balance],
    ['margin', margin > 0 ? labels.margin : `${labels.margin}: the balance point is outside of the feet`],
    ...(input.size || tipReach > 0
      ? [[`reach of the balance point at a tilt of ${labels.tilt}`, labels.tipReach]]
      : []),
  ];
};

/** The curve around the specimen's outline at an offset. Outside of a specimen there always is one; without a specimen there is none. */
const curveAt = ({ size, settings }: PlanInput, offset: number): Outline | undefined =>
  size && parallelCurve(size[0], size[1], offset, settings);

/** What the drawing has to hold: half its length and width, and where its middle is. */
interface Frame {
  readonly halfLength: number;
  readonly halfWidth: number;
  readonly middle: Point;
}

const frameAroundFeet = ({ feet, footSize, balance }: PlanInput): Frame => {
  const ends = (values: readonly number[]): readonly [number, number] => [
    Math.min(...values) - footSize / 2,
    Math.max(...values) + footSize / 2,
  ];
  const points = [...feet, balance];
  const [left, right] = ends(points.map(([x]) => x));
  const [bottom, top] = ends(points.map(([, y]) => y));
  return {
    halfLength: (right - left) / 2,
    halfWidth: (top - bottom) / 2,
    middle: [(left + right) / 2, (bottom + top) / 2],
  };
};

/**
 * @param input sizes in SI, labels in the units in force
 * @returns the drawing, and a table that says the same
 */
export const planDrawing = (input: PlanInput): Drawing => {
  const { id, width, settings, labels, feet, footSize, balance, margin, tipReach } = input;
  const shell = settings.paddingThickness + input.thickness;
  const inner = curveAt(input, shell);
  const outer = curveAt(input, shell + settings.flange);
  const frame: Frame = outer ? { ...outer, middle: [0, 0] } : frameAroundFeet(input);
  const room = width - LEFT - EDGE;
  const scale = Math.min(room / (2 * frame.halfLength), (MOST_HEIGHT * width) / (2 * frame.halfWidth));
  const middleX = LEFT + room / 2;
  const middleY = EDGE + scale * frame.halfWidth;
  const bottom = middleY + scale * frame.halfWidth;
  const place = ([x, y]: Point): Point => [
    middleX + scale * (x - frame.middle[0]),
    middleY - scale * (y - frame.middle[1]),
  ];

  const curve = (outline: Outline | undefined, offset: number, attributes: Parameters<typeof line>[4]): string => {
    if (!outline) return '';
    if (settings.shape === 'ellipsoid')
      return element('path', { d: pathThrough(ring(outline, CURVE_POINTS).map(place), true), ...attributes });
    const [x, y] = place([-outline.halfLength, outline.halfWidth]);
    return element('rect', {
      x,
      y,
      width: 2 * scale * outline.halfLength,
      height: 2 * scale * outline.halfWidth,
      rx: scale * Math.max(0, offset),
      ...attributes,
    });
  };

  const half = (scale * footSize) / 2;
  const spots = feet.map(place) as unknown as readonly [Point, Point, Point];
  const sides = [0, 1, 2].map((i) => betweenFeet(spots[i]!, spots[(i + 1) % 3]!, half));
  const [balanceX, balanceY] = place(balance);
  const marginRadius = scale * margin;
  const tipRadius = scale * tipReach;

  const boxAround = ([x, y]: Point, reach: number): Box => ({
    left: x - reach,
    top: y - reach,
    right: x + reach,
    bottom: y + reach,
  });
  const taken: Box[] = [...spots.map((spot) => boxAround(spot, half)), boxAround([balanceX, balanceY], DOT + 2)];
  const inked: Point[] = [
    ...[inner, outer].flatMap((outline) => (outline ? ring(outline, CURVE_POINTS).map(place) : [])),
    ...sides.flatMap((side) => along(side, 3)),
    ...(margin > 0 ? aroundCircle([balanceX, balanceY], marginRadius) : []),
    ...aroundCircle([balanceX, balanceY], tipRadius),
  ];
  const within: Box = { left: LEFT, top: 0, right: width, bottom };
  const inside = labels.feet.map(({ load }) => 2 * half >= Math.max(textWidth(load) + INSET, 2.5 * LABEL_HEIGHT));
  const loads = labels.feet.map(({ load }, i) => {
    const [x, y] = spots[i]!;
    if (inside[i]) return words(x, y + LABEL_HEIGHT * 0.85, load, { anchor: 'middle', halo: true });
    const places = placesAround(taken[i]!, textWidth(load), LABEL_HEIGHT, 2);
    const box = bestPlace(places, { taken, inked, within });
    taken.push(box);
    return words((box.left + box.right) / 2, box.bottom - 4, load, { anchor: 'middle', halo: true });
  });
  const numbers = spots.map(([x, y], i) =>
    words(x, y + (inside[i] ? -LABEL_HEIGHT * 0.2 : LETTERS * 0.36), String(i + 1), {
      anchor: 'middle',
      weight: 600,
      halo: true,
    }),
  );

  const dimensionY = bottom + BELOW - 12;
  const legend = key(entries(input), EDGE, bottom + BELOW + 4, width - 2 * EDGE);
  const blockTop = bottom + BELOW + 4 + legend.height + 10;
  const [left, right] = [middleX - scale * frame.halfLength, middleX + scale * frame.halfLength];

  const svg = sheet(
    {
      id,
      width,
      height: blockTop + BLOCK_HEIGHT + 2,
      title: labels.specimen
        ? `Plan of the jacket of ${labels.specimen}`
        : `Plan of the ${input.size ? 'jacket' : 'three feet'}`,
      description: `Seen from above, true to scale: ${labels.length} long and ${labels.width} wide ${over(input)}${input.size ? ', on three feet' : ''}. ${
        margin > 0
          ? `The balance point is ${labels.margin} inside of the support triangle.`
          : 'The balance point is outside of the support triangle.'
      }`,
    },
    outer
      ? group(
          { stroke: FAINT, 'stroke-width': THIN, 'stroke-dasharray': CHAIN },
          line(left, middleY, right, middleY),
          line(middleX, middleY - scale * frame.halfWidth, middleX, bottom),
        )
      : '',
    curve(outer, shell + settings.flange, FLANGE_LINE),
    curve(inner, shell, OUTLINE_LINE),
    group(SUPPORT_LINE, ...sides.map(([[x1, y1], [x2, y2]]) => line(x1, y1, x2, y2))),
    group(
      { stroke: INK, 'stroke-width': MEDIUM },
      ...spots.map(([x, y]) => element('rect', { x: x - half, y: y - half, width: 2 * half, height: 2 * half })),
    ),
    margin > 0 ? element('circle', { cx: balanceX, cy: balanceY, r: marginRadius, ...MARGIN_LINE }) : '',
    tipReach > 0 ? element('circle', { cx: balanceX, cy: balanceY, r: tipRadius, ...TIP_LINE }) : '',
    element('circle', { cx: balanceX, cy: balanceY, r: DOT, fill: CLAY }),
    group({}, ...numbers),
    group({}, ...loads),
    dimensionLeft(middleY - scale * frame.halfWidth, bottom, left, Math.min(left - 12, LEFT - 14), labels.width),
    dimensionBelow(left, right, bottom, dimensionY, labels.length),
    legend.svg,
    titleBlock(1, blockTop, width - 2, labels.specimen, labels.units),
  );
  return { svg, table: table(input) };
};
