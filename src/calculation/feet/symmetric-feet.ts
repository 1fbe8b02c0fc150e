/**
 * The best triangle that is the same on both sides of the long axis: two feet at x < 0, one on the axis at the other end.
 *
 * The farther back the two feet, the farther their edge from the balance point and the nearer the two other edges: the best place is
 * where both are the same, or the nearest place at which the two are far enough apart.
 */

import type { Outline } from './outline.ts';
import { distance, type Feet, lengthOf, type Point } from './points.ts';
import { root } from './root.ts';
import type { Placed } from './three-feet.ts';

/** Direction straight across the jacket. */
const ACROSS: Point = [0, 1];

const withTwoAt = (curve: Outline, x: number): Feet => {
  const [, y] = curve.exit([x, 0], ACROSS);
  return [
    [x, -y],
    [curve.halfLength, 0],
    [x, y],
  ];
};

/** Distance of the balance point to the nearer of the two edges that meet on the axis [m], below 0 beyond it. */
const toSlope = ([, tip, corner]: Feet, balance: Point): number => {
  const run = tip[0] - corner[0];
  return ((tip[0] - balance[0]) * corner[1] - Math.abs(balance[1]) * run) / lengthOf(run, corner[1]);
};

/**
 * @param curve where the centres of the feet may be
 * @param balance balance point inside of it
 * @param apart least distance of two feet [m]
 * @returns the triangle, or undefined where the feet would stand too close
 */
export const symmetricFeet = (curve: Outline, balance: Point, apart: number): Placed | undefined => {
  const end = -curve.halfLength;
  const margins = (x: number): readonly [number, number] => [balance[0] - x, toSlope(withTwoAt(curve, x), balance)];
  // From the end of the outline, where the edge behind is farthest, towards the middle.
  const evenness = (x: number): number => {
    const [behind, slope] = margins(x);
    return behind - slope;
  };
  const far = root((s) => evenness(end + s), 0, Math.min(curve.halfLength, balance[0] - end)) + end;
  const span = (x: number): number => 2 * withTwoAt(curve, x)[2][1] - apart;
  const x = span(far) >= 0 ? far : span(0) >= 0 ? -root((s) => span(-s), 0, curve.halfLength) : far;
  const feet = withTwoAt(curve, x);
  if (!(x < 0) || !(span(x) >= 0) || !(distance(feet[0], feet[1]) >= apart)) return undefined;
  return { feet, margin: Math.min(...margins(x)) };
};
