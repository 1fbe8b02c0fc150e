import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { plasterOfLayer } from './plaster-of-layer.ts';
import { slurryVolume } from './slurry.ts';

/**
 * Dry plaster for a shell.
 *
 * m = area·(layers·(t − m/ρg) + finish coat)/V·(1 + waste)·calibration, V the slurry volume per kg of plaster.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster; a mean over an uneven shell need not be whole [1]
 * @param settings layer thickness, cloth weight, glass density, finish coat, water ratio, waste, calibration
 * @returns mass of dry plaster [kg]
 * Limits: area and layers above 0. Layer thickness is the shop's habit: calibrate it with jackets already made.
 * Source: absolute volumes, checked against published densities of gypsum casts.
 * Example: 1 m² in 8 layers, 18.29571642 kg.
 */
export const plaster = (shellArea: number, layers: number, settings: Settings): Result<number> => {
  if (!isPositive(shellArea)) return mustBePositive('shell_area');
  if (!isPositive(layers)) return mustBePositive('layers');
  return finite(
    ((shellArea * (layers * plasterOfLayer(settings) + settings.finishCoat)) / slurryVolume(settings.waterRatio)) *
      (1 + settings.waste) *
      settings.calibration,
  );
};
