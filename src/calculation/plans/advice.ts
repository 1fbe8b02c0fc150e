import { longHeavy } from '../feet/long-heavy.ts';
import { isFault } from '../result.ts';
import type { Settings } from '../settings.ts';
import { layersNeeded } from '../shell/layers-needed.ts';
import { longerFirst } from '../size/longer-first.ts';
import type { Plan } from './plan.ts';
import type { Specimen } from './specimen.ts';

/** What to do about feet that stand too near to each other for their height. */
const aboutTipping = (plan: Plan, { length, width }: Specimen, settings: Settings): string => {
  const [along, across] = longerFirst(length, width, settings);
  const moved = !isFault(plan.weight) && longHeavy(along, across, plan.weight, settings);
  return `not stable on its feet: set them farther apart or lower${moved ? ', or set a higher long ratio' : ''}`;
};

/** What to do about a shell that is too weak. */
const aboutStrength = (plan: Plan, { length, width, height, weight }: Specimen, settings: Settings): string => {
  const needed = layersNeeded(length, width, height, weight, settings);
  const instead = isFault(needed)
    ? 'carry it on a pallet'
    : `lay up ${needed} layers in all, cover layers among them, or carry it on a pallet`;
  return `not strong enough ${plan.weakest}: ${instead}`;
};

/**
 * One sentence on what is out of line in a plan, or '' where nothing is.
 *
 * @param plan as `plan` works it out
 * @param specimen what it is for
 * @param settings in force
 * Limits: it looks at six things only, those that have hurt people or specimens; a blank is no release from local codes or from weighing.
 * Source: the limits of the single calculations. Example: 0.6, 0.4, 0.3 m, 20 kg: ''.
 */
export const advice = (plan: Plan, specimen: Specimen, settings: Settings): string => {
  const clauses: string[] = [];
  if (plan.stable === false) clauses.push(aboutTipping(plan, specimen, settings));
  if (plan.strongEnough === false) clauses.push(aboutStrength(plan, specimen, settings));
  if (!isFault(plan.safetyFactorWhenMade) && plan.safetyFactorWhenMade < 1)
    clauses.push('too weak while it is wet: let it dry before it is turned or lifted');
  if (isFault(plan.ribHeight) && plan.ribHeight.code === 'none')
    clauses.push('a rib would stand out below the feet: use more layers, higher feet or a pallet');
  if (specimen.weight > settings.mostLayersWeight)
    clauses.push('heavier than the most layers are meant for: have the jacket and its support designed by an engineer');
  if (plan.crew === 'hoist') clauses.push('too heavy for three people: lift it with a hoist');
  const text = clauses.join('; ');
  return text && `${text[0]!.toUpperCase()}${text.slice(1)}.`;
};
