/**
 * Bending of the lower half across, when it is lifted by its flanges.
 *
 * Moment in the crown per length, weight·g0·span/(8·length), span = width + 2·padding; stress 6·moment/s².
 *
 * Limits: the weight is spread evenly, both flanges are held along their whole length, the arch is taken as a flat strip on two supports; no
 * help from its depth, which is on the safe side.
 * Source: beam theory, a strip on two supports.
 */

import { GRAVITY } from '../constants.ts';
import type { Settings } from '../settings.ts';
import { longerFirst } from '../size/longer-first.ts';

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param wall thickness of the shell [m]
 * @returns stress [Pa]
 */
export const acrossFlanges = (
  length: number,
  width: number,
  totalWeight: number,
  wall: number,
  settings: Settings,
): number => {
  const [along, across] = longerFirst(length, width, settings);
  const span = across + 2 * settings.paddingThickness;
  return (6 * totalWeight * GRAVITY * span) / (8 * along) / wall / wall;
};
