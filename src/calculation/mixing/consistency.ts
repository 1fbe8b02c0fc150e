import { finite, isPositive, mustBePositive, type Result } from '../result.ts';

/** Consistency is counted per this many parts of plaster. Definition. */
export const PARTS_OF_PLASTER = 100;

/**
 * Consistency of a mix: parts of water per 100 parts of dry plaster, by mass.
 *
 * @param plaster mass of dry plaster [kg]
 * @param water mass of water [kg]
 * @returns consistency [parts per 100]
 * Limits: both above 0. Source: definition in use in the gypsum trades. Example: 1.5 kg of plaster in 1 kg of water, 66.7.
 */
export const consistency = (plaster: number, water: number): Result<number> => {
  if (!isPositive(plaster)) return mustBePositive('plaster');
  if (!isPositive(water)) return mustBePositive('water');
  return finite((PARTS_OF_PLASTER * water) / plaster);
};
