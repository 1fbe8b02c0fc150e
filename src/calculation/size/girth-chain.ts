import { isAtLeastZero, type Result, wrong } from '../result.ts';

/** A measured long bone as a chain of cone frusta. */
export interface GirthChain {
  /** Where a girth was taken, along the bone, rising [m]. */
  readonly stations: readonly number[];
  /** Radius of the circle that has the girth [m]. */
  readonly radii: readonly number[];
}

/** Fewest stations that make a piece. */
const LEAST_STATIONS = 2;

/** Radius of the circle of a girth: girth/2π [m]. */
export const girthRadius = (girth: number): number => girth / (2 * Math.PI);

/**
 * A chain of stations and girths, checked.
 *
 * @param stations where the girths were taken, strictly rising, 2 or more; null is a blank cell [m]
 * @param girths tape round the bone there, 0 or more, not both ends of a piece 0; null is a blank cell [m]
 * @returns stations and radii [m], or the fault that names the cell, counted from 1
 * Limits: sections near to round: of all sections with one girth the circle has the most area. Source: geometry.
 * Example: a girth of 0.3 m, a radius of 0.04775 m.
 */
export const girthChain = (
  stations: readonly (number | null)[],
  girths: readonly (number | null)[],
): Result<GirthChain> => {
  if (girths.length !== stations.length)
    return wrong('girths', `has ${girths.length} cells, stations has ${stations.length}; give each station one girth`);
  if (stations.length < LEAST_STATIONS) return wrong('stations', 'must have 2 cells or more');
  const places: number[] = [];
  const radii: number[] = [];
  for (let i = 0; i < stations.length; i++) {
    const place = stations[i] ?? null;
    const girth = girths[i] ?? null;
    if (place === null) return wrong('stations', `must have no blanks; cell ${i + 1} is blank`);
    if (girth === null) return wrong('girths', `must have no blanks; cell ${i + 1} is blank`);
    if (!(place > -Infinity && place < Infinity)) return wrong('stations', `must be numbers; cell ${i + 1} is not`);
    if (!isAtLeastZero(girth)) return wrong('girths', `must be 0 or more; cell ${i + 1} is not`);
    if (i > 0) {
      if (!(place > places[i - 1]!)) return wrong('stations', `must increase; cell ${i + 1} does not`);
      if (girth === 0 && girths[i - 1] === 0) return wrong('', `girths: cells ${i} and ${i + 1} are both 0`);
    }
    places.push(place);
    radii.push(girthRadius(girth));
  }
  return { stations: places, radii };
};
