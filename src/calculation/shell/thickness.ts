import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Thickness of a shell: layers × layer thickness + finish coat. The padding is not part of it.
 *
 * @param layers layers of cloth and plaster [1]
 * @param settings layer thickness, finish coat
 * @returns thickness [m]
 * Limits: layers above 0. Source: arithmetic; the layer thickness is an assumption near published laminates. Example: 8 layers, 13 mm.
 */
export const thickness = (layers: number, settings: Settings): Result<number> =>
  isPositive(layers) ? finite(layers * settings.layerThickness + settings.finishCoat) : mustBePositive('layers');
