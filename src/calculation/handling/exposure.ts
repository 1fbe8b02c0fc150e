/**
 * Average exposure over a working day of 8 hours: E = Σ C·T/8.
 *
 * Time that is not listed counts as time without exposure. A day longer than 8 hours is still divided by 8, as the rule asks.
 *
 * Limits: one person, one day of at most 24 hours, one substance; an estimate for planning, no measurement.
 * Source: 29 CFR 1915.1000.
 * Example: 2 hours at 10 mg/m³ and 3 hours at 2 mg/m³: 3.25 mg/m³.
 */

import { amount, finite, isAtLeastZero, mustNotBeNegative, type Result, wrong } from '../result.ts';

/** Hours the average is taken over [h]. 29 CFR 1915.1000. */
export const SHIFT_HOURS = 8;

/** Hours of a day [h]. By definition. */
export const DAY_HOURS = 24;

/** Relative slack, so that parts that add up to a whole day are a day. */
const SLACK = 1e-9;

/**
 * @param levels level in each part of the day [mg/m³, or any one unit], 0 or more
 * @param hours how long each part lasts [h], 0 or more, together at most 24
 * @returns 8-hour average [unit of the levels]
 */
export const exposure = (levels: readonly number[], hours: readonly number[]): Result<number> => {
  if (levels.length === 0) return wrong('levels', 'is blank; give a level and its hours for each part of the day');
  if (levels.length !== hours.length)
    return wrong('hours', 'must have one number for each of the {levels} levels, not {hours}', {
      levels: amount(levels.length, 'count'),
      hours: amount(hours.length, 'count'),
    });
  if (!levels.every(isAtLeastZero)) return mustNotBeNegative('levels');
  if (!hours.every(isAtLeastZero)) return mustNotBeNegative('hours');
  const day = hours.reduce((sum, part) => sum + part, 0);
  if (!(day <= DAY_HOURS * (1 + SLACK)))
    return wrong('hours', 'must add up to at most {most} for one day, not {sum}', {
      most: amount(DAY_HOURS, 'hours'),
      sum: amount(day, 'hours'),
    });
  return finite(levels.reduce((sum, level, i) => sum + level * hours[i]!, 0) / SHIFT_HOURS);
};
