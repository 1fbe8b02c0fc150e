/** Which of the two sizes seen from above lies along the jacket. */

import type { Settings } from '../settings.ts';

/**
 * The longer of length and width is the length; a cylinder keeps its own, since its axis lies along it.
 *
 * @returns size along and size across [m]
 */
export const planSizes = (length: number, width: number, settings: Settings): readonly [number, number] =>
  settings.shape === 'cylinder' || length >= width ? [length, width] : [width, length];
