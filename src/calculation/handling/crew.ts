/**
 * How many people a load needs: the smallest number whose limit is at least the load.
 *
 * One person: m ≤ limit·min(1, 25/(20 + width/2)), width in cm: the published estimate of how far a wide load keeps the hands from the
 * body, put into the reach multiplier. Two people 2/3, three people 1/2 of the sum of their limits, each holding the load close at his side.
 * Beyond three people no share is published: a hoist.
 *
 * Limits: hands at 25 cm above the floor or higher; people who lift together and are about equally strong; an estimate for planning.
 * Source: reach, Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110; shares, HSE L23, Manual handling.
 * Example: 20 kg held close, 1; 20 kg and 60 cm wide, 2; 35 kg, hoist.
 */

import { isPositive, mustBePositive, type Result } from '../result.ts';

/** Reach to which nothing is taken off [m]. Publication 94-110: 25 cm. */
export const CLOSE_REACH = 0.25;

/** Reach of a load of no width, hands at 25 cm or higher [m]. Publication 94-110: 20 cm + width/2. */
export const BODY_REACH = 0.2;

/** Share of the summed limits that two people lift [1]: two thirds. HSE L23. */
export const PAIR_SHARE = 0.6666666666666666;

/** Share of the summed limits that three people lift [1]. HSE L23. */
export const TRIO_SHARE = 0.5;

/** Relative slack, so that a load typed as just the limit stays within it after its units were converted. */
const SLACK = 1e-9;

export type Crew = 1 | 2 | 3 | 'hoist';

/** What one person may lift of a load of this width [kg]; null: held close. */
const onePerson = (limit: number, width: number | null): number =>
  width === null ? limit : limit * Math.min(1, CLOSE_REACH / (BODY_REACH + width / 2));

/**
 * @param totalWeight what is lifted, jacket and specimen [kg]
 * @param limit what one person may lift with the load held close [kg]
 * @param width size of the load away from the body [m]; null: held close
 * @returns 1, 2 or 3 people, or `hoist`
 */
export const crew = (totalWeight: number, limit: number, width: number | null = null): Result<Crew> => {
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  if (width !== null && !isPositive(width)) return mustBePositive('width');
  if (!isPositive(limit)) return mustBePositive('one-person limit');
  const within = (most: number): boolean => totalWeight <= most * (1 + SLACK);
  if (within(onePerson(limit, width))) return 1;
  if (within(2 * limit * PAIR_SHARE)) return 2;
  if (within(3 * limit * TRIO_SHARE)) return 3;
  return 'hoist';
};
