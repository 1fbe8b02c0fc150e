/**
 * Bending stress in the middle of a flat rectangular plate, supported along its edges, under a load on a small circle.
 *
 * σ = 3F/(2π·s²)·((1 + ν)·max(0, ln(2b/(π·r0))) + β), b the short side, β by the ratio of the sides, linear between the rows.
 *
 * Limits: r0 at least s/2; r0 below b/2; flat, thin, small deflections, ν = 0.3.
 * Source: Roark's Formulas for Stress and Strain, 7th edition, Table 11.4 case 1b. The table gives β = 1 for an infinite strip; here from a ratio of 3 on.
 * Example: see `tests/references/plates-and-shells.test.ts`.
 */

import { POISSON } from './poisson.ts';

/** β by ratio of long to short side [1]. Roark's Formulas for Stress and Strain, 7th edition, Table 11.4 case 1b; the last row is the infinite strip. */
export const BETA: readonly (readonly [ratio: number, beta: number])[] = [
  [1, 0.435],
  [1.2, 0.65],
  [1.4, 0.789],
  [1.6, 0.875],
  [1.8, 0.927],
  [2, 0.958],
  [3, 1],
];

/** β for a ratio of at least 1, linear between the rows of the table. */
export const beta = (ratio: number): number => {
  const above = BETA.findIndex(([at]) => at >= ratio);
  if (above === -1) return BETA[BETA.length - 1]![1];
  if (above === 0) return BETA[0]![1];
  const [from, low] = BETA[above - 1]!;
  const [to, high] = BETA[above]!;
  return low + ((ratio - from) / (to - from)) * (high - low);
};

/**
 * @param force on the middle [N]
 * @param radius of the circle it is spread over [m]
 * @param wall thickness of the plate [m]
 * @param one side of the plate [m]
 * @param other side of the plate [m], in any order
 * @returns stress [Pa]
 */
export const plate = (force: number, radius: number, wall: number, one: number, other: number): number => {
  const short = Math.min(one, other);
  const spread = Math.max(0, Math.log((2 * short) / (Math.PI * radius)));
  return ((3 * force) / (2 * Math.PI * wall * wall)) * ((1 + POISSON) * spread + beta(Math.max(one, other) / short));
};
