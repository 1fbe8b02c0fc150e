/** The jacket that the screens of one pane share. It lives as long as the page. */
import type { JacketPlan } from './jacket-plan.ts';
import { EMPTY_FORM, type PlanForm } from './plan-form.ts';

export interface PlanDesk {
  form: PlanForm;
  plan: JacketPlan | undefined;
}

export const planDesk = (): PlanDesk => ({ form: EMPTY_FORM, plan: undefined });
