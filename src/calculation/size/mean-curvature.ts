import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { carlsonRG } from './carlson.ts';
import { ellipsePerimeter } from './ellipse.ts';
import { sizeFault } from './three-sizes.ts';

/** abc·S(1/a, 1/b, 1/c), written as 4π·a·RG(1, (b/a)², (c/a)²), a the longest: no product of extreme sizes is left in it. */
const ellipsoidCurvature = (a: number, b: number, c: number): number => {
  const long = Math.max(a, b, c);
  const [u, v, w] = [a / long, b / long, c / long];
  return 4 * Math.PI * long * carlsonRG(u * u, v * v, w * w);
};

/**
 * Integral of the mean curvature over the surface of a shape: how fast its surface grows with the thickness of a coat.
 *
 * The surface at the distance t outside is S + 2Mt + 4πt². Box, M = π(l + w + h); cylinder of base perimeter P and length l,
 * M = πl + (π/2)P; ellipsoid, M = abc·S(1/a, 1/b, 1/c) with a, b, c the halved sizes and S the surface of an ellipsoid.
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param settings shape
 * @returns M [m]
 * Limits: sizes above 0; a convex shape. No relief factor: a coat bridges the hollows.
 * Source: Steiner's formula; R. Schneider, Convex Bodies: The Brunn–Minkowski Theory; L. A. Santaló, Integral Geometry, 1976.
 * Example: a ball of 0.2 m, 4π·0.1 m.
 */
export const meanCurvature = (length: number, width: number, height: number, settings: Settings): Result<number> => {
  const fault = sizeFault(length, width, height);
  if (fault) return fault;
  switch (settings.shape) {
    case 'box':
      return finite(Math.PI * (length + width + height));
    case 'cylinder':
      return finite(Math.PI * length + (Math.PI / 2) * ellipsePerimeter(width / 2, height / 2));
    default:
      return finite(ellipsoidCurvature(length / 2, width / 2, height / 2));
  }
};
