/**
 * Stress in the lower half over one foot that carries half of the weight.
 *
 * Load on a circle of radius foot size/√π. The smaller of two stresses, since a curved shell is stiffer than a flat plate and a small plate stiffer than a wide
 * one: the flat plate length × width, and the shallow shell of radius length·width/(2·height). A box has no shell.
 *
 * Limits: the foot in the middle of the plate or of the crown; foot patches are not counted, which is on the safe side; as for plate and shell.
 * Source: Roark's Formulas for Stress and Strain, 7th edition, Table 11.4 case 1b; E. Reissner 1946 (from memory).
 */

import { GRAVITY } from '../constants.ts';
import { footSize } from '../feet/foot.ts';
import type { Settings } from '../settings.ts';
import { plate } from './plate.ts';
import { shellPoint } from './shell-point.ts';

/** Share of the weight on one foot, when a jacket is set down on it first [1]. Assumption. */
export const SHARE_ON_ONE_FOOT = 0.5;

/** Radius of a circle as large as a square foot [m]. */
export const footRadius = (size: number): number => size / Math.sqrt(Math.PI);

/** Radius of the shell in its crown [m], a·b/c of its semi-axes: half of length·width over height. */
export const crownRadius = (length: number, width: number, height: number): number => (length * width) / (2 * height);

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param height of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param wall thickness of the shell [m]
 * @returns stress [Pa]
 */
export const overFoot = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  wall: number,
  settings: Settings,
): number => {
  const force = SHARE_ON_ONE_FOOT * totalWeight * GRAVITY;
  const radius = footRadius(footSize(settings, length, width));
  const flat = plate(force, radius, wall, length, width);
  if (settings.shape === 'box') return flat;
  return Math.min(flat, shellPoint(force, radius, wall, crownRadius(length, width, height)));
};
