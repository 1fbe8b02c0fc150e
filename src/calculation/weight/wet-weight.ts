import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { wetArealMass } from './areal-mass.ts';
import { weightFault } from './weight.ts';

/**
 * Weight of both halves with their padding on the day they are made, and of the specimen if it is given.
 *
 * W = area·((layers·(t − m/ρg) + finish coat)·calibration·(1 + r)/V + layers·m + padding thickness·padding density) + specimen.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param specimen the specimen alone; 0 for the empty jacket [kg]
 * @param settings as for `weight`
 * @returns mass [kg]
 * Limits: area and layers above 0; nothing has dried yet, and the padding has taken up no water. An estimate for planning.
 * Source: absolute volumes, checked against published densities of gypsum casts.
 * Example: 1 m² in 8 layers, 25.52964468 kg.
 */
export const wetWeight = (shellArea: number, layers: number, specimen: number, settings: Settings): Result<number> =>
  weightFault(shellArea, layers, specimen) ?? finite(shellArea * wetArealMass(layers, settings) + specimen);
