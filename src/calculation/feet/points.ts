/** Points of the plan: origin in the middle of the jacket, x along its length, y across [m]. */

import { type Fault, wrong } from '../result.ts';

export type Point = readonly [x: number, y: number];

export type Feet = readonly [Point, Point, Point];

/** Balance point of a jacket that is as heavy on one side as on the other [m]. */
export const MIDDLE: Point = [0, 0];

/** Twice the triangle over the square of its longest side, at or below which three feet count as in one line [1]. Rounding only. */
export const IN_LINE = 1e-12;

/** Length of a vector [m]. The plain root: many times faster than the library's, and sizes here are far from overflow. */
export const lengthOf = (x: number, y: number): number => Math.sqrt(x * x + y * y);

/** Distance of two points [m]. */
export const distance = (a: Point, b: Point): number => lengthOf(b[0] - a[0], b[1] - a[1]);

/** Cross product of b − a and c − a [m²]: twice the area of the triangle, above 0 where it turns to the left. */
export const cross = (a: Point, b: Point, c: Point): number =>
  (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

export const isPoint = (p: Point): boolean => p.every((x) => x > -Infinity && x < Infinity);

/** The fault of three feet that are no triangle. */
export const feetFault = (feet: Feet): Fault | undefined => {
  if (!feet.every(isPoint)) return wrong('feet', 'must be three points: three rows of two numbers');
  const [a, b, c] = feet;
  const longest = Math.max(distance(a, b), distance(b, c), distance(c, a));
  if (!(Math.abs(cross(a, b, c)) > IN_LINE * longest * longest))
    return wrong('feet', 'stand in one line; move one of them out of it');
  return undefined;
};

/** The fault of a balance point that is no point. */
export const balanceFault = (balance: Point): Fault | undefined =>
  isPoint(balance) ? undefined : wrong('balance', 'must be one row of two numbers, along and across');
