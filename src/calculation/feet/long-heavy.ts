/**
 * Whether a jacket is so long and so heavy that its feet move in from the ends, to bend it less.
 *
 * length ≥ long ratio × width and total weight ≥ long heavy weight.
 *
 * A jacket of just the ratio is long, in whatever units its sizes were typed: the comparison has room for the rounding of a conversion.
 * Source: common practice, no source; the two ends are assumptions of the settings.
 */

import type { Settings } from '../settings.ts';

/** Relative room for the rounding of a conversion between units. */
const SLACK = 1e-9;

/**
 * @param length along the jacket [m]
 * @param width across it [m]
 * @param totalWeight jacket and specimen [kg]
 */
export const longHeavy = (length: number, width: number, totalWeight: number, settings: Settings): boolean =>
  length >= settings.longRatio * width * (1 - SLACK) && totalWeight >= settings.longHeavyWeight * (1 - SLACK);
