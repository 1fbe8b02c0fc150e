import { ABSOLUTE_ZERO, BETA_FROM, COMBINED_WATER, DIHYDRATE_PER_HEMIHYDRATE } from '../constants.ts';
import { finite, type Result, wrong } from '../result.ts';
import type { Settings } from '../settings.ts';

/** Heat of setting of beta hemihydrate, the plaster of high water ratios [kJ/kg]. Wagman et al. 1982, NBS tables: 19.235 kJ/mol. */
export const BETA_HEAT = 133;

/** Heat of setting of alpha hemihydrate, the plaster of low water ratios [kJ/kg]. Wagman et al. 1982, NBS tables: 17.145 kJ/mol. */
export const ALPHA_HEAT = 118;

/** Specific heat of dihydrate [kJ/(kg·K)]. Thermodynamic database: 186.20 J/(mol·K). */
export const DIHYDRATE_HEAT_CAPACITY = 1.0815;

/** Specific heat of water near 20 °C [kJ/(kg·K)]. Handbook value. */
export const WATER_HEAT_CAPACITY = 4.184;

/**
 * Highest temperature that a thick mix can reach.
 *
 * T = start + q/(1.18618·1.0815 + (r − 0.18618)·4.184): all heat of setting stays in the dihydrate and the free water.
 *
 * @param temperature temperature of plaster and water when they are mixed [°C]
 * @param settings water ratio; the heat is that of beta hemihydrate from a ratio of 0.5 up, of alpha below
 * @returns temperature [°C], an upper bound: thin layers stay far cooler
 * Limits: start between 0 and 100 °C for the figure to mean anything. Source: thermochemistry of the reaction (Wagman et al. 1982).
 * Example: gypsum cement from 20 °C, 76.35695598 °C.
 */
export const mixTemperature = (temperature: number, settings: Settings): Result<number> => {
  if (!(temperature > ABSOLUTE_ZERO && temperature < Infinity))
    return wrong('temperature', 'must be a temperature that plaster and water can have');
  const r = settings.waterRatio;
  const heat = r >= BETA_FROM ? BETA_HEAT : ALPHA_HEAT;
  const capacity = DIHYDRATE_PER_HEMIHYDRATE * DIHYDRATE_HEAT_CAPACITY + (r - COMBINED_WATER) * WATER_HEAT_CAPACITY;
  return finite(temperature + heat / capacity);
};
