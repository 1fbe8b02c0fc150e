import { isFault, type Result } from '../result.ts';
import type { Padding, Settings } from '../settings.ts';
import { advice } from './advice.ts';
import { type Plan, plan } from './plan.ts';
import { type Ends, planRange } from './plan-range.ts';
import type { Specimen } from './specimen.ts';
import { withChanges } from './with-changes.ts';

/** A plan with its ends and its advice. */
export interface WholePlan {
  readonly plan: Plan;
  readonly ends: { readonly [K in keyof Plan]?: Ends<number | string> };
  readonly advice: string;
}

/**
 * A plan with its ends and its advice, for one padding.
 *
 * @param specimen sizes and weight
 * @param padding felt or foam; left out, that of the settings
 * @param settings in force
 * Limits and sources: those of `plan`. Example: 0.6, 0.4, 0.3 m, 20 kg: nothing is out of line, the advice is ''.
 */
export const wholePlan = (specimen: Specimen, padding: Padding | undefined, settings: Settings): Result<WholePlan> => {
  const own = padding && padding !== settings.padding ? withChanges(settings, { padding }) : settings;
  if (isFault(own)) return own;
  const central = plan(specimen, own);
  return { plan: central, ends: planRange(specimen, own, central), advice: advice(central, specimen, own) };
};
