/**
 * How far the quantities of a plan may plausibly be off.
 *
 * Each uncertain input is moved to both ends of its range, one at a time, and the whole plan is worked out again. What that takes away from
 * a quantity, and what it adds, are summed in quadrature, each by itself. Counts are counted from the ends of what they are counted from.
 */
import { crew } from '../handling/crew.ts';
import { FELT_MIXES, FOAM_MIXES, oneMix } from '../mixing/mixes.ts';
import { plausibleRange } from '../plausible.ts';
import { type Fault, isFault, isPositive, type Result, wrong } from '../result.ts';
import { type Given, SETTINGS, type SettingKey, type Settings } from '../settings.ts';
import { layers } from '../shell/layers.ts';
import { bolts } from '../strength/bolts.ts';
import { wholeUp } from '../whole-up.ts';
import { follow } from './follow.ts';
import { type Plan, plan } from './plan.ts';
import { PLAN_ROWS } from './plan-rows.ts';
import type { Specimen } from './specimen.ts';
import { withChanges } from './with-changes.ts';

/** How far the weight of a specimen may be off, as a fraction of it [1]. Assumption. */
export const WEIGHT_SPREAD = 0.1;

/** Longest drying over the calculated one [1]. Published: the last tenth dries slower than at a constant rate. */
export const LONGEST_DRYING = 2;

/** The two ends of one quantity. */
export interface Ends<T> {
  readonly low: Result<T>;
  readonly high: Result<T>;
}

type Quantities = { readonly [K in keyof Plan]?: Ends<number | string> };

/** The plan with one input moved. A fault of the move itself stands for the quantities that differ from the central ones. */
interface Moved {
  readonly plan: Plan;
  readonly fault?: Fault;
}

/** Two ends of one input. */
type Pair = readonly [Moved, Moved];

const both = <T>(value: Result<T>): Ends<T> => ({ low: value, high: value });

/** Settings that carry a range, and the calibration, which has one where it was measured. */
const RANGED = (Object.keys(SETTINGS) as SettingKey[]).filter(
  (key) => key === 'calibration' || 'plausible' in SETTINGS[key],
);

const withSetting = (specimen: Specimen, settings: Settings, key: SettingKey, end: number): Moved => {
  const moved = withChanges(settings, { [key]: end } as Given);
  if (!isFault(moved)) return { plan: plan(specimen, moved) };
  // No settings hold this end. What depends on it is found by a value that spoils all it touches.
  const spoilt = Object.create(settings, { [key]: { value: Number.NaN } }) as Settings;
  return { plan: plan(specimen, spoilt), fault: moved };
};

const withSurface = (specimen: Specimen, settings: Settings, surface: number): Moved =>
  isPositive(surface)
    ? { plan: plan({ ...specimen, surface }, settings) }
    : {
        plan: plan({ ...specimen, surface: Number.NaN }, settings),
        fault: wrong('shape uncertainty', 'leaves no surface at all at its low end; set it below 1'),
      };

const movedPairs = (specimen: Specimen, settings: Settings, central: Plan): Pair[] => {
  const pairs: Pair[] = [];
  const surface = central.surfaceArea;
  if (specimen.surface === undefined && !isFault(surface)) {
    const off = settings.shapeUncertainty;
    pairs.push([
      withSurface(specimen, settings, surface * (1 - off)),
      withSurface(specimen, settings, surface * (1 + off)),
    ]);
  }
  for (const key of RANGED) {
    const range = plausibleRange(key, settings);
    if (range)
      pairs.push([withSetting(specimen, settings, key, range[0]), withSetting(specimen, settings, key, range[1])]);
  }
  const heavier = (by: number): Moved => ({ plan: plan({ ...specimen, weight: specimen.weight * by }, settings) });
  pairs.push([heavier(1 - WEIGHT_SPREAD), heavier(1 + WEIGHT_SPREAD)]);
  return pairs;
};

const endsOf = (of: keyof Plan, central: Result<number>, pairs: readonly Pair[], above = 0): Ends<number> => {
  if (isFault(central)) return both<number>(central);
  let less = 0;
  let more = above * above;
  for (const pair of pairs) {
    let least = central;
    let most = central;
    for (const { plan: moved, fault } of pair) {
      const value = moved[of] as Result<number>;
      if (fault && value !== central) return both<number>(fault);
      if (isFault(value)) return both<number>(value);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    less += (central - least) ** 2;
    more += (most - central) ** 2;
  }
  const low = central - Math.sqrt(less);
  // Feet that jump to other places at some weight can add up to more than there is.
  return { low: central >= 0 ? Math.max(0, low) : low, high: central + Math.sqrt(more) };
};

/** Mixes for an amount of slurry, as `mixes` counts them. */
const mixesOf = (slurry: number, settings: Settings): number => {
  const least = settings.padding === 'foam' ? FOAM_MIXES : FELT_MIXES;
  return 2 * Math.max(least, wholeUp(slurry / 2 / oneMix(settings)));
};

/** Counts at both ends of what they are counted from. */
const counted = <T extends number | string>(from: Ends<number>, count: (x: number) => Result<T>): Ends<T> => ({
  low: follow(from.low, count),
  high: follow(from.high, count),
});

/**
 * Low and high of every quantity of a plan that is a number.
 *
 * @param specimen sizes and weight
 * @param settings in force
 * @param central the plan itself
 * @returns two ends for each key of the plan but words and TRUE or FALSE; where an end has no answer, its fault stands in both
 * Limits: inputs are taken as independent, and each range as what is plausible, not as a guarantee.
 * Source: propagation of small independent uncertainties, JCGM 100:2008 (GUM), section 5.1, with ranges in place of standard deviations.
 * Example: 0.6, 0.4, 0.3 m, 20 kg: 12.749 to 22.673 kg of plaster.
 */
export const planRange = (specimen: Specimen, settings: Settings, central: Plan): Quantities => {
  const pairs = movedPairs(specimen, settings, central);
  const ends: { -readonly [K in keyof Plan]?: Ends<number | string> } = {};
  const numeric = (of: keyof Plan): Ends<number> => ends[of] as Ends<number>;
  for (const { of, quantity } of PLAN_ROWS) {
    if (quantity === null || of === 'crew') continue;
    const value = central[of] as Result<number>;
    const drying = of === 'dryingTime' && !isFault(value) ? (LONGEST_DRYING - 1) * value : 0;
    ends[of] = endsOf(of, value, pairs, drying);
  }
  const { weight } = specimen;
  ends.layers = {
    low: layers(weight * (1 - WEIGHT_SPREAD), settings),
    high: layers(weight * (1 + WEIGHT_SPREAD), settings),
  };
  ends.mixes = counted(numeric('slurry'), (m3) => mixesOf(m3, settings));
  ends.bolts = counted(numeric('seam'), (m) => bolts(m, settings));
  ends.crew = counted(numeric('wetWeight'), (kg) =>
    follow(central.outerWidth, (across) => crew(kg, settings.onePersonLimit, across)),
  );
  return ends;
};
