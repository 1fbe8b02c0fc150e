import { footHeight } from '../feet/foot.ts';
import { finite, isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { longerFirst } from '../size/longer-first.ts';
import { sizeFault } from '../size/three-sizes.ts';
import { thickness } from './thickness.ts';

/**
 * Outer length, width and height of the closed jacket on its feet.
 *
 * Length and width: size + 2·(padding + thickness + flange). Height: size + 2·(padding + thickness + foot height), since both halves have
 * feet.
 *
 * @param length size along the long axis [m]
 * @param width size across it [m]
 * @param height size from the table up [m]
 * @param layers layers of cloth and plaster [1]
 * @param settings padding thickness, layer thickness, finish coat, flange, foot size, foot height, shape
 * @returns outer length, width and height [m]; the longer of length and width first, a cylinder as given
 * Limits: sizes and layers above 0; bolts and ribs may stick out. Source: geometry.
 * Example: 0.6, 0.4, 0.3 m in 8 layers, 0.7387, 0.5387, 0.5387 m.
 */
export const outerSize = (
  length: number,
  width: number,
  height: number,
  layers: number,
  settings: Settings,
): Result<readonly [length: number, width: number, height: number]> => {
  const fault = sizeFault(length, width, height);
  if (fault) return fault;
  const wall = thickness(layers, settings);
  if (isFault(wall)) return wall;
  const [long, short] = longerFirst(length, width, settings);
  const around = 2 * (settings.paddingThickness + wall + settings.flange);
  const below = 2 * (settings.paddingThickness + wall + footHeight(settings, length, width));
  const outerLength = finite(long + around);
  if (isFault(outerLength)) return outerLength;
  const outerWidth = finite(short + around);
  if (isFault(outerWidth)) return outerWidth;
  const outerHeight = finite(height + below);
  if (isFault(outerHeight)) return outerHeight;
  return [outerLength, outerWidth, outerHeight];
};
