import { isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Layers of cloth and plaster for a specimen.
 *
 * n = least + (most − least)·√((w − light)/(heaviest − light)), rounded half up and held to least and most; least below light.
 *
 * @param weight the specimen alone [kg]
 * @param settings least layers, most layers, and the two weights where they apply
 * @returns whole number of layers, cover layers not included [1]
 * Limits: weight above 0. A starting point: check it with the strength of the shell.
 * Source: the two ends, common practice, no source; between them the thickness that a plate in bending needs grows with the root of its load.
 * Example: 20 kg, 6.
 */
export const layers = (weight: number, settings: Settings): Result<number> => {
  if (!isPositive(weight)) return mustBePositive('weight');
  const { leastLayers, mostLayers, leastLayersWeight, mostLayersWeight } = settings;
  const share = Math.max(0, (weight - leastLayersWeight) / (mostLayersWeight - leastLayersWeight));
  return Math.min(mostLayers, Math.round(leastLayers + (mostLayers - leastLayers) * Math.sqrt(share)));
};
