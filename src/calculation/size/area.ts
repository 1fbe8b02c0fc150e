import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { ellipsePerimeter } from './ellipse.ts';
import { ellipsoidArea } from './ellipsoid-area.ts';
import { sizeFault } from './three-sizes.ts';

const smoothArea = (length: number, width: number, height: number, settings: Settings): number => {
  switch (settings.shape) {
    case 'box':
      return 2 * (length * width + width * height + height * length);
    case 'cylinder':
      return ellipsePerimeter(width / 2, height / 2) * length + (Math.PI / 2) * (width * height);
    default:
      return ellipsoidArea(length / 2, width / 2, height / 2);
  }
};

/**
 * Surface of a specimen from its three sizes.
 *
 * S = relief factor × surface of the shape: ellipsoid, 4π·RG(a²b², a²c², b²c²) with a, b, c the halved sizes; box, 2(lw + wh + hl);
 * elliptic cylinder with its axis along the length, P·l + 2·(π/4)·w·h.
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param settings shape, relief factor
 * @returns surface [m²], relief factor included
 * Limits: sizes above 0. The shape stands for the specimen; a real surface is commonly 15 % off, and more where it is deeply hollow.
 * Source: geometry; NIST Digital Library of Mathematical Functions 19.33.2 for the ellipsoid.
 * Example: 0.6, 0.4, 0.3 m as an ellipsoid, 0.5781205375 m².
 */
export const area = (length: number, width: number, height: number, settings: Settings): Result<number> =>
  sizeFault(length, width, height) ?? finite(settings.reliefFactor * smoothArea(length, width, height, settings));
