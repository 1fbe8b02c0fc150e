/** Jackets of an invented museum for the tests of the pane. */
import { isNoPlan, type JacketPlan, jacketPlan } from '../../src/taskpane/jacket-plan.ts';
import { EMPTY_FORM, type PlanForm } from '../../src/taskpane/plan-form.ts';

/** The example of PLAN in the design of the functions: 60 × 40 × 30 cm, 20 kg. */
export const METRIC_FORM: PlanForm = {
  ...EMPTY_FORM,
  length: '60',
  width: '40',
  height: '30',
  weight: '20',
  number: 'INV 1204',
  element: 'skull',
};

export const US_FORM: PlanForm = {
  ...EMPTY_FORM,
  system: 'us',
  padding: 'foam',
  length: '24',
  width: '16',
  height: '12',
  weight: '44',
};

export const planned = (form: PlanForm): JacketPlan => {
  const jacket = jacketPlan(form);
  if (isNoPlan(jacket)) throw new Error(JSON.stringify(jacket));
  return jacket;
};
