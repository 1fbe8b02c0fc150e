import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Sheets of padding, as a fraction, since small jackets share one: area·(1 + waste)/(sheet length × sheet width).
 *
 * @param shellArea area of both halves with flanges, which the padding covers too [m²]
 * @param settings waste, padding sheet length, padding sheet width
 * @returns number of sheets [1], not rounded
 * Limits: area above 0. Source: geometry; the sheet is a trade size from memory. Example: 2.9 m², 0.9538.
 */
export const padding = (shellArea: number, settings: Settings): Result<number> =>
  isPositive(shellArea)
    ? finite(((shellArea / settings.paddingSheetLength) * (1 + settings.waste)) / settings.paddingSheetWidth)
    : mustBePositive('shell_area');
