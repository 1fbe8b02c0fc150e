/**
 * Coupling multiplier of the revised NIOSH lifting equation: how well the hands hold.
 *
 * Good: handles or cut-outs of the best shape. Fair: lesser handles, or fingers bent a right angle under the load. Poor: bulky, sharp or
 * slippery loads. A load over 40 cm (16 in) long or 30 cm (12 in) high, or held with gloves, is less than good, so most jackets are fair or poor.
 *
 * Limits: rigid loads that do not shift in the hands.
 * Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110, table of coupling multipliers.
 * Example: fair from the floor, 0.95; fair from a table of 80 cm, 1.
 */

/** Good grip, at any height [1]. Publication 94-110, table of coupling multipliers. */
export const GOOD_COUPLING = 1;

/** Fair grip, hands below 75 cm or 30 in [1]. Publication 94-110, table of coupling multipliers. */
export const FAIR_COUPLING_LOW = 0.95;

/** Fair grip, hands at 75 cm or 30 in and above [1]. Publication 94-110, table of coupling multipliers. */
export const FAIR_COUPLING_HIGH = 1;

/** Poor grip, at any height [1]. Publication 94-110, table of coupling multipliers. */
export const POOR_COUPLING = 0.9;

export const GRIPS = ['good', 'fair', 'poor'] as const;
export type Grip = (typeof GRIPS)[number];

/**
 * @param grip good, fair or poor
 * @param low whether the hands are below 75 cm or 30 in
 * @returns multiplier [1]
 */
export const couplingMultiplier = (grip: Grip, low: boolean): number => {
  if (grip === 'good') return GOOD_COUPLING;
  if (grip === 'poor') return POOR_COUPLING;
  return low ? FAIR_COUPLING_LOW : FAIR_COUPLING_HIGH;
};
