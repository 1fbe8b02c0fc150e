/**
 * How high a rib under the crown must be, so that the half does not bend too much along its length.
 *
 * 0, or the least height of the foam core in steps of 0.5 cm that brings M·c/I to the allowed stress over the target safety factor. The rib: two webs h × t
 * down from the crown, a cap rib width × t under them, t = rib layers × layer thickness.
 *
 * Limits: the crown is taken as flat, the foam carries nothing; it looks at bending along the length only. A taller rib may be weaker again,
 * since its tip is farther out: the answer is the least height, not the best.
 * Source: beam theory.
 * Example: 300 × 30 × 15 cm, 350 kg, 5 layers, wet: 8 cm.
 */

import { footHeight } from '../feet/foot.ts';
import { amount, isFault, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { thickness } from '../shell/thickness.ts';
import { allowedStress } from './allowed-stress.ts';
import { halfSection, moment } from './along-length.ts';
import { modulus, type Section } from './section.ts';
import { halfFault } from './strength.ts';

export { limits } from './strength.ts';

/** Heights to try [m]: this step, this many of them, 30 cm. Convention of RIB_HEIGHT. */
export const RIB_STEP = 0.005;
export const RIB_STEPS = 60;

/** Relative slack, so that a factor just at the target reaches it. */
const SLACK = 1e-12;

/**
 * A section with a rib under its crown.
 *
 * @param height of the foam core [m]
 * @param width of the foam core [m]
 * @param wall thickness of the rib's own layers [m]
 */
export const withRib = (plain: Section, height: number, width: number, wall: number): Section => {
  const webs = 2 * height * wall;
  const cap = width * wall;
  const webDepth = plain.bottom + height / 2;
  const capDepth = plain.bottom + height + wall / 2;
  return {
    area: plain.area + webs + cap,
    first: plain.first + webs * webDepth + cap * capDepth,
    second:
      plain.second +
      webs * (webDepth * webDepth + (height * height) / 12) +
      cap * (capDepth * capDepth + (wall * wall) / 12),
    top: plain.top,
    bottom: plain.bottom + height + wall,
  };
};

/**
 * @param length of the specimen [m]
 * @param width of the specimen [m]
 * @param height of the specimen [m]
 * @param totalWeight jacket and specimen [kg]
 * @param layers of cloth and plaster [1]
 * @returns height of the foam core [m], 0 where none is needed
 */
export const ribHeight = (
  length: number,
  width: number,
  height: number,
  totalWeight: number,
  layers: number,
  settings: Settings,
): Result<number> => {
  const fault = halfFault(length, width, height, totalWeight, layers);
  if (fault) return fault;
  const wall = thickness(layers, settings);
  if (isFault(wall)) return wall;
  const most = moment(length, width, totalWeight, settings);
  if (isFault(most)) return most;
  const plain = halfSection(length, width, height, wall, settings);
  const enough = (most * settings.targetSafetyFactor * (1 - SLACK)) / allowedStress(settings);
  if (modulus(plain) >= enough) return 0;
  const ribWall = settings.ribLayers * settings.layerThickness;
  const feet = footHeight(settings, length, width);
  for (let i = 1; i <= RIB_STEPS; i++) {
    const core = i * RIB_STEP;
    if (!(modulus(withRib(plain, core, settings.ribWidth, ribWall)) >= enough)) continue;
    const whole = core + ribWall;
    return whole <= feet * (1 + SLACK)
      ? core
      : noAnswer('needs a rib of {rib}, but the feet are {feet} high; use more layers, a pallet or higher feet', {
          rib: amount(whole, 'length'),
          feet: amount(feet, 'length'),
        });
  }
  return noAnswer('no rib up to {most} is enough; use more layers, more feet or a pallet', {
    most: amount(RIB_STEP * RIB_STEPS, 'length'),
  });
};
