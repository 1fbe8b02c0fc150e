/**
 * Bolts that hold the two halves together: at least 4, else one for every bolt spacing of the seam.
 *
 * n = max(4, ceil(seam/bolt spacing)).
 *
 * Limits: a count for planning, not a check of their strength.
 * Source: assumption; no published spacing was found.
 * Example: seam 165 cm, spacing 20 cm: 9.
 */

import type { Limit } from '../limits.ts';
import { finite, isFault, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { wholeUp } from '../whole-up.ts';

/** Fewest bolts: one on either side of both axes. Assumption. */
export const FEWEST_BOLTS = 4;

/**
 * @param seam its length [m]
 * @returns bolts [1]
 */
export const bolts = (seam: number, settings: Settings): Result<number> => {
  if (!isPositive(seam)) return mustBePositive('seam');
  const count = finite(seam / settings.boltSpacing);
  return isFault(count) ? count : Math.max(FEWEST_BOLTS, wholeUp(count));
};

/** Narrowest flange that takes a bolt and its washers [m]. Assumption. */
export const NARROWEST_FLANGE = 0.025;

/** Shortest seam that the fewest bolts do not crowd [bolt spacings]. Assumption: half as far apart as they may be. */
export const SHORTEST_SEAM = 2;

export const limits: readonly Limit<Parameters<typeof bolts>>[] = [
  {
    text: 'a flange at least 2.5 cm (1 in) wide; a narrower one has no room for bolts and washers',
    holds: (_seam, settings) => settings.flange >= NARROWEST_FLANGE,
  },
  {
    text: 'a seam of at least two bolt spacings; on a shorter one four bolts crowd each other, and straps may do',
    holds: (seam, settings) => seam >= SHORTEST_SEAM * settings.boltSpacing,
  },
];
