import { lapFactor } from '../cloth/cloth.ts';
import { padding } from '../cloth/padding.ts';
import { sealer } from '../cloth/sealer.ts';
import { mixVolume } from '../mixing/mix-volume.ts';
import { mixes } from '../mixing/mixes.ts';
import { plaster } from '../mixing/plaster.ts';
import { water } from '../mixing/water.ts';
import { finite, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { layers } from '../shell/layers.ts';
import { seam } from '../shell/seam.ts';
import { shellAreaOver } from '../shell/shell-area.ts';
import { area } from '../size/area.ts';
import { bolts } from '../strength/bolts.ts';
import { weight } from '../weight/weight.ts';
import { wetWeight } from '../weight/wet-weight.ts';
import { follow, followBoth } from './follow.ts';
import { layerArea, patchArea, stripArea } from './layer-area.ts';
import type { Specimen } from './specimen.ts';

/** What a jacket is made of and what it weighs. SI. */
export interface Materials {
  /** Of the specimen [m²]. */
  readonly surfaceArea: Result<number>;
  readonly seam: Result<number>;
  readonly shellArea: Result<number>;
  /** Of the specimen, cover layers not included [1]. */
  readonly layers: Result<number>;
  /** Of the specimen and the cover layers: what the shell is thick of [1]. */
  readonly laid: Result<number>;
  /** All layers, strips and patches over the area of the shell [1]. */
  readonly meanLayers: Result<number>;
  readonly plaster: Result<number>;
  readonly water: Result<number>;
  readonly slurry: Result<number>;
  readonly mixes: Result<number>;
  readonly cloth: Result<number>;
  readonly paddingSheets: Result<number>;
  readonly sealer: Result<number>;
  /** Jacket and specimen, dry [kg]. */
  readonly weight: Result<number>;
  /** Jacket and specimen on the day it is made [kg]. */
  readonly wetWeight: Result<number>;
  readonly bolts: Result<number>;
}

/**
 * What one jacket is made of.
 *
 * Layers N = layers of the specimen + cover layers. Layer area = shell area·N + edge strips + foot and tip patches. Plaster, slurry, water,
 * mixes, cloth and weights use the layer area; finish coat and padding the shell area; the laps of the cloth shell area·N only.
 *
 * @param specimen sizes and weight; a surface of its own replaces the one worked out from the sizes
 * @param settings nearly all of them
 * @returns each quantity, or the fault that it has
 * Limits: those of the single calculations. Source: those of the single calculations.
 * Example: 0.6, 0.4, 0.3 m, 20 kg: 16.55436172 kg of plaster.
 */
export const materials = (specimen: Specimen, settings: Settings): Materials => {
  const { length, width, height, surface } = specimen;
  const surfaceArea = surface ?? area(length, width, height, settings);
  const edge = seam(length, width, settings);
  const shellArea = follow(surfaceArea, (s) => shellAreaOver(s, length, width, height, settings));
  const ofSpecimen = layers(specimen.weight, settings);
  const laid = follow(ofSpecimen, (n) => n + settings.coverLayers);
  const extra = follow(edge, (along) => finite(stripArea(along, settings) + patchArea(length, width, settings)));
  const allLayers = followBoth(shellArea, extra, (a, more) => follow(laid, (n) => layerArea(a, more, n)));
  const meanLayers = followBoth(allLayers, shellArea, (all, a) => finite(all / a));
  const dry = followBoth(shellArea, meanLayers, (a, n) => plaster(a, n, settings));
  const clothArea = followBoth(shellArea, extra, (a, more) =>
    follow(laid, (n) => finite(a * n * lapFactor(settings) + more)),
  );
  return {
    surfaceArea,
    seam: edge,
    shellArea,
    layers: ofSpecimen,
    laid,
    meanLayers,
    plaster: dry,
    water: follow(dry, (kg) => water(kg, settings)),
    slurry: follow(dry, (kg) => mixVolume(kg, settings)),
    mixes: followBoth(shellArea, meanLayers, (a, n) => mixes(a, n, settings)),
    cloth: follow(clothArea, (a) => finite((a * (1 + settings.waste)) / settings.rollWidth)),
    paddingSheets: follow(shellArea, (a) => padding(a, settings)),
    sealer: follow(shellArea, (a) => sealer(a, settings)),
    weight: followBoth(shellArea, meanLayers, (a, n) => weight(a, n, specimen.weight, settings)),
    wetWeight: followBoth(shellArea, meanLayers, (a, n) => wetWeight(a, n, specimen.weight, settings)),
    bolts: follow(edge, (m) => bolts(m, settings)),
  };
};
