/**
 * The three ways in which the lower half can fail: stress, allowed stress and their ratio.
 *
 * Along its length on its feet, across when lifted by the flanges, over one foot.
 *
 * Limits: an estimate for planning: static, no impact, no creep, sound laminate. Weight is what the half carries with itself. See `limits`.
 * Source: beam theory; Roark's Formulas for Stress and Strain, 7th edition; E. Reissner 1946. Allowed stress: published minimum flexural yield.
 * Example: 120 × 40 × 30 cm, 50 kg, 8 layers: factors 179.6, 11.06 and 9.59.
 */

import { footSize } from '../feet/foot.ts';
import type { Limit } from '../limits.ts';
import { Fault, isFault, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { thickness } from '../shell/thickness.ts';
import { longerFirst } from '../size/longer-first.ts';
import { sizeFault } from '../size/three-sizes.ts';
import { acrossFlanges } from './across-flanges.ts';
import { allowedStress } from './allowed-stress.ts';
import { alongLength } from './along-length.ts';
import { crownRadius, footRadius, overFoot } from './over-foot.ts';

/** The ways, in the words of the table. */
export const WAYS = ['along its length, on its feet', 'across, lifted by the flanges', 'over one foot'] as const;

export interface Way {
  readonly way: (typeof WAYS)[number];
  /** [Pa] */
  readonly stress: number;
  /** [Pa] */
  readonly allowed: number;
  /** Allowed over stress [1]. */
  readonly factor: number;
}

/** The fault of the first argument of a lower half that cannot be used, if there is one. */
export const halfFault = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  layers: number,
): Fault | undefined => {
  const fault = sizeFault(length, width, height);
  if (fault) return fault;
  if (!isPositive(totalWeight)) return mustBePositive('total_weight');
  if (!isPositive(layers)) return mustBePositive('layers');
  return undefined;
};

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param height of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param layers of cloth and plaster [1]
 * @returns the three ways, always in the same order
 */
export const strength = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  layers: number,
  settings: Settings,
): Result<readonly [Way, Way, Way]> => {
  const fault = halfFault(length, width, height, totalWeight, layers);
  if (fault) return fault;
  const wall = thickness(layers, settings);
  if (isFault(wall)) return wall;
  const along = alongLength(length, width, height, totalWeight, wall, settings);
  if (isFault(along)) return along;
  const across = acrossFlanges(length, width, totalWeight, wall, settings);
  const foot = overFoot(length, width, height, totalWeight, wall, settings);
  const allowed = allowedStress(settings);
  const row = (at: 0 | 1 | 2, stress: number): Way => ({ way: WAYS[at], stress, allowed, factor: allowed / stress });
  const ways = [row(0, along), row(1, across), row(2, foot)] as const;
  const areNumbers = ways.every((one) => one.factor < Infinity && one.stress < Infinity);
  return areNumbers ? ways : new Fault('overflow', '', 'the result is too large to be a number');
};

/** Wall over the smallest radius of the arc, up to which it counts as thin [1]. Usual bound of thin-shell theory, from memory: 1/10. */
export const THIN_WALL = 0.1;

/** Load's circle over the radius of the shell, up to which the cap under it is shallow [1]: its rise is an eighth of its width. Usual bound, from memory. */
export const SHALLOW_CAP = 0.5;

/** Width over height of a box up to which its rounded section is on the safe side [1]. Compared with the section of a box in the test of `section`. */
export const FLATTEST_BOX = 2.5;

type Input = Parameters<typeof strength>;

const wallOf = ([, , , , layers, settings]: Input): number => layers * settings.layerThickness + settings.finishCoat;
const radiusOf = ([length, width, , , , settings]: Input): number => footRadius(footSize(settings, length, width));

export const limits: readonly Limit<Input>[] = [
  {
    text: 'a thin shell: the wall at most a tenth of half the width and half the height',
    holds: (...input) => {
      const [length, width, height, , , settings] = input;
      const [, across] = longerFirst(length, width, settings);
      return wallOf(input) <= THIN_WALL * (Math.min(across, height) / 2 + settings.paddingThickness);
    },
  },
  {
    text: 'feet at least about as wide as the wall is thick; under a smaller foot the stress is not that of a plate',
    holds: (...input) => radiusOf(input) >= wallOf(input) / 2,
  },
  {
    text: 'a foot small against the curve of the shell: its circle at most half of the radius of the crown',
    holds: (...input) =>
      input[5].shape === 'box' || radiusOf(input) <= SHALLOW_CAP * crownRadius(input[0], input[1], input[2]),
  },
  {
    text: 'a box at most 2.5 times as wide as high; a flatter one bends more along its length than is said here',
    holds: (length, width, height, _weight, _layers, settings) => {
      const [, across] = longerFirst(length, width, settings);
      return settings.shape !== 'box' || across <= FLATTEST_BOX * height;
    },
  },
  {
    text: 'at least as long as wide and high, so that it bends like a beam',
    holds: (length, width, height, _weight, _layers, settings) => {
      const [along, across] = longerFirst(length, width, settings);
      return along >= across && along >= height;
    },
  },
];
