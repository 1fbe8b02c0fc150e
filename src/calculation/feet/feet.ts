/**
 * Where the three feet of a jacket go.
 *
 * Long and heavy: two feet at 0.3·length from the middle on the side of the balance point, one on the axis as far on the other side, which
 * bends the jacket least. Else the triangle with the largest margin; among triangles within 0.1 % of it, the one that is the same on both
 * sides of the long axis. Centres of feet are half a foot size inside of the padded outline and at least a foot size apart.
 *
 * Mirrored input gives mirrored feet. With the balance point in the middle of the length two feet are at negative x; with it in the middle of the
 * width the foot farthest along is not at negative y.
 *
 * Limits: one jacket half seen from above as an ellipse or a rectangle; feet as points.
 * Source: three feet stand without rocking, as far apart as possible: common practice, no source. Margin: McGhee and Frank 1968,
 * Mathematical Biosciences 3:331-351. A fifth of the length from the ends: least moment of a beam on two supports, see `bending.ts`.
 * Example: 60 × 40 cm, 10 kg: (−9.70, −14.44), (25.64, 0), (−9.70, 14.44) cm.
 */

import type { Limit } from '../limits.ts';
import { amount, Fault, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { longerFirst } from '../size/longer-first.ts';
import { footSize } from './foot.ts';
import { longHeavy } from './long-heavy.ts';
import { footOutline, isInside, type Outline } from './outline.ts';

import { balanceFault, distance, type Feet, isPoint, type Point } from './points.ts';
import { spacedFeet } from './spaced-feet.ts';
import { symmetricFeet } from './symmetric-feet.ts';
import { type Placed, threeFeet } from './three-feet.ts';

/** Where the feet of a long and heavy jacket are, from its middle [share of the length]: a fifth of it from each end. */
export const FEET_MOVED_IN = 0.3;

/** Share of the best margin that a symmetric triangle must reach to be preferred [1]. Convention of FEET: within 0.1 %. */
export const NEARLY_BEST = 0.999;

/** A margin below which feet do not hold the balance point but for rounding [share of the half width]. */
const LEAST_MARGIN = 1e-9;

const sides = ([a, b, c]: Feet): readonly number[] => [distance(a, b), distance(b, c), distance(c, a)];

const areApart = (feet: Feet, apart: number): boolean => sides(feet).every((side) => side >= apart);

/** Feet counterclockwise as seen from the balance point, the first the one next after the negative x axis. */
const inOrder = (feet: Feet, [x, y]: Point): Feet => {
  const turn = (p: Point): number => Math.atan2(p[1] - y, p[0] - x);
  const [a, b, c] = [...feet].sort((p, q) => turn(p) - turn(q));
  return [a!, b!, c!];
};

const mirrored = (feet: Feet, x: number, y: number): Feet => {
  const turned = (p: Point): Point => [p[0] * x || 0, p[1] * y || 0];
  return [turned(feet[0]), turned(feet[1]), turned(feet[2])];
};

/**
 * Of two triangles that are mirror images about the long axis, and so equally good, the one whose foot farthest along is on the positive side.
 * Without a rule the last digit of a number would choose.
 */
const farthestAbove = (feet: Feet, balance: Point): Feet => {
  const farthest = feet.reduce((most, p) => (p[0] > most[0] ? p : most));
  return farthest[1] < 0 ? inOrder(mirrored(feet, 1, -1), balance) : feet;
};

/** The two on the side of negative x first. Undefined where they do not hold the balance point, or do not fit. */
const movedIn = (curve: Outline, balance: Point, length: number, apart: number): Feet | undefined => {
  const x = FEET_MOVED_IN * length;
  if (!(x <= curve.halfLength)) return undefined;
  const [, y] = curve.exit([-x, 0], [0, 1]);
  const feet: Feet = [
    [-x, y],
    [-x, -y],
    [x, 0],
  ];
  const behind = balance[0] + x;
  const beside = (x - balance[0]) * y - 2 * x * Math.abs(balance[1]);
  return behind > 0 && beside > 0 && areApart(feet, apart) ? feet : undefined;
};

/** The best feet for a balance point at x ≤ 0, y ≥ 0. Undefined where no three feet are far enough apart. */
const spreadOut = (curve: Outline, balance: Point, apart: number): Placed | undefined => {
  const same = symmetricFeet(curve, balance, apart);
  const known = Math.max(same?.margin ?? 0, LEAST_MARGIN * curve.halfWidth);
  const free = threeFeet(curve, balance, known);
  if (same && (!free || same.margin >= NEARLY_BEST * free.margin)) return same;
  if (free && areApart(free.feet, apart)) return { feet: inOrder(free.feet, balance), margin: free.margin };
  // Two feet too close: the best has two just far enough apart, or is a lesser triangle with all of them farther apart.
  const spaced = spacedFeet(curve, balance, apart);
  const lesser = threeFeet(curve, balance, Math.max(known, spaced?.margin ?? 0), (feet) => areApart(feet, apart));
  const best = lesser ?? spaced;
  if (same && best && same.margin >= NEARLY_BEST * best.margin) return same;
  return best && { feet: inOrder(best.feet, balance), margin: best.margin };
};

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param balance balance point [m], along and across from the middle
 * @returns three feet [m]
 */
export const feet = (
  length: number,
  width: number,
  totalWeight: number,
  balance: Point,
  settings: Settings,
): Result<Feet> => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  const fault = balanceFault(balance);
  if (fault) return fault;

  const overflow = new Fault('overflow', '', 'the result is too large to be a number');
  if (!(length * length + width * width < Infinity)) return overflow;

  const size = footSize(settings, length, width);
  const amounts = { foot: amount(size, 'length') };
  const curve = footOutline(length, width, settings);
  if (!curve) return noAnswer('feet of {foot} have no room inside the outline; set a smaller foot size', amounts);

  // One quarter is enough to solve; the others are its mirror images.
  const quarter: Point = [-Math.abs(balance[0]), Math.abs(balance[1])];
  const mirrorX = balance[0] > 0 ? -1 : 1;
  const mirrorY = balance[1] < 0 ? -1 : 1;
  const outside = noAnswer(
    'no three feet inside the outline hold the balance point; set a smaller foot size or bring the balance point nearer to the middle',
  );
  if (!isInside(curve, quarter)) return outside;

  const [along, across] = longerFirst(length, width, settings);
  const fixed = longHeavy(along, across, totalWeight, settings) ? movedIn(curve, quarter, along, size) : undefined;
  if (fixed) return mirrored(fixed, mirrorX, mirrorY);

  const placed = spreadOut(curve, quarter, size);
  if (!placed) return noAnswer('three feet of {foot} do not fit a foot size apart; set a smaller foot size', amounts);
  if (!(placed.margin > LEAST_MARGIN * curve.halfWidth)) return outside;
  const right = placed.feet.filter((p) => p[0] > 0).length;
  const turned = quarter[0] === 0 && right > 1 ? mirrored(placed.feet, -1, 1) : placed.feet;
  const found = quarter[1] === 0 ? farthestAbove(turned, quarter) : turned;
  return found.every(isPoint) ? mirrored(found, mirrorX, mirrorY) : overflow;
};

/** Size across over size along, below which three feet in an outline are hardly a triangle [1]. Assumption. */
export const SLIMMEST = 0.05;

export const limits: readonly Limit<Parameters<typeof feet>>[] = [
  {
    text: 'a jacket at most 20 times as long as wide',
    holds: (length, width) => Math.min(length, width) >= SLIMMEST * Math.max(length, width),
  },
  {
    text: 'a balance point in the middle half of the length and the width; nearer to the edge little margin is left',
    holds: (length, width, _weight, [x, y], settings) => {
      const [along, across] = longerFirst(length, width, settings);
      return Math.abs(x) <= along / 4 && Math.abs(y) <= across / 4;
    },
  },
];
