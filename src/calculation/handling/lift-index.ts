/**
 * Lifting index: the weight over the recommended limit of the same lift, LI = L/RWL.
 *
 * Limits: those of the lifting limit. Above 1 the risk rises for some people, above 3 for nearly all.
 * Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110.
 * Example: 20 kg where the limit is 10.4 kg: 1.92.
 */

import { finite, isFault, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import { LIFT_CONSTANTS, type LiftSystem, MOST_TWIST } from './lift-constants.ts';
import { type Lift, type LiftMultipliers, liftMultipliers, limitFrom } from './lift-limit.ts';

/** Why the limit is 0, and what to do. */
const reasonOfZero = (m: LiftMultipliers, system: LiftSystem): string => {
  const c = LIFT_CONSTANTS[system];
  const beyond = (what: string, most: number, unit: string) => `the limit is 0 with a ${what} above ${most} ${unit}`;
  if (m.reach === 0) return `${beyond('reach', c.mostReach, c.lengthUnit)}; stand closer or use a hoist`;
  if (m.height === 0) return `${beyond('height', c.mostHeight, c.lengthUnit)}; lower the place or use a hoist`;
  if (m.travel === 0) return `${beyond('travel', c.mostTravel, c.lengthUnit)}; lift in two steps or use a hoist`;
  if (m.twist === 0) return `${beyond('twist', MOST_TWIST, 'degrees')}; turn the feet instead of the back`;
  return 'the limit is 0 at this rate over these hours; lift less often, for a shorter time, or use a hoist';
};

/**
 * @param weight what is lifted [kg or lb]
 * @param lift the lift, in cm and degrees, or in inches and degrees
 * @param system which of the published sets of constants
 * @returns index [1]; no answer where the limit is 0
 */
export const liftIndex = (weight: number, lift: Lift, system: LiftSystem): Result<number> => {
  if (!isPositive(weight)) return mustBePositive('weight');
  const m = liftMultipliers(lift, system);
  if (isFault(m)) return m;
  const limit = limitFrom(m, system);
  if (!(limit > 0)) return noAnswer(reasonOfZero(m, system));
  return finite(weight / limit);
};
