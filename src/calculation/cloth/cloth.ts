import { finite, isPositive, mustBePositive, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';

/**
 * How much more cloth than area laps take: (piece/(piece − lap))², for square pieces that lap on two sides.
 *
 * @param settings piece size [m], lap [m], below the piece size
 * @returns factor [1], at least 1
 * Limits: none. Source: geometry. Example: pieces of 42 cm that lap by 5 cm, 1.289.
 */
export const lapFactor = (settings: Settings): number =>
  (settings.pieceSize / (settings.pieceSize - settings.lap)) ** 2;

/**
 * Running length of cloth off the roll: area·layers·(piece/(piece − lap))²·(1 + waste)/roll width.
 *
 * @param shellArea area of both halves with flanges [m²]
 * @param layers layers of cloth and plaster [1]
 * @param settings piece size, lap, waste, roll width
 * @returns length on the roll [m]
 * Limits: area and layers above 0. Source: geometry; the lap and the waste are assumptions. Example: 1 m² in 8 layers, 8.92840915 m.
 */
export const cloth = (shellArea: number, layers: number, settings: Settings): Result<number> => {
  if (!isPositive(shellArea)) return mustBePositive('shell_area');
  if (!isPositive(layers)) return mustBePositive('layers');
  return finite((shellArea * layers * lapFactor(settings) * (1 + settings.waste)) / settings.rollWidth);
};
