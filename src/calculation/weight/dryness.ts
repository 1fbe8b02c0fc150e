import { isAtLeastZero, isPositive, mustBePositive, mustNotBeNegative, type Result, wrong } from '../result.ts';

/**
 * Share of the free water that is gone: (wet − reading)/(wet − dry), held to 0 and 1.
 *
 * @param reading what the scale shows now [kg]
 * @param wet weight on the day it was made [kg]
 * @param dry weight when dry [kg]
 * @returns share, 0 to 1 [1]
 * Limits: wet above dry. Strength returns late: little of it before 0.93.
 * Source: definition; "Drying plaster casts" and "Drying plaster molds", trade bulletins, for the return of strength.
 * Example: 23 kg between 25.5 and 22.3 kg, 0.78125.
 */
export const dryness = (reading: number, wet: number, dry: number): Result<number> => {
  if (!isAtLeastZero(reading)) return mustNotBeNegative('reading');
  if (!isPositive(wet)) return mustBePositive('wet');
  if (!isPositive(dry)) return mustBePositive('dry');
  if (!(wet > dry)) return wrong('wet', 'must be above dry; check that the two weights are not swapped');
  return Math.min(1, Math.max(0, (wet - reading) / (wet - dry)));
};
