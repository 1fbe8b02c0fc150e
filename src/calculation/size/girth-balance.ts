import { finite, isFault, type Result } from '../result.ts';
import { girthChain } from './girth-chain.ts';

/**
 * Balance point of a measured long bone, from its first station.
 *
 * Centroids of the cone frusta weighted by their volumes; that of one frustum lies h/4·(r1² + 2r1·r2 + 3r2²)/(r1² + r1·r2 + r2²) from its
 * end of radius r1.
 *
 * @param stations where the girths were taken, strictly rising, 2 or more; null is a blank cell [m]
 * @param girths tape round the bone there [m]; null is a blank cell
 * @returns distance from the first station [m]
 * Limits: the same density all along; sections near to round. Source: geometry; centroid of a cone frustum.
 * Example: a cone 0.3 m long from its tip, 0.225 m.
 */
export const girthBalance = (
  stations: readonly (number | null)[],
  girths: readonly (number | null)[],
): Result<number> => {
  const chain = girthChain(stations, girths);
  if (isFault(chain)) return chain;
  const places = chain.stations;
  // In shares of the whole length and of the largest radius, so that no product of extreme sizes overflows.
  const first = places[0]!;
  const span = places[places.length - 1]! - first;
  const largest = Math.max(...chain.radii);
  let volume = 0;
  let moment = 0;
  for (let i = 1; i < places.length; i++) {
    const start = (places[i - 1]! - first) / span;
    const h = (places[i]! - places[i - 1]!) / span;
    const r1 = chain.radii[i - 1]! / largest;
    const r2 = chain.radii[i]! / largest;
    const piece = h * (r1 * r1 + r1 * r2 + r2 * r2);
    volume += piece;
    moment += start * piece + ((h * h) / 4) * (r1 * r1 + 2 * r1 * r2 + 3 * r2 * r2);
  }
  return finite((span * moment) / volume);
};
