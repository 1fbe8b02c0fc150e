import { finite, isFault, type Result } from '../result.ts';
import { type GirthChain, girthChain } from './girth-chain.ts';

/**
 * Surface of a chain of cone frusta with both end discs: Σ π(r1 + r2)·√(Δx² + Δr²) + π·r_first² + π·r_last².
 *
 * @param chain stations and radii [m]
 * @returns surface [m²]; may overflow
 * Limits: a checked chain. Source: geometry. Example: 0.5 m of a girth of 0.3 m, 0.1643239449 m².
 */
export const chainArea = ({ stations, radii }: GirthChain): number => {
  const last = radii.length - 1;
  let sum = radii[0]! ** 2 + radii[last]! ** 2;
  for (let i = 0; i < last; i++) {
    const slant = Math.hypot(stations[i + 1]! - stations[i]!, radii[i + 1]! - radii[i]!);
    sum += (radii[i]! + radii[i + 1]!) * slant;
  }
  return Math.PI * sum;
};

/**
 * Surface of a measured long bone: cone frusta of radius girth/2π between the stations, and both end discs.
 *
 * @param stations where the girths were taken, strictly rising, 2 or more; null is a blank cell [m]
 * @param girths tape round the bone there [m]; null is a blank cell
 * @returns surface [m²]; no relief factor, since the girths are measured
 * Limits: sections near to round. Source: geometry; lateral area of a cone frustum.
 * Example: stations 0 and 0.5 m, girths 0.3 m, 0.1643239449 m².
 */
export const girthArea = (stations: readonly (number | null)[], girths: readonly (number | null)[]): Result<number> => {
  const chain = girthChain(stations, girths);
  return isFault(chain) ? chain : finite(chainArea(chain));
};
