import { mixes } from '../mixing/mixes.ts';
import { isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { dryTime } from '../weight/dry-time.ts';

/** Minutes in an hour. Definition. */
export const MINUTES_PER_HOUR = 60;

/** One step of the work. */
export interface Step {
  readonly step: string;
  /** When it starts, from the start of the first [h]. */
  readonly starts: number;
  /** How long it lasts [h]. */
  readonly lasts: number;
}

/**
 * Time to lay up one half: its mixes × working time, and with foam one setting time between a mix and the next.
 *
 * @param count mixes of that half [1]
 * @returns time [h]
 */
const layUp = (count: number, { workingTime, settingTime, padding }: Settings): number =>
  (count * workingTime) / MINUTES_PER_HOUR + (padding === 'foam' ? (count - 1) * settingTime : 0);

/**
 * Steps of making a jacket, each starting when the one before ends.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param settings as for `mixes` and `dryTime`, and preparation, setting and trim time
 * @returns steps from preparing to sealing
 * Limits: as for `mixes` and `dryTime`; one pair of hands; drying is not done before this, and may take twice as long. Source: common practice, no
 * source, for the order, the setting time and the least drying; preparation and trim time are assumptions.
 * Example: 1 m² in 8 layers, sealing starts after 63.6461659 h.
 */
export const schedule = (shellArea: number, layers: number, settings: Settings): Result<readonly Step[]> => {
  const count = mixes(shellArea, layers, settings);
  if (isFault(count)) return count;
  const drying = dryTime(layers, settings);
  if (isFault(drying)) return drying;
  const { preparationTime, settingTime, trimTime } = settings;
  const half = layUp(count / 2, settings);
  const steps: readonly (readonly [step: string, lasts: number])[] = [
    ['prepare', preparationTime],
    ['lay up the first half', half],
    ['set', settingTime],
    ['turn and clean', preparationTime],
    ['lay up the second half', half],
    ['set', settingTime],
    ['trim', trimTime],
    ['dry', drying],
    ['seal', trimTime],
  ];
  let starts = 0;
  return steps.map(([step, lasts]) => {
    const row = { step, starts, lasts };
    starts += lasts;
    return row;
  });
};
