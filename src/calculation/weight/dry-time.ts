import { finite, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { freeWater } from './areal-mass.ts';
import { evaporation } from './evaporation.ts';
import { wetBulb } from './wet-bulb.ts';

/** Least drying before sealing [h]. Common practice, no source. */
export const LEAST_DRYING = 24;

/** Seconds in an hour. Definition. */
export const SECONDS_PER_HOUR = 3600;

/**
 * Time before which a shell is not dry.
 *
 * Free water per area ÷ evaporation from one face at the wet-bulb temperature, and at least 24 h.
 *
 * @param layers layers of cloth and plaster [1]
 * @param settings as for `weight`, and room temperature, room humidity, air speed
 * @returns time [h]
 * Limits: layers above 0; constant rate, one open face. The last tenth dries slower, so that twice as long is likely: the shell is dry when
 * two weighings a day apart agree.
 * Source: Carrier's correlation (ASHRAE); saturation by Wagner and Pruß 1993; wet bulb by Stull 2011.
 * Example: 8 layers, 57.31283256 h.
 */
export const dryTime = (layers: number, settings: Settings): Result<number> => {
  if (!isPositive(layers)) return mustBePositive('layers');
  const { roomTemperature, roomHumidity, airSpeed } = settings;
  const rate = evaporation(wetBulb(roomTemperature, roomHumidity), roomTemperature, roomHumidity, airSpeed);
  if (!(rate > 0)) return noAnswer('nothing dries in air this damp; lower the room humidity or warm the room');
  return finite(Math.max(LEAST_DRYING, freeWater(layers, settings) / rate / SECONDS_PER_HOUR));
};
