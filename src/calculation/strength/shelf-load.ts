/**
 * Load on a shelf per area: weight·g0/(length·width).
 *
 * Limits: mean over the area; three feet load a shelf at three points. The shelf's own rating comes first.
 * Source: statics.
 * Example: 60 × 40 cm, 50 kg: 2.04 kPa.
 */

import { GRAVITY } from '../constants.ts';
import type { Limit } from '../limits.ts';
import { finite, isPositive, mustBePositive, type Result } from '../result.ts';

/**
 * @param length that the jacket takes up [m]
 * @param width that it takes up [m]
 * @param totalWeight jacket and specimen [kg]
 * @returns load [Pa]
 */
export const shelfLoad = (length: number, width: number, totalWeight: number): Result<number> => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  return finite((totalWeight * GRAVITY) / length / width);
};

/** Load up to which a floor of light storage is designed [Pa]. ASCE 7: 6.00 kN/m². */
export const LIGHT_STORAGE = 6000;

export const limits: readonly Limit<Parameters<typeof shelfLoad>>[] = [
  {
    text: 'a load up to 6.0 kPa (125 lb/ft²), what ASCE 7 takes for floors of light storage; above it the floor itself wants a licensed engineer',
    holds: (length, width, totalWeight) => (totalWeight * GRAVITY) / length / width <= LIGHT_STORAGE,
  },
];
