/** Steps of the work and when they begin, in words. */
import type { JacketPlan } from './jacket-plan.ts';
import { reading } from './reading.ts';
import { rowsBelowHeader } from './worked.ts';

export interface TimeLine {
  readonly step: string;
  readonly starts: string;
  readonly lasts: string;
}

export const timeLines = ({ times, system }: JacketPlan): readonly TimeLine[] =>
  rowsBelowHeader(times).map(([step, starts, lasts]) => ({
    step: String(step),
    starts: reading(starts as number, 'hours', system),
    lasts: reading(lasts as number, 'hours', system),
  }));
