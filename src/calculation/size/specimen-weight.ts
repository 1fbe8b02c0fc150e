import { finite, isPositive, mustBePositive, type Result } from '../result.ts';

/**
 * Weight of a specimen: volume × density.
 *
 * @param volume body volume [m³]
 * @param density of its material [kg/m³]
 * @returns mass [kg]
 * Limits: both above 0; a whole of one material. A scale is better: weigh before you lift. Source: definition of density.
 * Example: 0.02 m³ of mudstone, 48 kg.
 */
export const specimenWeight = (volume: number, density: number): Result<number> => {
  if (!isPositive(volume)) return mustBePositive('volume');
  if (!isPositive(density)) return mustBePositive('material_or_density');
  return finite(volume * density);
};
