import { finite, isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { wholeUp } from '../whole-up.ts';
import { plaster } from './plaster.ts';
import { plasterOfLayer } from './plaster-of-layer.ts';
import { slurryVolume } from './slurry.ts';

/** Least mixes for a half padded with felt. Common practice, no source. */
export const FELT_MIXES = 1;

/** Least mixes for a half padded with foam, which is laid up in two goes. Common practice, no source. */
export const FOAM_MIXES = 2;

/**
 * Slurry that one mix may hold: a bucket, or what can be laid up while it stays workable if that is less.
 *
 * Laying rate × working time × (t − m/ρg), where a laying rate is given.
 *
 * @param settings bucket, laying rate [m²/min of one layer], working time [min], layer thickness, cloth weight, glass density
 * @returns volume [m³]
 * Limits: none. Source: arithmetic. Example: 0.05 m²/min for 40 minutes at 1.42 mm, 2.84 L.
 */
export const oneMix = (settings: Settings): number =>
  settings.layingRate === null
    ? settings.bucket
    : Math.min(settings.bucket, settings.layingRate * settings.workingTime * plasterOfLayer(settings));

/**
 * Mixes for both halves: 2·max(1 for felt or 2 for foam, ⌈half of the slurry/one mix⌉).
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param settings as for `plaster`, and padding, bucket, laying rate, working time
 * @returns number of mixes, even [1]
 * Limits: area and layers above 0. Source: common practice, no source, for the least number; arithmetic for the rest.
 * Example: 1 m² in 8 layers, 2.
 */
export const mixes = (shellArea: number, layers: number, settings: Settings): Result<number> => {
  const dry = plaster(shellArea, layers, settings);
  if (isFault(dry)) return dry;
  const half = (dry * slurryVolume(settings.waterRatio)) / 2;
  const least = settings.padding === 'foam' ? FOAM_MIXES : FELT_MIXES;
  return finite(2 * Math.max(least, wholeUp(half / oneMix(settings))));
};
