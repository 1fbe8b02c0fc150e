/**
 * Stress that the shell may take: its flexural strength, times the wet strength factor when it is wet.
 *
 * Limits: the published minimum yield is for glass-reinforced gypsum made in a factory; test your own laminate.
 * Source: published minimum (ASTM C947); wet: Gypsum & Lime 13 (1954).
 * Example: 8.27 MPa dry, 4.14 MPa wet.
 */

import type { Settings } from '../settings.ts';

/** @returns stress [Pa] */
export const allowedStress = (settings: Settings): number =>
  settings.condition === 'wet' ? settings.flexuralStrength * settings.wetStrengthFactor : settings.flexuralStrength;
