/**
 * Constants of the revised NIOSH lifting equation.
 *
 * The publication prints them twice, for centimetres and kilograms and for inches and pounds. The two sets are parallel, not converted:
 * 23 kg is 50.7 lb. They stay apart here, and a lift is worked out in the units it is measured in.
 * Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110.
 */

/** Load constant [kg]. Publication 94-110. */
export const LOAD_METRIC = 23;

/** Load constant [lb]. Publication 94-110. */
export const LOAD_US = 51;

/** Reach up to which nothing is taken off [cm]. Publication 94-110. */
export const CLOSE_REACH_METRIC = 25;

/** Reach up to which nothing is taken off [in]. Publication 94-110. */
export const CLOSE_REACH_US = 10;

/** Farthest reach [cm]. Publication 94-110. */
export const MOST_REACH_METRIC = 63;

/** Farthest reach [in]. Publication 94-110. */
export const MOST_REACH_US = 25;

/** Best height of the hands, about the knuckles of a standing person [cm]. Publication 94-110. */
export const KNUCKLE_HEIGHT_METRIC = 75;

/** Best height of the hands, about the knuckles of a standing person [in]. Publication 94-110. */
export const KNUCKLE_HEIGHT_US = 30;

/** Share taken off for each centimetre above or below the best height [1/cm]. Publication 94-110. */
export const HEIGHT_SLOPE_METRIC = 0.003;

/** Share taken off for each inch above or below the best height [1/in]. Publication 94-110. */
export const HEIGHT_SLOPE_US = 0.0075;

/** Greatest height of the hands [cm]. Publication 94-110. */
export const MOST_HEIGHT_METRIC = 175;

/** Greatest height of the hands [in]. Publication 94-110. */
export const MOST_HEIGHT_US = 70;

/** What is left of the limit on a very long way up or down [1]. Publication 94-110. */
export const TRAVEL_BASE = 0.82;

/** Part of the limit that shrinks with the way up or down [cm]. Publication 94-110. */
export const TRAVEL_SLOPE_METRIC = 4.5;

/** Part of the limit that shrinks with the way up or down [in]. Publication 94-110. */
export const TRAVEL_SLOPE_US = 1.8;

/** Way up or down to which nothing is taken off [cm]. Publication 94-110. */
export const SHORT_TRAVEL_METRIC = 25;

/** Way up or down to which nothing is taken off [in]. Publication 94-110. */
export const SHORT_TRAVEL_US = 10;

/** Longest way up or down [cm]. Publication 94-110. */
export const MOST_TRAVEL_METRIC = 175;

/** Longest way up or down [in]. Publication 94-110. */
export const MOST_TRAVEL_US = 70;

/** Share taken off for each degree of twist [1/degree]. Publication 94-110. */
export const TWIST_SLOPE = 0.0032;

/** Greatest twist [degrees]. Publication 94-110. */
export const MOST_TWIST = 135;

export type LiftSystem = 'metric' | 'us';

/** The two sets, by unit system, with the units they are in. */
export const LIFT_CONSTANTS = {
  metric: {
    lengthUnit: 'cm',
    load: LOAD_METRIC,
    closeReach: CLOSE_REACH_METRIC,
    mostReach: MOST_REACH_METRIC,
    knuckleHeight: KNUCKLE_HEIGHT_METRIC,
    heightSlope: HEIGHT_SLOPE_METRIC,
    mostHeight: MOST_HEIGHT_METRIC,
    travelSlope: TRAVEL_SLOPE_METRIC,
    shortTravel: SHORT_TRAVEL_METRIC,
    mostTravel: MOST_TRAVEL_METRIC,
  },
  us: {
    lengthUnit: 'in',
    load: LOAD_US,
    closeReach: CLOSE_REACH_US,
    mostReach: MOST_REACH_US,
    knuckleHeight: KNUCKLE_HEIGHT_US,
    heightSlope: HEIGHT_SLOPE_US,
    mostHeight: MOST_HEIGHT_US,
    travelSlope: TRAVEL_SLOPE_US,
    shortTravel: SHORT_TRAVEL_US,
    mostTravel: MOST_TRAVEL_US,
  },
} as const;
