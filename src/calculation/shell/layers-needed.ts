/**
 * Least whole number of layers at which the jacket reaches the target safety factor, its own weight with it.
 *
 * From least layers to most layers, cover layers included: the weight as in the plan of a whole jacket with that many layers, then the least factor of the three ways.
 *
 * Limits: as for `strength`.
 * Source: as for `strength`.
 * Example: 120 × 80 × 60 cm, 300 kg: 15.
 */

import type { Limit } from '../limits.ts';
import { patchArea, stripArea } from '../plans/layer-area.ts';
import { amount, isFault, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { sizeFault } from '../size/three-sizes.ts';
import { limits as halfLimits, safetyFactor } from '../strength/safety-factor.ts';
import { weight as jacketWeight } from '../weight/weight.ts';
import { seam } from './seam.ts';
import { shellArea } from './shell-area.ts';

/** Relative slack, so that a factor just at the target reaches it. */
const SLACK = 1e-12;

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param height of the specimen [m]
 * @param weight of the specimen alone [kg]
 * @returns layers, cover layers among them [1]
 */
export const layersNeeded = (
  length: number,
  width: number,
  height: number,
  weight: number,
  settings: Settings,
): Result<number> => {
  const fault = sizeFault(length, width, height);
  if (fault) return fault;
  if (!isPositive(weight)) return mustBePositive('weight');
  const area = shellArea(length, width, height, settings);
  if (isFault(area)) return area;
  const edge = seam(length, width, settings);
  if (isFault(edge)) return edge;
  const extra = (stripArea(edge, settings) + patchArea(length, width, settings)) / area;
  for (let layers = settings.leastLayers; layers <= settings.mostLayers; layers++) {
    const total = jacketWeight(area, layers + extra, weight, settings);
    if (isFault(total)) return total;
    const factor = safetyFactor(length, width, height, total, layers, settings);
    if (isFault(factor)) return factor;
    if (factor >= settings.targetSafetyFactor * (1 - SLACK)) return layers;
  }
  return noAnswer('{most} layers are not enough; use a pallet or more feet', {
    most: amount(settings.mostLayers, 'count'),
  });
};

/** The limits of the strength at the answer. None of them looks at the weight, so that of the specimen stands in for the whole. */
export const limits: readonly Limit<Parameters<typeof layersNeeded>>[] = halfLimits.map(({ text, holds }) => ({
  text,
  holds: (length, width, height, weight, settings) => {
    const layers = layersNeeded(length, width, height, weight, settings);
    return isFault(layers) || holds(length, width, height, weight, layers, settings);
  },
}));
