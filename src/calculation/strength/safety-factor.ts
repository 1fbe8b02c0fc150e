/**
 * Least factor of the three ways in which the lower half can fail.
 *
 * Limits: as for `strength`. Rules for lifting gear are others.
 * Source: as for `strength`.
 * Example: 120 × 40 × 30 cm, 50 kg, 8 layers: 9.59, over one foot.
 */

import { isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { strength } from './strength.ts';

export { limits } from './strength.ts';

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param height of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param layers of cloth and plaster [1]
 * @returns allowed stress over stress [1]
 */
export const safetyFactor = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  layers: number,
  settings: Settings,
): Result<number> => {
  const ways = strength(length, width, height, totalWeight, layers, settings);
  return isFault(ways) ? ways : Math.min(ways[0].factor, ways[1].factor, ways[2].factor);
};
