/**
 * Pressure of one foot on what it stands on: p = load·g0/(length·width).
 *
 * Limits: mean over the foot; under a hard edge it is higher.
 * Source: statics.
 * Example: 15 kg on 10 × 10 cm: 14.71 kPa.
 */

import { GRAVITY } from '../constants.ts';
import type { Limit } from '../limits.ts';
import { finite, isPositive, mustBePositive, type Result } from '../result.ts';

/**
 * @param load what the foot carries [kg]
 * @param length of the foot [m]
 * @param width of the foot [m]
 * @returns pressure [Pa]
 */
export const footPressure = (load: number, length: number, width: number): Result<number> => {
  if (!isPositive(load)) return mustBePositive('load');
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  return finite((load * GRAVITY) / length / width);
};

/** Longest foot over its width up to which the mean pressure says much [1]. Assumption. */
export const LONGEST_FOOT = 4;

export const limits: readonly Limit<Parameters<typeof footPressure>>[] = [
  {
    text: 'a foot at most 4 times as long as wide; a longer one does not press evenly',
    holds: (_load, length, width) => Math.max(length, width) <= LONGEST_FOOT * Math.min(length, width),
  },
];
