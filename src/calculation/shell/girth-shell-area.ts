import { finite, isFault, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { chainArea } from '../size/girth-area.ts';
import { type GirthChain, girthChain } from '../size/girth-chain.ts';
import { flangeArea } from './flange-area.ts';

/** The chain outside the padding: every radius, and both ends, farther out by the padding thickness t. */
const padded = ({ stations, radii }: GirthChain, t: number): GirthChain => ({
  stations: stations.map((x, i) => (i === 0 ? x - t : i === stations.length - 1 ? x + t : x)),
  radii: radii.map((r) => r + t),
});

/** Seam of a chain that is split lengthwise: 2Σ√(Δx² + Δr²) + 2r_first + 2r_last [m]. */
const chainSeam = ({ stations, radii }: GirthChain): number => {
  const last = radii.length - 1;
  let half = radii[0]! + radii[last]!;
  for (let i = 0; i < last; i++) half += Math.hypot(stations[i + 1]! - stations[i]!, radii[i + 1]! - radii[i]!);
  return 2 * half;
};

/**
 * Area of both halves of a shell for a measured long bone, outside the padding, with flanges.
 *
 * Girths + 2πt, first station − t, last station + t, then the surface of the chain + 2(P·f + πf²), with the seam
 * P = 2Σ√(Δx² + Δr²) + 2r_first + 2r_last of the padded chain.
 *
 * @param stations where the girths were taken, strictly rising, 2 or more; null is a blank cell [m]
 * @param girths tape round the bone there [m]; null is a blank cell
 * @param settings padding thickness, flange
 * @returns area [m²]
 * Limits: sections near to round. Source: geometry; lateral area of a cone frustum.
 * Example: stations 0 and 0.5 m, girths 0.3 m, 0.3325396759 m².
 */
export const girthShellArea = (
  stations: readonly (number | null)[],
  girths: readonly (number | null)[],
  settings: Settings,
): Result<number> => {
  const bare = girthChain(stations, girths);
  if (isFault(bare)) return bare;
  const chain = padded(bare, settings.paddingThickness);
  return finite(chainArea(chain) + flangeArea(chainSeam(chain), settings.flange));
};
