import { finite, isFault, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { area } from '../size/area.ts';
import { meanCurvature } from '../size/mean-curvature.ts';
import { flangeArea } from './flange-area.ts';
import { seam } from './seam.ts';

/**
 * Area of both halves of a shell over a surface that is known, with flanges.
 *
 * As `shellArea`, with the surface given instead of worked out from the sizes: measured, or moved to an end of its plausible range.
 *
 * @param surface surface of the specimen S [m²]
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param settings shape, padding thickness, flange
 * @returns area [m²], outside the padding
 * Limits: surface and sizes above 0. Source: Steiner's formula.
 * Example: 0.5781205375 m² on 0.6, 0.4, 0.3 m, 0.7923952088 m².
 */
export const shellAreaOver = (
  surface: number,
  length: number,
  width: number,
  height: number,
  settings: Settings,
): Result<number> => {
  if (!isPositive(surface)) return mustBePositive('surface_area');
  const curvature = meanCurvature(length, width, height, settings);
  if (isFault(curvature)) return curvature;
  const edge = seam(length, width, settings);
  if (isFault(edge)) return edge;
  const t = settings.paddingThickness;
  return finite(surface + 2 * curvature * t + 4 * Math.PI * t * t + flangeArea(edge, settings.flange));
};

/**
 * Area of both halves of a shell, outside the padding, with flanges.
 *
 * A = S + 2Mt + 4πt² + 2(P·f + πf²): surface S with its relief factor, integral of the mean curvature M, padding thickness t, seam P,
 * flange f.
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param settings shape, relief factor, padding thickness, flange
 * @returns area [m²]
 * Limits: sizes above 0; exact for the shape itself, an estimate for a specimen.
 * Source: Steiner's formula; R. Schneider, Convex Bodies: The Brunn–Minkowski Theory.
 * Example: 0.6, 0.4, 0.3 m under felt, 0.7923952088 m².
 */
export const shellArea = (length: number, width: number, height: number, settings: Settings): Result<number> => {
  const surface = area(length, width, height, settings);
  return isFault(surface) ? surface : shellAreaOver(surface, length, width, height, settings);
};
