/**
 * Balance point from three scales, one under each foot.
 *
 * p = Σ rᵢ·pᵢ/Σ rᵢ, the centre of the readings.
 *
 * Limits: scales level with each other; no other support.
 * Source: statics, balance of moments.
 * Example: feet (−25, −12), (25, −12), (0, 18) cm with 9.73, 12.93 and 17.33 kg: (2, 1) cm.
 */

import { Fault, isAtLeastZero, type Result, wrong } from '../result.ts';
import { type Feet, feetFault, isPoint, type Point } from './points.ts';

/**
 * @param feet three points [m], not in one line
 * @param readings what each scale shows [kg], in the order of the feet
 * @returns balance point [m]
 */
export const balance = (feet: Feet, readings: readonly [number, number, number]): Result<Point> => {
  const fault = feetFault(feet);
  if (fault) return fault;
  const wrongOne = readings.findIndex((r) => !isAtLeastZero(r));
  if (wrongOne >= 0) return wrong('readings', `must be 0 or more; cell ${wrongOne + 1} is not`);
  const sum = readings[0] + readings[1] + readings[2];
  if (!(sum > 0)) return wrong('readings', 'are all 0; put the jacket on the scales and read them again');
  const centre = (axis: 0 | 1): number =>
    (readings[0] / sum) * feet[0][axis] + (readings[1] / sum) * feet[1][axis] + (readings[2] / sum) * feet[2][axis];
  const point: Point = [centre(0), centre(1)];
  return isPoint(point) && sum < Infinity ? point : new Fault('overflow', '', 'the result is too large to be a number');
};
