import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Modelling clay for a pocket that stands in for padding: area × clay thickness × clay density.
 *
 * @param area area of the pocket [m²]
 * @param settings clay thickness, clay density
 * @returns mass of clay [kg]
 * Limits: area above 0. Source: geometry; thickness common practice, no source. Example: 0.01 m², 0.0555625 kg.
 */
export const clay = (area: number, settings: Settings): Result<number> =>
  isPositive(area) ? finite(area * settings.clayThickness * settings.clayDensity) : mustBePositive('area');
