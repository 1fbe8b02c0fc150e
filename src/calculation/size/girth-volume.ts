import { finite, isFault, type Result } from '../result.ts';
import { girthChain } from './girth-chain.ts';

/**
 * Body volume of a measured long bone: Σ π·h/3·(r1² + r1·r2 + r2²), cone frusta of radius girth/2π between the stations.
 *
 * @param stations where the girths were taken, strictly rising, 2 or more; null is a blank cell [m]
 * @param girths tape round the bone there [m]; null is a blank cell
 * @returns volume [m³]
 * Limits: sections near to round: an oval section of 2:1 holds 16 % less than the circle of its girth. Source: geometry; volume of a cone
 * frustum, as in log scaling.
 * Example: stations 0 and 0.5 m, girths 0.3 m, 0.00358098622 m³.
 */
export const girthVolume = (
  stations: readonly (number | null)[],
  girths: readonly (number | null)[],
): Result<number> => {
  const chain = girthChain(stations, girths);
  if (isFault(chain)) return chain;
  let sum = 0;
  for (let i = 1; i < chain.radii.length; i++) {
    const r1 = chain.radii[i - 1]!;
    const r2 = chain.radii[i]!;
    sum += (chain.stations[i]! - chain.stations[i - 1]!) * (r1 * r1 + r1 * r2 + r2 * r2);
  }
  return finite((Math.PI / 3) * sum);
};
