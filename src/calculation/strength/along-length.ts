/**
 * Bending of the lower half along its length, on its feet.
 *
 * Moment as `bending`, inset 0.2·length if long and heavy, else half a foot size; stress M·c/I of the section.
 *
 * Limits: as for bending and section. Between thick short jackets and long ones the feet stand elsewhere than at the inset; the moment is that of the
 * feet at the ends, which is on the safe side.
 * Source: beam theory.
 */

import { FEET_MOVED_IN } from '../feet/feet.ts';
import { footSize } from '../feet/foot.ts';
import { longHeavy } from '../feet/long-heavy.ts';
import { amount, isFault, type Result, wrong } from '../result.ts';
import type { Settings } from '../settings.ts';
import { longerFirst } from '../size/longer-first.ts';
import { bending } from './bending.ts';
import { modulus, type Section, section } from './section.ts';

/** Supports of a long and heavy jacket, from its ends [share of the length]: where its feet are. */
export const INSET_MOVED_IN = 0.5 - FEET_MOVED_IN;

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @returns moment [N·m]
 */
export const moment = (length: number, width: number, totalWeight: number, settings: Settings): Result<number> => {
  const [along, across] = longerFirst(length, width, settings);
  if (longHeavy(along, across, totalWeight, settings)) return bending(along, totalWeight, INSET_MOVED_IN * along);
  const foot = footSize(settings, length, width);
  if (!(foot < along))
    return wrong('foot size', 'must be below the length of {length}, not {foot}', {
      length: amount(along, 'length'),
      foot: amount(foot, 'length'),
    });
  return bending(along, totalWeight, foot / 2);
};

/** Section of the lower half [m]. */
export const halfSection = (
  length: number,
  width: number,
  height: number,
  wall: number,
  settings: Settings,
): Section => {
  const [, across] = longerFirst(length, width, settings);
  return section(across, height, wall, settings.paddingThickness, settings.flange);
};

/**
 * @param wall thickness of the shell [m]
 * @returns stress [Pa]
 */
export const alongLength = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  wall: number,
  settings: Settings,
): Result<number> => {
  const most = moment(length, width, totalWeight, settings);
  return isFault(most) ? most : most / modulus(halfSection(length, width, height, wall, settings));
};
