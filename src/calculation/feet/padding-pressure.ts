/**
 * Mean pressure of the specimen on the padding of the lower half: p = weight·g0/outline seen from above.
 *
 * Outline: π/4·length·width; length·width for box and cylinder.
 *
 * Limits: mean over the outline; a specimen that rests on a few points presses harder there.
 * Source: statics.
 * Example: 60 × 40 cm, 30 kg: 1.56 kPa.
 */

import { GRAVITY } from '../constants.ts';
import type { Limit } from '../limits.ts';
import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param weight of the specimen [kg]
 * @returns pressure [Pa]
 */
export const paddingPressure = (length: number, width: number, weight: number, settings: Settings): Result<number> => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  if (!isPositive(weight)) return mustBePositive('weight');
  const share = settings.shape === 'ellipsoid' ? Math.PI / 4 : 1;
  return finite((weight * GRAVITY) / share / length / width);
};

/** Pressure up to which polyethylene foam creeps little, 1 psi [Pa]. From memory: less than 10 % in 1000 hours at 1 to 2 psi. */
export const MOST_PADDING_PRESSURE = 6894.757;

export const limits: readonly Limit<Parameters<typeof paddingPressure>>[] = [
  {
    text: 'at most about 7 kPa (1 psi); under more the padding slowly gives way',
    holds: (length, width, weight) => (weight * GRAVITY) / length / width <= MOST_PADDING_PRESSURE,
  },
];
