import { ALPHA_DENSITY, BETA_DENSITY, BETA_FROM, DIHYDRATE_PER_HEMIHYDRATE, WATER_DENSITY } from '../constants.ts';

/**
 * Slurry volume of one kilogram of dry plaster by absolute volumes: V(r) = 1/ρh + r/ρw.
 *
 * @param ratio water ratio [kg/kg]
 * @returns volume [m³/kg]
 */
export const slurryVolume = (ratio: number): number =>
  1 / (ratio >= BETA_FROM ? BETA_DENSITY : ALPHA_DENSITY) + ratio / WATER_DENSITY;

/** Density of the fresh slurry, (1 + r)/V(r) [kg/m³]. */
export const wetDensity = (ratio: number): number => (1 + ratio) / slurryVolume(ratio);

/** Density of the set and dried cast, which keeps the volume of its slurry: 1.18618/V(r) [kg/m³]. */
export const dryDensity = (ratio: number): number => DIHYDRATE_PER_HEMIHYDRATE / slurryVolume(ratio);
