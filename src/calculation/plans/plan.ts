import { footSize } from '../feet/foot.ts';
import { footLoads } from '../feet/foot-loads.ts';
import { footPressure } from '../feet/foot-pressure.ts';
import { MIDDLE } from '../feet/points.ts';
import { type Crew, crew } from '../handling/crew.ts';
import { mixTemperature } from '../mixing/mix-temperature.ts';
import type { Result } from '../result.ts';
import type { Padding, Settings } from '../settings.ts';
import { outerSize } from '../shell/outer-size.ts';
import { thickness } from '../shell/thickness.ts';
import { volume } from '../size/volume.ts';
import { ribHeight } from '../strength/rib-height.ts';
import { safetyFactor } from '../strength/safety-factor.ts';
import { shelfLoad } from '../strength/shelf-load.ts';
import { strength, type Way } from '../strength/strength.ts';
import { turnWeight } from '../strength/turn-weight.ts';
import { dryTime } from '../weight/dry-time.ts';
import { follow, followBoth } from './follow.ts';
import { type Materials, materials } from './materials.ts';
import type { Specimen } from './specimen.ts';
import { type Standing, standing } from './standing.ts';
import { withChanges } from './with-changes.ts';

/** All that is worked out for one jacket. SI. A quantity without an answer holds its fault. */
export interface Plan extends Omit<Materials, 'laid'>, Omit<Standing, 'feet'> {
  readonly padding: Padding;
  readonly volume: Result<number>;
  readonly thickness: Result<number>;
  readonly outerLength: Result<number>;
  readonly outerWidth: Result<number>;
  readonly outerHeight: Result<number>;
  readonly mixTemperature: Result<number>;
  readonly dryingTime: Result<number>;
  readonly footSize: Result<number>;
  readonly stable: Result<boolean>;
  readonly largestFootLoad: Result<number>;
  readonly footPressure: Result<number>;
  readonly safetyFactor: Result<number>;
  /** The way in which the lower half fails first. */
  readonly weakest: Result<Way['way']>;
  /** On the day it is made: wet weight, wet strength. */
  readonly safetyFactorWhenMade: Result<number>;
  readonly strongEnough: Result<boolean>;
  readonly ribHeight: Result<number>;
  readonly turnWeight: Result<number>;
  readonly shelfLoad: Result<number>;
  readonly crew: Result<Crew>;
}

/** Relative slack, so that a factor just at the target reaches it after roundings. */
const SLACK = 1e-12;

/** The way with the least factor; the first of several equals. */
const weakestOf = (ways: readonly Way[]): Way => ways.reduce((least, one) => (one.factor < least.factor ? one : least));

/**
 * The whole plan of one jacket.
 *
 * Materials as in `materials`; thickness, outer size, drying time and strength use the layers of the specimen and the cover layers. Feet, loads,
 * strength and shelf load use the dry weight of jacket and specimen; turn weight and crew, with the outer width, the wet weight.
 *
 * @param specimen sizes, weight, and the surface if it is not to be worked out from the sizes
 * @param settings in force, padding among them
 * @returns every quantity of the plan, each a value or its fault
 * Limits and sources: those of the single calculations. Example: 0.6, 0.4, 0.3 m, 20 kg: 40.09227299 kg.
 */
export const plan = (specimen: Specimen, settings: Settings): Plan => {
  const { length, width, height } = specimen;
  const { laid, ...made } = materials(specimen, settings);
  const { feet, ...stands } = standing(specimen, laid, made.weight, settings);
  const outer = follow(laid, (n) => outerSize(length, width, height, n, settings));
  const outerLength = follow(outer, ([along]) => along);
  const outerWidth = follow(outer, ([, across]) => across);
  const size = footSize(settings, length, width);
  const load = followBoth(feet, made.weight, (three, kg) =>
    follow(footLoads(three, MIDDLE, kg), (loads) => Math.max(...loads)),
  );
  const weakest = followBoth(made.weight, laid, (kg, n) =>
    follow(strength(length, width, height, kg, n, settings), weakestOf),
  );
  const factor = follow(weakest, (way) => way.factor);
  const whenMade = withChanges(settings, { condition: 'wet' });
  return {
    ...made,
    ...stands,
    padding: settings.padding,
    volume: volume(length, width, height, settings),
    thickness: follow(laid, (n) => thickness(n, settings)),
    outerLength,
    outerWidth,
    outerHeight: follow(outer, ([, , up]) => up),
    mixTemperature: mixTemperature(settings.roomTemperature, settings),
    dryingTime: follow(laid, (n) => dryTime(n, settings)),
    footSize: size,
    stable: follow(stands.tipAngle, (angle) => angle >= settings.leastTilt),
    largestFootLoad: load,
    footPressure: follow(load, (kg) => footPressure(kg, size, size)),
    safetyFactor: factor,
    weakest: follow(weakest, (way) => way.way),
    safetyFactorWhenMade: followBoth(made.wetWeight, laid, (kg, n) =>
      follow(whenMade, (wet) => safetyFactor(length, width, height, kg, n, wet)),
    ),
    strongEnough: follow(factor, (f) => f >= settings.targetSafetyFactor * (1 - SLACK)),
    ribHeight: followBoth(made.weight, laid, (kg, n) => ribHeight(length, width, height, kg, n, settings)),
    turnWeight: followBoth(made.wetWeight, outerWidth, (kg, across) => turnWeight(kg, across)),
    shelfLoad: followBoth(outerLength, outerWidth, (along, across) =>
      follow(made.weight, (kg) => shelfLoad(along, across, kg)),
    ),
    crew: followBoth(made.wetWeight, outerWidth, (kg, across) => crew(kg, settings.onePersonLimit, across)),
  };
};
