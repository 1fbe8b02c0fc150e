import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { sizeFault } from './three-sizes.ts';

/** How much of its box a shape fills [1]. */
const FILLS = { ellipsoid: Math.PI / 6, box: 1, cylinder: Math.PI / 4 } as const;

/**
 * Body volume of a specimen from its three sizes.
 *
 * Ellipsoid, (4/3)π·abc with a, b, c the halved sizes; box, l·w·h; elliptic cylinder, (π/4)·l·w·h.
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param settings shape
 * @returns volume [m³]
 * Limits: sizes above 0. Source: geometry.
 * Example: 0.6, 0.4, 0.3 m as an ellipsoid, 0.0376991118 m³.
 */
export const volume = (length: number, width: number, height: number, settings: Settings): Result<number> =>
  sizeFault(length, width, height) ?? finite(FILLS[settings.shape] * length * width * height);
