/**
 * What each of three feet carries.
 *
 * Rᵢ = W·Aᵢ/A, Aᵢ the triangle of the balance point and the two other feet, A the triangle of the feet: the only loads with the weight's
 * sum and moments.
 *
 * Limits: static, feet on level ground.
 * Source: statics; barycentric coordinates.
 * Example: feet (0, 0), (60, 0), (20, 40) cm, balance point (25, 12) cm, 500 kg: 191.7, 158.3 and 150 kg.
 */

import type { Limit } from '../limits.ts';
import { Fault, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import { holds } from './margin.ts';
import { balanceFault, cross, type Feet, feetFault, type Point } from './points.ts';

/** Share of the weight below which a lift at a foot is rounding [1]. */
const ROUNDING = 1e-12;

/**
 * @param feet three points [m]
 * @param balance balance point [m]
 * @param totalWeight jacket and specimen [kg]
 * @returns load of each foot, in the order of the feet [kg]
 */
export const footLoads = (
  feet: Feet,
  balance: Point,
  totalWeight: number,
): Result<readonly [number, number, number]> => {
  const fault = feetFault(feet) ?? balanceFault(balance);
  if (fault) return fault;
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  const [a, b, c] = feet;
  const whole = cross(a, b, c);
  const shares = [cross(b, c, balance) / whole, cross(c, a, balance) / whole, cross(a, b, balance) / whole] as const;
  if (shares.some((share) => share < -ROUNDING))
    return noAnswer('the balance point is outside the feet, so the jacket tips over; move the feet until they hold it');
  const loads = [
    totalWeight * Math.max(0, shares[0]),
    totalWeight * Math.max(0, shares[1]),
    totalWeight * Math.max(0, shares[2]),
  ] as const;
  return loads.every((load) => load < Infinity)
    ? loads
    : new Fault('overflow', '', 'the result is too large to be a number');
};

export const limits: readonly Limit<Parameters<typeof footLoads>>[] = [
  {
    text: 'a balance point inside the feet or on an edge',
    holds: (feet, balance) => feetFault(feet) === undefined && holds(feet, balance),
  },
];
