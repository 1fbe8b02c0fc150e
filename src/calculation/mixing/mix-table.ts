import { WATER_DENSITY } from '../constants.ts';
import { amount, isFault, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { mixes } from './mixes.ts';
import { plaster } from './plaster.ts';
import { slurryVolume } from './slurry.ts';

/** Mixes that a table lists at most [1]. Our own choice: far more than anyone mixes for one jacket. */
export const MOST_MIXES = 1000;

/** The halves in the order in which they are made. */
export const HALVES = ['lower', 'upper'] as const;
export type Half = (typeof HALVES)[number];

/** One mix. Water comes first: plaster goes into water. */
export interface Mix {
  /** Counted from 1 through both halves. */
  readonly mix: number;
  readonly half: Half;
  /** Mass of the water [kg]. */
  readonly water: number;
  /** Volume of the water [m³]. */
  readonly waterVolume: number;
  /** Mass of the dry plaster [kg]. */
  readonly plaster: number;
  /** Volume of the slurry [m³]. */
  readonly slurry: number;
}

/**
 * What to mix, mix by mix: the plaster of each half in equal mixes.
 *
 * Plaster of one mix = plaster/number of mixes; water = r × plaster; volumes: water/998 kg/m³, and V(r) × plaster.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param settings as for `mixes`
 * @returns the mixes of the lower half, then those of the upper half
 * Limits: as for `mixes`, and no more than 1000 mixes. Source: water ratio and absolute volumes, as for `plaster`.
 * Example: 1 m² in 8 layers, two mixes of 9.14785821 kg of plaster in 3.47618612 kg of water.
 */
export const mixTable = (shellArea: number, layers: number, settings: Settings): Result<readonly Mix[]> => {
  const dry = plaster(shellArea, layers, settings);
  if (isFault(dry)) return dry;
  const count = mixes(shellArea, layers, settings);
  if (isFault(count)) return count;
  if (count > MOST_MIXES)
    return noAnswer(
      'this takes {count} mixes, more than the {most} that a table lists; set a larger bucket or laying rate',
      { count: amount(count, 'count'), most: amount(MOST_MIXES, 'count') },
    );
  const each = dry / count;
  const water = settings.waterRatio * each;
  return Array.from({ length: count }, (_, i) => ({
    mix: i + 1,
    half: HALVES[i < count / 2 ? 0 : 1],
    water,
    waterVolume: water / WATER_DENSITY,
    plaster: each,
    slurry: each * slurryVolume(settings.waterRatio),
  }));
};
