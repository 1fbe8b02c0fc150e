import { feet } from '../feet/feet.ts';
import { footHeight } from '../feet/foot.ts';
import { margin } from '../feet/margin.ts';
import { type Feet, MIDDLE } from '../feet/points.ts';
import { tipAngle } from '../feet/tip-angle.ts';
import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { thickness } from '../shell/thickness.ts';
import { follow, followBoth } from './follow.ts';
import type { Specimen } from './specimen.ts';

/** How a jacket stands on its feet. SI. */
export interface Standing {
  readonly feet: Result<Feet>;
  readonly margin: Result<number>;
  /** Height of the balance point above the ground [m]. */
  readonly balanceHeight: Result<number>;
  /** [degrees] */
  readonly tipAngle: Result<number>;
}

/**
 * How a jacket stands that is balanced in its middle.
 *
 * Balance height = foot height + thickness + padding thickness + height/2.
 *
 * @param specimen sizes
 * @param laid layers of the specimen and the cover layers [1]
 * @param dryWeight jacket and specimen [kg]
 * @param settings as for `feet` and `thickness`
 * Limits: those of `feet` and `tipAngle`; weigh the jacket on three scales to know its real balance point. Source: geometry.
 * Example: 0.6, 0.4, 0.3 m, 20 kg: 19.9 degrees.
 */
export const standing = (
  { length, width, height }: Specimen,
  laid: Result<number>,
  dryWeight: Result<number>,
  settings: Settings,
): Standing => {
  const points = follow(dryWeight, (kg) => feet(length, width, kg, MIDDLE, settings));
  const balanceHeight = follow(
    follow(laid, (n) => thickness(n, settings)),
    (wall) => finite(footHeight(settings, length, width) + wall + settings.paddingThickness + height / 2),
  );
  return {
    feet: points,
    margin: follow(points, (three) => margin(three, MIDDLE)),
    balanceHeight,
    tipAngle: followBoth(points, balanceHeight, (three, h) => tipAngle(three, MIDDLE, h)),
  };
};
