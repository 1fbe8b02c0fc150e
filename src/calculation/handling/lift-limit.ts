/**
 * Recommended weight limit of one two-handed lift, by the revised NIOSH lifting equation.
 *
 * RWL = LC·HM·VM·DM·AM·FM·CM, with H the reach, V the height, D the travel and A the twist:
 * HM = 25/H (10/H), 1 when closer · VM = 1 − 0.003·|V − 75| (1 − 0.0075·|V − 30|) · DM = 0.82 + 4.5/D (0.82 + 1.8/D), 1 when shorter ·
 * AM = 1 − 0.0032·A · FM from the frequency table · CM from the coupling table. Metric constants first, inches in brackets.
 * Beyond the farthest reach, height, travel or twist the limit is 0.
 *
 * Here alone `calculation` does not work in SI: the source publishes parallel constants, which are not exact conversions.
 * Limits: see `limits`. Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110.
 * Example: reach 40 cm, height 70 cm, travel 50 cm, twist 30°, 1 lift a minute for 1 hour, fair grip: 10.4 kg.
 */

import { isAtLeastZero, isFault, isPositive, mustBePositive, mustNotBeNegative, type Result } from '../result.ts';
import { couplingMultiplier, type Grip } from './coupling.ts';
import { frequencyMultiplier } from './frequency.ts';
import { LIFT_CONSTANTS, type LiftSystem, MOST_TWIST, TRAVEL_BASE, TWIST_SLOPE } from './lift-constants.ts';

/** One lift, in the published units of the system it is worked out in. */
export interface Lift {
  /** From midway between the ankles to midway between the hands, level [cm or in]. */
  readonly reach: number;
  /** Of the hands above the floor [cm or in]. */
  readonly height: number;
  /** Way up or down [cm or in]. */
  readonly travel: number;
  /** From straight ahead [degrees]. */
  readonly twist: number;
  /** Lifts a minute [1/min]. */
  readonly rate: number;
  /** Length of the work [h]. */
  readonly hours: number;
  readonly grip: Grip;
}

/** The six multipliers, each 0 to 1. */
export interface LiftMultipliers {
  readonly reach: number;
  readonly height: number;
  readonly travel: number;
  readonly twist: number;
  readonly rate: number;
  readonly grip: number;
}

/** Where the method applies and where not, as told beside its results: clauses without a full stop. */
export const limits: readonly { readonly text: string }[] = [
  {
    text: 'one person who lifts with two hands, standing, with room to move; not kneeling, sitting or in a narrow place',
  },
  { text: 'not a method for teams: two people are not twice one person' },
  { text: 'lifting and lowering alone; not for carrying, pushing or pulling' },
  { text: 'not for unstable loads, whose weight shifts while they are lifted' },
  { text: 'smooth lifts; not fast or jerked ones, nor with a shovel or a wheelbarrow' },
  { text: 'work of up to 8 hours, on a floor that does not slip, in a room neither hot nor cold' },
  { text: 'where the load is set down with care, work out the end of the lift as well and take the lower limit' },
  { text: 'above an index of 1 the risk rises for some people, above 3 for nearly all' },
];

/**
 * @param lift the lift, in cm and degrees, or in inches and degrees
 * @param system which of the published sets of constants
 * @returns the six multipliers, or the fault of the first argument that cannot be
 */
export const liftMultipliers = (lift: Lift, system: LiftSystem): Result<LiftMultipliers> => {
  const { reach, height, travel, twist, rate, hours, grip } = lift;
  const c = LIFT_CONSTANTS[system];
  if (!isPositive(reach)) return mustBePositive('reach');
  if (!isAtLeastZero(height)) return mustNotBeNegative('height');
  if (!isAtLeastZero(travel)) return mustNotBeNegative('travel');
  if (!isAtLeastZero(twist)) return mustNotBeNegative('twist');
  const low = height < c.knuckleHeight;
  const frequency = frequencyMultiplier(rate, hours, low);
  if (isFault(frequency)) return frequency;
  return {
    reach: reach > c.mostReach ? 0 : Math.min(1, c.closeReach / reach),
    height: height > c.mostHeight ? 0 : 1 - c.heightSlope * Math.abs(height - c.knuckleHeight),
    travel: travel > c.mostTravel ? 0 : travel < c.shortTravel ? 1 : TRAVEL_BASE + c.travelSlope / travel,
    twist: twist > MOST_TWIST ? 0 : 1 - TWIST_SLOPE * twist,
    rate: frequency,
    grip: couplingMultiplier(grip, low),
  };
};

/** Load constant times the six multipliers [kg or lb]. */
export const limitFrom = (m: LiftMultipliers, system: LiftSystem): number =>
  LIFT_CONSTANTS[system].load * m.reach * m.height * m.travel * m.twist * m.rate * m.grip;

/**
 * @param lift the lift, in cm and degrees, or in inches and degrees
 * @param system which of the published sets of constants
 * @returns recommended weight limit [kg or lb]; 0 beyond a cut-off
 */
export const liftLimit = (lift: Lift, system: LiftSystem): Result<number> => {
  const multipliers = liftMultipliers(lift, system);
  return isFault(multipliers) ? multipliers : limitFrom(multipliers, system);
};
