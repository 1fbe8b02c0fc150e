import { footPatchSize, tipPatchSize } from '../feet/foot.ts';
import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/** A jacket has two halves. */
export const HALVES = 2;

/** Each half stands on three feet, so that it does not rock. */
export const FEET_OF_HALF = 3;

/**
 * Cloth on the seam of both halves: 2·seam·edge strip width·edge strip layers.
 *
 * @param seam length of the seam [m]
 * @param settings edge strip width, edge strip layers
 * @returns area, counted once a layer [m²]
 */
export const stripArea = (seam: number, settings: Settings): number =>
  HALVES * seam * settings.edgeStripWidth * settings.edgeStripLayers;

/**
 * Patches that hold the feet of both halves: 2·3·(foot patches·foot patch size² + tip patches·tip patch size²).
 *
 * @param length size along the long axis [m]
 * @param width size across it [m]
 * @param settings foot patches, foot patch size, tip patches, tip patch size, foot size
 * @returns area, counted once a patch [m²]
 */
export const patchArea = (length: number, width: number, settings: Settings): number =>
  HALVES *
  FEET_OF_HALF *
  (settings.footPatches * footPatchSize(settings, length, width) ** 2 +
    settings.tipPatches * tipPatchSize(settings, length, width) ** 2);

/**
 * Area of all layers of a jacket: shell area·layers + edge strips + patches.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param extra edge strips and patches [m²]
 * @param layers of the specimen and the cover layers [1]
 * @returns area, each layer counted [m²]
 * Limits: area and layers above 0. Source: arithmetic.
 * Example: 0.7923952088 m² in 7 layers with 1.7709816 m² of strips and patches, 7.318 m².
 */
export const layerArea = (shellArea: number, extra: number, layers: number): Result<number> => {
  if (!isPositive(shellArea)) return mustBePositive('shell_area');
  if (!isPositive(layers)) return mustBePositive('layers');
  return finite(shellArea * layers + extra);
};
