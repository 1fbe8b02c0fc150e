import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { slurryVolume } from './slurry.ts';

/**
 * Volume of the slurry from an amount of dry plaster: V(r) × plaster.
 *
 * @param plaster mass of dry plaster [kg]
 * @param settings water ratio
 * @returns volume of slurry [m³]
 * Limits: plaster above 0; no air beaten in. Source: absolute volumes. Example: 10 kg of gypsum cement, 0.007430803636 m³.
 */
export const mixVolume = (plaster: number, settings: Settings): Result<number> =>
  isPositive(plaster) ? finite(slurryVolume(settings.waterRatio) * plaster) : mustBePositive('plaster');
