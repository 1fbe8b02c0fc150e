import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Water to mix with an amount of dry plaster: r × plaster.
 *
 * @param plaster mass of dry plaster [kg]
 * @param settings water ratio
 * @returns mass of water [kg]
 * Limits: plaster above 0. Source: definition of the water ratio. Example: 10 kg of gypsum cement, 3.8 kg.
 */
export const water = (plaster: number, settings: Settings): Result<number> =>
  isPositive(plaster) ? finite(settings.waterRatio * plaster) : mustBePositive('plaster');
