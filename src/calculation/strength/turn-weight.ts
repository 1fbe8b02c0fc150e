/**
 * Weight felt at the lifting edge as a jacket begins to turn over its other edge: weight·offset/width.
 *
 * Limits: the beginning of the turn; lifting straight up; it changes as the jacket turns, and past the balance it comes over by itself.
 * Source: statics, a lever.
 * Example: 50 kg, 40 cm, balance point in the middle: 25 kg.
 */

import { finite, isPositive, mustBePositive, type Result } from '../result.ts';

/**
 * @param totalWeight jacket and specimen [kg]
 * @param width from the resting edge to the lifting edge [m]
 * @param offset from the resting edge to the balance point [m]; half of the width if left out
 * @returns mass [kg]
 */
export const turnWeight = (totalWeight: number, width: number, offset: number | null = null): Result<number> => {
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  if (!isPositive(width)) return mustBePositive('width');
  if (offset === null) return totalWeight / 2;
  if (!isPositive(offset)) return mustBePositive('offset');
  return finite((totalWeight / width) * offset);
};
