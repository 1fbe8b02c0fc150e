/**
 * The triangle with the largest margin: corners on an outline, the least distance from the balance point to an edge as large as possible.
 *
 * For a corner v and a margin r two edges are known: the lines from v that touch the circle of radius r around the balance point. They leave the
 * outline in the two other corners, and the third edge is far enough away as long as r is not too large. So the best triangle with a corner in v is the root of
 * one function of r, and the best of all is the largest root as v goes once around. Most corners need no root: one look tells
 * whether they leave room at the best margin so far.
 *
 * Corners inside the outline are never better: moved outwards, the triangle holds all it held before.
 */

import { largest } from './largest.ts';
import { type Outline, pointAt, ring } from './outline.ts';
import { cross, distance, type Feet, lengthOf, type Point } from './points.ts';
import { root } from './root.ts';

/** Feet and their margin, which is below 0 where they do not hold the balance point [m]. */
export interface Placed {
  readonly feet: Feet;
  readonly margin: number;
}

/** Corners to look at around the outline. A multiple of 8, so that the ends of the axes and the corners of a box are among them. */
const CORNERS = 48;

/** Angle from one of them to the next [rad]. */
const STEP = (2 * Math.PI) / CORNERS;

/** Every how many corners a first look is taken, so that most of the others are soon out of play. */
const FIRST_LOOK = 4;

/** Rounds of closing in on the best corner: how far to both sides [steps], and in how many cuts of the golden section. */
const NARROWING = [
  [1, 8],
  [0.03, 9],
] as const;

/** Signed distance of p to the left of the line from a to b [m]. */
const leftOf = (a: Point, b: Point, p: Point): number => {
  const length = distance(a, b);
  return length > 0 ? cross(a, b, p) / length : -Infinity;
};

/** The triangle with a corner in v whose two edges there are r from the balance point, counterclockwise. */
const touching = (curve: Outline, v: Point, balance: Point, r: number): Feet => {
  const x = balance[0] - v[0];
  const y = balance[1] - v[1];
  const away = lengthOf(x, y);
  const sine = Math.min(1, r / away);
  const cosine = Math.sqrt(1 - sine * sine);
  const toX = x / away;
  const toY = y / away;
  return [
    v,
    curve.exit(v, [toX * cosine + toY * sine, toY * cosine - toX * sine]),
    curve.exit(v, [toX * cosine - toY * sine, toY * cosine + toX * sine]),
  ];
};

/** How much farther than r the third edge is from the balance point [m]. */
const slack = (curve: Outline, v: Point, balance: Point, r: number): number => {
  const feet = touching(curve, v, balance, r);
  return leftOf(feet[1], feet[2], balance) - r;
};

/** The largest margin of a triangle with a corner in v; `atLeast` where none is larger. */
const largestFrom = (curve: Outline, v: Point, balance: Point, atLeast: number): number =>
  root((r) => slack(curve, v, balance, r), atLeast, Math.min(distance(v, balance), curve.halfWidth, curve.halfLength));

/** The corners worth looking at: mirror images of others are left out where the balance point is on an axis. */
const corners = (balance: Point): readonly number[] => {
  const from = balance[0] === 0 && balance[1] !== 0 ? -CORNERS / 4 : 0;
  const parts = (balance[0] === 0 ? 2 : 1) * (balance[1] === 0 ? 2 : 1);
  return Array.from({ length: CORNERS / parts + (parts > 1 ? 1 : 0) }, (_, i) => from + i);
};

/**
 * @param curve where the centres of the feet may be
 * @param balance balance point inside of it
 * @param atLeast a margin above 0 that is known to be possible, or that must be beaten to matter [m]
 * @param fits which triangles count
 * @returns the best triangle, or undefined where none beats `atLeast`
 */
export const threeFeet = (
  curve: Outline,
  balance: Point,
  atLeast: number,
  fits: (feet: Feet) => boolean = () => true,
): Placed | undefined => {
  const points = ring(curve, CORNERS);
  const point = (i: number): Point => points[(i + CORNERS) % CORNERS]!;
  let margin = atLeast;
  let best: number | undefined;
  /** Raises the margin to the largest from the roomiest of some corners, and answers those that have room at the margin before. */
  const raise = (some: readonly number[]): readonly number[] => {
    let most = 0;
    let roomiest = 0;
    const left = some.filter((i) => {
      const room = slack(curve, point(i), balance, margin);
      if (room > most) {
        most = room;
        roomiest = i;
      }
      return room > 0;
    });
    if (!(most > 0)) return [];
    const larger = largestFrom(curve, point(roomiest), balance, margin);
    if (!(larger > margin && fits(touching(curve, point(roomiest), balance, larger))))
      return left.filter((i) => i !== roomiest);
    best = roomiest;
    margin = larger;
    return left;
  };
  const all = corners(balance);
  raise(all.filter((_, i) => i % FIRST_LOOK === 0));
  // Most room at one margin is not yet the largest margin: look again at the corners that are still in play.
  let inPlay = all;
  while (inPlay.length > 0) inPlay = raise(inPlay);
  if (best === undefined) return undefined;

  let angle = best * STEP;
  for (const [reach, cuts] of NARROWING) {
    const room = (at: number): number => slack(curve, pointAt(curve, at), balance, margin);
    const found = largest(room, angle, reach * STEP, cuts);
    const larger = largestFrom(curve, pointAt(curve, found), balance, margin);
    if (larger > margin && fits(touching(curve, pointAt(curve, found), balance, larger))) {
      margin = larger;
      angle = found;
    }
  }
  return { feet: touching(curve, pointAt(curve, angle), balance, margin), margin };
};
