/** Arguments, texts and limits that the functions of strength share. */

import type { Settings } from '../../calculation/settings.ts';
import { limits, type strength } from '../../calculation/strength/strength.ts';
import { HEIGHT, LAYERS, LENGTH, TOTAL_WEIGHT, WIDTH } from './common.ts';
import { limitsFrom } from './limits.ts';

export const HALF = { length: LENGTH, width: WIDTH, height: HEIGHT, total_weight: TOTAL_WEIGHT, layers: LAYERS };

interface HalfValues {
  readonly length: number;
  readonly width: number;
  readonly height: number;
  readonly total_weight: number;
  readonly layers: number;
}

const input = (v: HalfValues, settings: Settings): Parameters<typeof strength> => [
  v.length,
  v.width,
  v.height,
  v.total_weight,
  v.layers,
  settings,
];

export const HALF_LIMITS = [
  ...limitsFrom(limits, input),
  { text: 'an estimate for planning: static, no impact, no creep, no end that is dropped' },
];

export const HALF_SOURCE =
  'beam on two supports; flat plate: Roark’s Formulas for Stress and Strain, 7th edition, table 11.4 case 1b; shallow spherical shell: E. Reissner 1946, J. Math. Phys. 25 (from memory); strength: published minimum flexural yield of glass-reinforced gypsum, ASTM C947';

export const HALF_REMARK =
  'A half that is not half of the height deep is given as twice its depth. Weight is what the half carries with itself: jacket and specimen.';
