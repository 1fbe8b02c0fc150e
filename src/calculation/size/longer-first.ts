import type { Settings } from '../settings.ts';

/**
 * Length and width with the longer of the two as the length, as in every function that has both.
 *
 * A cylinder keeps what was given: its axis lies along the length, however short it is.
 *
 * @param length size along the long axis [m]
 * @param width size across it [m]
 * @param settings shape
 * @returns length and width [m]
 * Limits: none. Source: convention of this product. Example: 40 and 60 become 60 and 40.
 */
export const longerFirst = (
  length: number,
  width: number,
  settings: Settings,
): readonly [length: number, width: number] =>
  width > length && settings.shape !== 'cylinder' ? [width, length] : [length, width];
