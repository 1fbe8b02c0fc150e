/**
 * The triangle with the largest margin: corners on an outline, the least distance from the balance point to an edge as large as possible.
 *
 * For a corner v and a margin r two edges are known: the lines from v that touch the circle of radius r around the balance point. They leave the
 * outline in the two other corners, and the third edge is far enough away as long as r is not too large. So the best triangle with a corner in v is the root of
 * one function of r, and the best of all is the largest root as v goes once around. Most corners need no root: one look tells
 * whether they leave room at the best margin so far, and those with most room come first.
 *
 * Corners inside the outline are never better: moved outwards, the triangle holds all it held before.
 */

import { largest } from './largest.ts';
import { type Outline, ring } from './outline.ts';
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

/** Room that is more than rounding [share of the margin]: along the straight sides of a box many corners are equally good. */
const LEAST_ROOM = 1e-10;

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

/**
 * The largest margin of a triangle with a corner in v.
 *
 * @param atLeast a margin that leaves room
 * @param room how much: each metre of margin takes more than a metre of it
 */
const largestFrom = (curve: Outline, v: Point, balance: Point, atLeast: number, room: number): number => {
  const most = Math.min(distance(v, balance), curve.halfWidth, curve.halfLength);
  return root((r) => slack(curve, v, balance, r), atLeast, Math.min(most, atLeast + room));
};

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
  let margin = atLeast;
  let angle = 0;
  let best: Feet | undefined;
  const roomAt = (v: Point): number => slack(curve, v, balance, margin);
  /** Takes the best triangle with a corner in v, where it beats the best so far. */
  const improve = (v: Point, at: number): void => {
    const room = roomAt(v);
    if (!(room > LEAST_ROOM * margin)) return;
    const larger = largestFrom(curve, v, balance, margin, room);
    const found = touching(curve, v, balance, larger);
    if (!(larger > margin && fits(found))) return;
    margin = larger;
    angle = at;
    best = found;
  };
  const lookAt = (some: readonly number[]): void => {
    const looks = some.map((i) => {
      const v = points[(i + CORNERS) % CORNERS]!;
      return { v, at: i * STEP, room: roomAt(v) };
    });
    for (const { v, at } of looks.filter((p) => p.room > 0).sort((p, q) => q.room - p.room)) improve(v, at);
  };
  const all = corners(balance);
  lookAt(all.filter((_, i) => i % FIRST_LOOK === 0));
  lookAt(all);
  if (!best) return undefined;
  for (const [reach, cuts] of NARROWING) {
    const found = largest((at) => roomAt(curve.at(at)), angle, reach * STEP, cuts);
    improve(curve.at(found), found);
  }
  return { feet: best, margin };
};
