import { COMBINED_WATER, DIHYDRATE_PER_HEMIHYDRATE } from '../constants.ts';
import { plasterOfLayer } from '../mixing/plaster-of-layer.ts';
import { slurryVolume } from '../mixing/slurry.ts';
import type { Settings } from '../settings.ts';

/**
 * Dry plaster that stays in a square metre of shell: (layers·(t − m/ρg) + finish coat)·calibration/V. No waste: that is not in the shell.
 *
 * @param layers layers of cloth and plaster [1]
 * @param settings layer thickness, cloth weight, glass density, finish coat, water ratio, calibration
 * @returns areal mass of dry plaster [kg/m²]
 * Limits: layers above 0. Source: absolute volumes. Example: 8 layers, 16.63 kg/m².
 */
export const plasterInShell = (layers: number, settings: Settings): number =>
  ((layers * plasterOfLayer(settings) + settings.finishCoat) * settings.calibration) /
  slurryVolume(settings.waterRatio);

/** Cloth and padding in a square metre of shell [kg/m²]: layers·m + padding thickness × padding density. */
const clothAndPadding = (layers: number, settings: Settings): number =>
  layers * settings.clothWeight + settings.paddingThickness * settings.paddingDensity;

/** A square metre of dry shell with its padding [kg/m²]: every kg of plaster has become 1.18618 kg of dihydrate. */
export const dryArealMass = (layers: number, settings: Settings): number =>
  plasterInShell(layers, settings) * DIHYDRATE_PER_HEMIHYDRATE + clothAndPadding(layers, settings);

/** A square metre of shell with its padding on the day it is made [kg/m²]: all mixing water is still in it. */
export const wetArealMass = (layers: number, settings: Settings): number =>
  plasterInShell(layers, settings) * (1 + settings.waterRatio) + clothAndPadding(layers, settings);

/** Water in a square metre of shell that setting did not bind, and that has to dry out [kg/m²]. */
export const freeWater = (layers: number, settings: Settings): number =>
  plasterInShell(layers, settings) * (settings.waterRatio - COMBINED_WATER);
