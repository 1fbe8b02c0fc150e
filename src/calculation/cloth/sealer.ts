import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * Sealing solution for the outside: area × sealer coats ÷ sealer coverage × (1 + waste).
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param settings sealer coats, sealer coverage, waste
 * @returns volume of solution [m³]
 * Limits: area above 0; the shell is dry. Source: arithmetic; the coverage is an assumption. Example: 1 m² in one coat, 0.1375 L.
 */
export const sealer = (shellArea: number, settings: Settings): Result<number> =>
  isPositive(shellArea)
    ? finite(((shellArea * settings.sealerCoats) / settings.sealerCoverage) * (1 + settings.waste))
    : mustBePositive('shell_area');
