import { carlsonRG } from './carlson.ts';

/**
 * Surface of an ellipsoid, exact for any order of its axes: S = 4π·a·b·RG(1, (c/b)², (c/a)²) for a ≥ b ≥ c.
 *
 * @param a semi-axis [m], above 0
 * @param b semi-axis [m], above 0
 * @param c semi-axis [m], above 0
 * @returns surface [m²]; both faces of the disc where c is next to nothing
 * Limits: none; sphere, disc and needle included, to rounding.
 * Source: NIST Digital Library of Mathematical Functions 19.33.2, S = 4π·RG(a²b², a²c², b²c²).
 * Example: semi-axes 3, 2 and 1, 48.88214630258206.
 */
export const ellipsoidArea = (a: number, b: number, c: number): number => {
  const long = Math.max(a, b, c);
  const short = Math.min(a, b, c);
  const middle = Math.max(Math.min(a, b), Math.min(Math.max(a, b), c));
  const overMiddle = short / middle;
  const overLong = short / long;
  return 4 * Math.PI * long * middle * carlsonRG(1, overMiddle * overMiddle, overLong * overLong);
};
