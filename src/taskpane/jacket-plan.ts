/** Everything that is worked out for the one jacket of the form: calls of the functions, and nothing beside them. */
import { PLAN_ROWS, type PlanRow } from '../calculation/plans/plan-rows.ts';
import { isFault } from '../calculation/result.ts';
import { DEFAULT_SETTINGS, type Padding, resolveSettings, type Settings } from '../calculation/settings.ts';
import type { Argument, Cell } from '../functions/calling/cell.ts';
import type { UnitSystem } from '../functions/calling/units.ts';
import { type PlanForm, reasonsFor, SIZES, type Size, typedCell } from './plan-form.ts';
import { cellOf, functionNamed, more, reasonOf, type Worked, work } from './worked.ts';

export interface JacketPlan {
  readonly form: PlanForm;
  readonly system: UnitSystem;
  readonly padding: Padding;
  /** In force: the defaults, with the padding that was asked for or chosen. SI. */
  readonly settings: Settings;
  /** As typed, in the units of the form. */
  readonly sizes: Readonly<Record<Size, number>>;
  readonly plan: Worked;
  readonly mixes: Worked;
  readonly cuts: Worked;
  readonly times: Worked;
  readonly feet: Worked;
  readonly loads: Worked;
  readonly compare: Worked;
  /** What the plan is doubtful about. */
  readonly doubts: readonly string[];
}

/** Why there is no plan: reasons beside fields, or one for all of it. */
export interface NoPlan {
  readonly reasons: Partial<Record<Size, string>>;
  readonly reason?: string;
}

export const isNoPlan = (plan: JacketPlan | NoPlan): plan is NoPlan => 'reasons' in plan;

/** Columns of PLAN, from 1. */
export const VALUE = 2;
export const UNIT = 3;
export const LOW = 4;
export const HIGH = 5;

/** A cell of the plan by the label of its row. */
export const planCell = (plan: Worked, label: string, column: number = VALUE): Worked => {
  const at = PLAN_ROWS.findIndex((row) => row.label === label);
  // The header stands before the rows, the advice behind them.
  return cellOf(plan, (at < 0 ? PLAN_ROWS.length : at) + 2, column);
};

export const rowOf = (label: string): PlanRow => PLAN_ROWS.find((row) => row.label === label)!;

/** The settings argument of functions that are not told the padding otherwise; null where the defaults do. */
const settingsArgument = (system: UnitSystem, padding: Padding): Argument => {
  if (padding === DEFAULT_SETTINGS.padding) return system === 'metric' ? null : system;
  const rows: Cell[][] = [['padding', padding]];
  if (system !== 'metric') rows.unshift(['units', system]);
  return rows;
};

/** The middle of the jacket, where it balances until it has been weighed on its feet. */
const MIDDLE: Argument = [[0, 0]];

/**
 * @param form as it was filled in
 * @returns the plan, or why there is none
 */
export const jacketPlan = (form: PlanForm): JacketPlan | NoPlan => {
  const reasons = reasonsFor(form);
  if (Object.keys(reasons).length > 0) return { reasons };
  const { system } = form;
  const units = system === 'metric' ? null : system;
  const [length, width, height, weight] = SIZES.map((size) => typedCell(form[size]) as number) as [
    number,
    number,
    number,
    number,
  ];
  const chosen: Worked | Padding =
    form.padding === 'choose'
      ? work('PADDING_CHOICE', weight, form.fragile, form.relief ? 'high' : 'low', units)
      : form.padding;
  const padding = (typeof chosen === 'string' ? chosen : chosen.answer) as Padding;
  const settings = resolveSettings({ padding });
  const plan = work('PLAN', length, width, height, weight, chosen, units);
  const reason = reasonOf(plan) ?? (isFault(settings) ? 'the padding is not known' : undefined);
  if (reason !== undefined || isFault(settings)) return { reasons, reason: reason ?? '' };
  const also = settingsArgument(system, padding);
  const area = planCell(plan, 'shell area');
  const layers = planCell(plan, 'mean layers');
  const all = planCell(plan, 'weight');
  const feet = work('FEET', length, width, all, null, also);
  return {
    form,
    system,
    padding,
    settings,
    sizes: { length, width, height, weight },
    plan,
    mixes: work('MIX_TABLE', area, layers, also),
    cuts: work('CUT_LIST', length, width, height, more(planCell(plan, 'layers'), settings.coverLayers), also),
    times: work('SCHEDULE', area, layers, also),
    feet,
    loads: work('FOOT_LOADS', feet, MIDDLE, all),
    compare: work('COMPARE', length, width, height, weight, units),
    doubts: functionNamed('PLAN').explain([length, width, height, weight, padding, units])?.doubts ?? [],
  };
};
