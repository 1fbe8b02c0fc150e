/**
 * Integrals along half of an ellipse, x = A·cos u, y = B·sin u, u from 0 to π, with ds = W du, W = √(A²·sin²u + B²·cos²u).
 *
 * Length ∫ds: half of the ellipse's perimeter. First moment ∫y ds = 2AB·∫₀¹√(1 − k·z²)dz, k = 1 − B²/A², an arc sine or its hyperbolic twin.
 * Second moment ∫y² ds = 2B²·(P + A²·D)/3 with P = ∫₀^½π W du and D = ∫₀^½π sin²u/W du = RD(0, A²/B², 1)/(3B), from integrating the derivative of
 * sin u·cos u·W, which is 0 over a quarter; all terms are above 0, so that none cancels.
 *
 * Source: integral calculus; NIST Digital Library of Mathematical Functions, section 19.25.
 * Example: a half circle of radius 1: π, 2 and π/2.
 */

import { carlsonRD } from '../size/carlson.ts';
import { ellipsePerimeter } from '../size/ellipse.ts';

export interface Arc {
  /** Length of the line [m]. */
  readonly length: number;
  /** Its first moment about the x axis [m²]. */
  readonly first: number;
  /** Its second moment about the x axis [m³]. */
  readonly second: number;
}

/** ∫₀¹√(1 − k·z²)dz, k at most 1 [1]. */
const meanRoot = (k: number): number => {
  if (k === 0) return 1;
  const root = Math.sqrt(Math.abs(k));
  return (Math.sqrt(1 - k) + (k > 0 ? Math.asin(root) : Math.asinh(root)) / root) / 2;
};

/**
 * @param a half of the width, A [m], above 0
 * @param b depth, B [m], above 0
 */
export const arc = (a: number, b: number): Arc => {
  const length = ellipsePerimeter(a, b) / 2;
  const ratio = a / b;
  return {
    length,
    first: 2 * a * b * meanRoot(1 - (b / a) ** 2),
    second: (2 * b * b * (length / 2 + (a * ratio * carlsonRD(0, ratio * ratio, 1)) / 3)) / 3,
  };
};
