import { type Crew, crew } from '../handling/crew.ts';
import type { Result } from '../result.ts';
import type { Padding, Settings } from '../settings.ts';
import { outerSize } from '../shell/outer-size.ts';
import { ribHeight } from '../strength/rib-height.ts';
import { safetyFactor } from '../strength/safety-factor.ts';
import { follow, followBoth } from './follow.ts';
import { type Materials, materials } from './materials.ts';
import type { Specimen } from './specimen.ts';
import { type Standing, standing } from './standing.ts';

/** The jacket of one specimen among many: what of a plan is worth a column. SI. */
export interface CollectionJacket
  extends Omit<Materials, 'surfaceArea' | 'seam' | 'laid' | 'meanLayers' | 'slurry' | 'paddingSheets'>,
    Pick<Standing, 'margin' | 'tipAngle'> {
  readonly padding: Padding;
  readonly feltSheets: Result<number>;
  readonly foamSheets: Result<number>;
  readonly safetyFactor: Result<number>;
  readonly ribHeight: Result<number>;
  readonly crew: Result<Crew>;
}

/**
 * The jacket of one specimen among many: as in `plan`, with the sheets of the padding that is not used at 0.
 *
 * @param specimen sizes, weight, and the surface if it is known
 * @param settings in force for this specimen, its padding among them
 * Limits and sources: those of the single calculations. Example: 0.6, 0.4, 0.3 m, 20 kg: 16.55436172 kg of plaster.
 */
export const collectionJacket = (specimen: Specimen, settings: Settings): CollectionJacket => {
  const { length, width, height } = specimen;
  const made = materials(specimen, settings);
  const stands = standing(specimen, made.laid, made.weight, settings);
  const { laid, weight, paddingSheets } = made;
  const outer = follow(laid, (n) => outerSize(length, width, height, n, settings));
  return {
    padding: settings.padding,
    layers: made.layers,
    shellArea: made.shellArea,
    plaster: made.plaster,
    water: made.water,
    mixes: made.mixes,
    cloth: made.cloth,
    feltSheets: settings.padding === 'felt' ? paddingSheets : 0,
    foamSheets: settings.padding === 'foam' ? paddingSheets : 0,
    sealer: made.sealer,
    bolts: made.bolts,
    weight,
    wetWeight: made.wetWeight,
    margin: stands.margin,
    tipAngle: stands.tipAngle,
    safetyFactor: followBoth(weight, laid, (kg, n) => safetyFactor(length, width, height, kg, n, settings)),
    ribHeight: followBoth(weight, laid, (kg, n) => ribHeight(length, width, height, kg, n, settings)),
    crew: followBoth(made.wetWeight, outer, (kg, [, across]) => crew(kg, settings.onePersonLimit, across)),
  };
};
