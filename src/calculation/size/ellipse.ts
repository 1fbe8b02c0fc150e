import { carlsonRG } from './carlson.ts';

/**
 * Perimeter of an ellipse, exact: P = 8·a·RG(0, (b/a)², 1), which is 4·a·E(k).
 *
 * @param a one semi-axis [m], above 0
 * @param b the other semi-axis [m], at least 0, in any order
 * @returns perimeter [m]; 4·a for an ellipse that is flat
 * Limits: none; exact to rounding for any ratio of the axes.
 * Source: NIST Digital Library of Mathematical Functions 19.9.9 with 19.25.1, computed by Carlson's RG.
 * Example: semi-axes 2 and 1, 9.68844822054768.
 */
export const ellipsePerimeter = (a: number, b: number): number => {
  const long = Math.max(a, b);
  const flatness = Math.min(a, b) / long;
  return 8 * long * carlsonRG(0, flatness * flatness, 1);
};
