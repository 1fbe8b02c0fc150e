/**
 * The largest bending moment of a jacket on two supports that stand as far in from both ends.
 *
 * M = max(w·a²/2, |w·L·(L − 4a)/8|), w = weight·g0/L: over the supports, and in the middle.
 *
 * Limits: weight spread evenly over the length; 0 ≤ a < L/2; static.
 * Source: statics of a beam; Roark's Formulas for Stress and Strain, Table 8.1, by superposition (from memory).
 * Example: 120 cm, 50 kg, inset 24 cm: 14.71 N·m.
 */

import { GRAVITY } from '../constants.ts';
import type { Limit } from '../limits.ts';
import {
  amount,
  finite,
  isAtLeastZero,
  isPositive,
  mustBePositive,
  mustNotBeNegative,
  type Result,
  wrong,
} from '../result.ts';

/**
 * @param length between the two ends [m]
 * @param totalWeight jacket and specimen [kg]
 * @param inset from an end to its support [m]
 * @returns moment [N·m]
 */
export const bending = (length: number, totalWeight: number, inset: number): Result<number> => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  if (!isAtLeastZero(inset)) return mustNotBeNegative('inset');
  if (!(inset < length / 2))
    return wrong('inset', 'must be below half of the length, {half}, not {inset}', {
      half: amount(length / 2, 'length'),
      inset: amount(inset, 'length'),
    });
  const share = inset / length;
  return finite(totalWeight * GRAVITY * length * Math.max((share * share) / 2, Math.abs(1 - 4 * share) / 8));
};

/** Farthest inset at which the parts beyond the supports are still short [share of the length]. Quarter points, REFERENCES B-10. */
export const FARTHEST_INSET = 0.25;

export const limits: readonly Limit<Parameters<typeof bending>>[] = [
  {
    text: 'supports in the outer quarters of the length; farther in, the ends hang far over',
    holds: (length, _totalWeight, inset) => inset <= FARTHEST_INSET * length,
  },
];
