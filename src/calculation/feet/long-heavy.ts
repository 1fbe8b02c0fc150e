/**
 * Whether a jacket is so long and so heavy that its feet move in from the ends, to bend it less.
 *
 * length ≥ long ratio × width and total weight ≥ long heavy weight.
 *
 * No slack: at just the ratio rounding decides, and both places of the feet do there.
 * Source: common practice, no source; the two ends are assumptions of the settings.
 */

import type { Settings } from '../settings.ts';

/**
 * @param length along the jacket [m]
 * @param width across it [m]
 * @param totalWeight jacket and specimen [kg]
 */
export const longHeavy = (length: number, width: number, totalWeight: number, settings: Settings): boolean =>
  length >= settings.longRatio * width && totalWeight >= settings.longHeavyWeight;
