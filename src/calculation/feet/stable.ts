/**
 * Whether the jacket stands safely on its feet: tip angle at least the least tilt of the settings.
 *
 * Limits: as for the tip angle. The least tilt is a yardstick borrowed from medical equipment in transport, not a rule for jackets.
 * Source: IEC 60601-1, instability in transport, 10 degrees.
 * Example: margin 12 cm, balance point 20 cm high, least tilt 10 degrees: true.
 */

import { isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import type { Feet, Point } from './points.ts';
import { tipAngle } from './tip-angle.ts';

/**
 * @param feet three points [m]
 * @param balance balance point [m]
 * @param balanceHeight height of the balance point above the ground [m]
 */
export const stable = (feet: Feet, balance: Point, balanceHeight: number, settings: Settings): Result<boolean> => {
  const angle = tipAngle(feet, balance, balanceHeight);
  return isFault(angle) ? angle : angle >= settings.leastTilt;
};
