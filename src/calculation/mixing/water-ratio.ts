import { type Result, wrong } from '../result.ts';
import { type Plaster, WATER_RATIO } from '../settings.ts';

const isPlaster = (name: string): name is Plaster => Object.hasOwn(WATER_RATIO, name);

/**
 * Usual water ratio of a kind of plaster: mass of water per mass of dry plaster.
 *
 * @param kind casting plaster, gypsum cement or dental stone, in any letter case
 * @returns water ratio [kg/kg]
 * Limits: the maker's data sheet comes first; makers differ by some 10 %.
 * Source: published tables of consistency (parts of water to 100 parts of plaster, by mass): 70, 38, 30.
 * Example: gypsum cement, 0.38.
 */
export const waterRatio = (kind: string): Result<number> => {
  const name = kind.trim().toLowerCase();
  return isPlaster(name)
    ? WATER_RATIO[name]
    : wrong('plaster_kind', 'must be casting plaster, gypsum cement or dental stone');
};
