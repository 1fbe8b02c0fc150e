import type { Settings } from '../settings.ts';

/**
 * Plaster part of the thickness of one layer: what the glass of its cloth does not fill, t − m/ρg.
 *
 * @param settings layer thickness t [m], cloth weight m [kg/m²], glass density ρg [kg/m³]
 * @returns thickness [m]; above 0, since settings with a layer thinner than its glass are refused
 * Limits: no air in the layer. Source: volumes add up. Example: 1.5 mm with 203 g/m² of glass, 1.42 mm.
 */
export const plasterOfLayer = (settings: Settings): number =>
  settings.layerThickness - settings.clothWeight / settings.glassDensity;
