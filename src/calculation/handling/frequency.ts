/**
 * Frequency multiplier of the revised NIOSH lifting equation.
 *
 * The published table, by lifts a minute, length of the work and height of the hands at the start of the lift. Between two rates the
 * table is read in a straight line, also where the next cell is 0. A rate below 0.2 counts as 0.2; above 15 nothing is left.
 *
 * Limits: 8 hours is the longest work the table covers; each length of work presumes the rest periods of the publication.
 * Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110, table of frequency multipliers.
 * Example: 2.5 lifts a minute for 8 hours from below 75 cm: halfway between 0.65 and 0.55, so 0.60.
 */

import { isAtLeastZero, isPositive, mustBePositive, mustNotBeNegative, type Result, wrong } from '../result.ts';

/** Longest work called short [h]. Publication 94-110, table of frequency multipliers. */
export const SHORT_HOURS = 1;

/** Longest work called moderate [h]. Publication 94-110, table of frequency multipliers. */
export const MODERATE_HOURS = 2;

/** Longest work the method covers [h]. Publication 94-110, table of frequency multipliers. */
export const LONG_HOURS = 8;

/** Rates of the table's rows [lifts/min]. Publication 94-110, table of frequency multipliers. */
export const FREQUENCY_RATES = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15] as const;

/** Columns of the table: by length of work, hands starting low (below 75 cm or 30 in) or high. Publication 94-110, table of frequency multipliers. */
export const FREQUENCY_TABLE = {
  short: {
    low: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
    high: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
  },
  moderate: {
    low: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0, 0, 0, 0, 0],
    high: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21, 0, 0, 0],
  },
  long: {
    low: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0],
    high: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0],
  },
} as const;

/**
 * @param rate lifts a minute [1/min], 0 or more
 * @param hours length of the work [h], above 0, at most 8
 * @param low whether the hands start below 75 cm or 30 in
 * @returns multiplier [1], 0 to 1
 */
export const frequencyMultiplier = (rate: number, hours: number, low: boolean): Result<number> => {
  if (!isAtLeastZero(rate)) return mustNotBeNegative('rate');
  if (!isPositive(hours)) return mustBePositive('hours');
  if (!(hours <= LONG_HOURS))
    return wrong(
      'hours',
      `must be at most ${LONG_HOURS}, the longest work the method covers; type the hours of one shift`,
    );
  const work = hours <= SHORT_HOURS ? 'short' : hours <= MODERATE_HOURS ? 'moderate' : 'long';
  const column: readonly number[] = FREQUENCY_TABLE[work][low ? 'low' : 'high'];
  const next = FREQUENCY_RATES.findIndex((listed) => rate <= listed);
  if (next < 0) return 0;
  if (next === 0) return column[0]!;
  const from = FREQUENCY_RATES[next - 1]!;
  const share = (rate - from) / (FREQUENCY_RATES[next]! - from);
  return column[next - 1]! * (1 - share) + column[next]! * share;
};
