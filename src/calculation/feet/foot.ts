import type { Settings } from '../settings.ts';

/** Size of a foot under a jacket that has room for it [m]. Assumption. */
export const FOOT_SIZE = 0.1;

/** A foot is at most this part of the shorter of length and width: a third. Assumption. */
export const FEET_ACROSS = 3;

/** Patches that hold a foot are this many foot sizes wide [1]. Common practice, no source: 6 in on a foot of 4 in. */
export const PATCH_PER_FOOT = 1.5;

/**
 * Width and length of one foot: as set, else 10 cm, or a third of the shorter of length and width if that is less.
 *
 * @param settings foot size
 * @param length size along the long axis [m]
 * @param width size across it [m]
 * @returns foot size [m]
 * Limits: sizes above 0. Source: assumption. Example: a specimen 0.2 by 0.14 m, 0.0467 m.
 */
export const footSize = (settings: Settings, length: number, width: number): number =>
  settings.footSize ?? Math.min(FOOT_SIZE, Math.min(length, width) / FEET_ACROSS);

/** Height of a foot [m]: as set, else the foot size. Arguments as for `footSize`. Source: assumption. */
export const footHeight = (settings: Settings, length: number, width: number): number =>
  settings.footHeight ?? footSize(settings, length, width);

/** Size of a patch that holds a foot [m]: as set, else 1.5 × the foot size. Common practice, no source. */
export const footPatchSize = (settings: Settings, length: number, width: number): number =>
  settings.footPatchSize ?? PATCH_PER_FOOT * footSize(settings, length, width);

/** Size of a patch on the tip of a foot [m]: as set, else the foot size. Source: assumption. */
export const tipPatchSize = (settings: Settings, length: number, width: number): number =>
  settings.tipPatchSize ?? footSize(settings, length, width);
