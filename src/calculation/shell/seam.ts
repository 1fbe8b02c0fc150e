import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { ellipsePerimeter } from '../size/ellipse.ts';

/**
 * Length of the seam between the two halves, round the outside of the padding.
 *
 * P = perimeter of the outline seen from above + 2πt, t the padding thickness: an ellipse for an ellipsoid, else 2(length + width).
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param settings shape, padding thickness
 * @returns seam [m]
 * Limits: sizes above 0; the halves meet along the outline, without steps.
 * Source: geometry; perimeter of a parallel curve, Steiner.
 * Example: 0.6 and 0.4 m under felt, 1.626442186 m.
 */
export const seam = (length: number, width: number, settings: Settings): Result<number> => {
  if (!isPositive(length)) return mustBePositive('length');
  if (!isPositive(width)) return mustBePositive('width');
  const outline = settings.shape === 'ellipsoid' ? ellipsePerimeter(length / 2, width / 2) : 2 * (length + width);
  return finite(outline + 2 * Math.PI * settings.paddingThickness);
};
