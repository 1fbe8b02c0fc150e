/**
 * How far the ground may tilt, in the worst direction, before the jacket tips over.
 *
 * α = atan(margin/h), h the height of the balance point above the ground.
 *
 * Limits: static, rigid, no sliding, no impact; taken to the centres of the feet, which is on the safe side by half a foot. Minus where
 * the balance point is outside of the feet.
 * Source: statics.
 * Example: margin 12 cm, balance point 20 cm high: 30.96 degrees.
 */

import type { Limit } from '../limits.ts';
import { finite, isFault, isPositive, mustBePositive, type Result } from '../result.ts';
import { margin } from './margin.ts';
import type { Feet, Point } from './points.ts';

/** Degrees in a radian [°]. Exact. */
export const DEGREES = 180 / Math.PI;

/**
 * @param feet three points [m]
 * @param balance balance point [m]
 * @param balanceHeight height of the balance point above the ground [m]
 * @returns angle [degrees]
 */
export const tipAngle = (feet: Feet, balance: Point, balanceHeight: number): Result<number> => {
  const least = margin(feet, balance);
  if (isFault(least)) return least;
  if (!isPositive(balanceHeight)) return mustBePositive('balance_height');
  return finite(Math.atan(least / balanceHeight) * DEGREES);
};

export const limits: readonly Limit<Parameters<typeof tipAngle>>[] = [
  {
    text: 'a balance point inside the feet; outside of them the jacket tips over by itself',
    holds: (feet, balance) => !((margin(feet, balance) as number) < 0),
  },
];
