/**
 * How far the balance point is from the nearest line on which the jacket would tip over: the least distance to an edge of the triangle of
 * the feet, with a minus sign where the balance point is outside.
 *
 * m = ±min over the edges of |p − nearest point of the edge|. Outside, the edge is the piece between two feet, not its extension.
 *
 * Limits: feet as points, rigid ground and jacket.
 * Source: static stability margin, McGhee and Frank 1968, Mathematical Biosciences 3:331-351.
 * Example: feet (0, 0), (60, 0), (20, 40) cm, balance point (25, 12) cm: 12 cm.
 */

import { finite, type Result } from '../result.ts';
import { balanceFault, cross, distance, type Feet, feetFault, MIDDLE, type Point } from './points.ts';

/** Distance of a point to the piece of a line between a and b [m]. */
const toSegment = (p: Point, a: Point, b: Point): number => {
  const side = distance(a, b);
  const along = ((p[0] - a[0]) * (b[0] - a[0]) + (p[1] - a[1]) * (b[1] - a[1])) / side;
  if (along <= 0) return distance(p, a);
  if (along >= side) return distance(p, b);
  return Math.abs(cross(a, b, p)) / side;
};

/** True where p is in the triangle or on its edge. */
export const holds = ([a, b, c]: Feet, p: Point): boolean => {
  const turns = Math.sign(cross(a, b, c));
  return turns * cross(a, b, p) >= 0 && turns * cross(b, c, p) >= 0 && turns * cross(c, a, p) >= 0;
};

/**
 * @param feet three points [m], not in one line
 * @param balance balance point [m]
 * @returns signed margin [m]
 */
export const margin = (feet: Feet, balance: Point = MIDDLE): Result<number> => {
  const fault = feetFault(feet) ?? balanceFault(balance);
  if (fault) return fault;
  const [a, b, c] = feet;
  const least = Math.min(toSegment(balance, a, b), toSegment(balance, b, c), toSegment(balance, c, a));
  return finite(holds(feet, balance) ? least : 0 - least);
};
