/** Factor under the first arctangent's root [1]. Stull 2011. */
export const STULL_SCALE = 0.151977;

/** Percent added under that root [%]. Stull 2011. */
export const STULL_SHIFT = 8.313659;

/** Percent taken off in the second arctangent of humidity [%]. Stull 2011. */
export const STULL_OFFSET = 1.676331;

/** Factor on the humidity to the power 1.5 [°C]. Stull 2011. */
export const STULL_POWER_FACTOR = 0.00391838;

/** Factor inside the last arctangent [1/%]. Stull 2011. */
export const STULL_LAST_SCALE = 0.023101;

/** Degrees taken off at the end [°C]. Stull 2011. */
export const STULL_CONSTANT = 4.686035;

/** Per cent in a fraction of 1. */
const PERCENT = 100;

/** Where the fit holds: temperature [°C] and relative humidity [fraction], at normal air pressure. Stull 2011. */
export const WET_BULB_LIMITS = {
  temperature: { from: -20, to: 50 },
  humidity: { from: 0.05, to: 0.99 },
} as const;

/**
 * Temperature that a wet surface settles at in moving air.
 *
 * Twb = T·atan(0.151977·√(h + 8.313659)) + atan(T + h) − atan(h − 1.676331) + 0.00391838·h^1.5·atan(0.023101·h) − 4.686035,
 * h the relative humidity in per cent.
 *
 * @param temperature of the air [°C]
 * @param humidity relative humidity [fraction]
 * @returns wet-bulb temperature [°C], 1.0 too low to 0.65 too high
 * Limits: −20 to 50 °C, 5 to 99 %, 101.325 kPa; not cold and very dry at once. The fit takes humidity as a ratio of moistures; from 35 °C up,
 * where that differs from the ratio of pressures on a hygrometer, it is up to 1.1 °C too high.
 * Source: R. Stull, Wet-bulb temperature from relative humidity and air temperature, J. Appl. Meteorol. Climatol. 50 (2011) 2267.
 * Example: 20 °C at 50 %, 13.7 °C.
 */
export const wetBulb = (temperature: number, humidity: number): number => {
  const percent = humidity * PERCENT;
  return (
    temperature * Math.atan(STULL_SCALE * Math.sqrt(percent + STULL_SHIFT)) +
    Math.atan(temperature + percent) -
    Math.atan(percent - STULL_OFFSET) +
    STULL_POWER_FACTOR * percent ** 1.5 * Math.atan(STULL_LAST_SCALE * percent) -
    STULL_CONSTANT
  );
};
