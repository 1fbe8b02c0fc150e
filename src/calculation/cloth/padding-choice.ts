import { isPositive, mustBePositive, type Result } from '../result.ts';
import type { Padding, Settings } from '../settings.ts';

/**
 * Which padding suits a specimen: felt if it is fragile, of high relief, or lighter than the foam weight; else foam.
 *
 * @param weight the specimen alone [kg]
 * @param fragile true where it is
 * @param highRelief true where its surface is of high relief
 * @param settings foam weight
 * @returns felt or foam
 * Limits: weight above 0. Source: common practice, no source; the weight is an assumption. Example: 10 kg, sound and smooth: felt.
 */
export const paddingChoice = (
  weight: number,
  fragile: boolean,
  highRelief: boolean,
  settings: Settings,
): Result<Padding> => {
  if (!isPositive(weight)) return mustBePositive('weight');
  return fragile || highRelief || weight < settings.foamWeight ? 'felt' : 'foam';
};
