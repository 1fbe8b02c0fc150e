import { saturationPressure } from './saturation-pressure.ts';

/** Evaporation in still air per kPa, times the heat of evaporation [kW/(m²·kPa)]. Carrier's correlation, ASHRAE. */
export const STILL_AIR = 0.089;

/** What each m/s of air adds to it [kW/(m²·kPa) per m/s]. Carrier's correlation, ASHRAE. */
export const MOVING_AIR = 0.0782;

/** Heat of evaporation of water at 0 °C [kJ/kg]. Handbook value. */
export const EVAPORATION_HEAT = 2501;

/** How much less that is for each degree [kJ/(kg·K)]. Handbook value. */
export const EVAPORATION_HEAT_SLOPE = 2.381;

/** Heat of evaporation of water, 2501 − 2.381·T [kJ/kg], T in °C from 0 to 50. */
export const evaporationHeat = (temperature: number): number => EVAPORATION_HEAT - EVAPORATION_HEAT_SLOPE * temperature;

/**
 * Water that evaporates from a wet surface.
 *
 * E = (p(Ts) − φ·p(T))·(0.089 + 0.0782·v)/(2501 − 2.381·Ts), pressures in kPa.
 *
 * @param surface temperature of the surface Ts [°C]
 * @param temperature of the room T [°C]
 * @param humidity relative humidity of the room φ [fraction]
 * @param airSpeed over the surface v [m/s]
 * @returns evaporation [kg/(m²·s)]; 0 or below where the air takes nothing up
 * Limits: air along the surface; other published correlations differ by about 20 %.
 * Source: Carrier's correlation, as in the ASHRAE handbooks.
 * Example: a surface of 20 °C in a room of 20 °C at 50 % and 0.1 m/s, 0.166 kg/m² an hour.
 */
export const evaporation = (surface: number, temperature: number, humidity: number, airSpeed: number): number =>
  ((saturationPressure(surface) - humidity * saturationPressure(temperature)) * (STILL_AIR + MOVING_AIR * airSpeed)) /
  evaporationHeat(surface);
