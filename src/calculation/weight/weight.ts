import {
  type Fault,
  finite,
  isAtLeastZero,
  isPositive,
  mustBePositive,
  mustNotBeNegative,
  type Result,
} from '../result.ts';
import type { Settings } from '../settings.ts';
import { dryArealMass } from './areal-mass.ts';

/** The fault of the first argument of a jacket's weight that cannot be used, if there is one. Area in m², specimen in kg. */
export const weightFault = (shellArea: number, layers: number, specimen: number): Fault | undefined => {
  if (!isPositive(shellArea)) return mustBePositive('shell_area');
  if (!isPositive(layers)) return mustBePositive('layers');
  if (!isAtLeastZero(specimen)) return mustNotBeNegative('specimen');
  return undefined;
};

/**
 * Dry weight of both halves with their padding, and of the specimen if it is given.
 *
 * W = area·((layers·(t − m/ρg) + finish coat)·calibration·1.18618/V + layers·m + padding thickness·padding density) + specimen.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param specimen the specimen alone; 0 for the empty jacket [kg]
 * @param settings layer thickness, cloth weight, glass density, finish coat, water ratio, calibration, padding
 * @returns mass [kg]
 * Limits: area and layers above 0. An estimate for planning: weigh before you lift. Bolts, ribs and pallets are not in it.
 * Source: absolute volumes, checked against published densities of gypsum casts.
 * Example: 1 m² in 8 layers, 22.30593945 kg.
 */
export const weight = (shellArea: number, layers: number, specimen: number, settings: Settings): Result<number> =>
  weightFault(shellArea, layers, specimen) ?? finite(shellArea * dryArealMass(layers, settings) + specimen);
