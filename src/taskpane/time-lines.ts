/** Steps of the work and when they begin, in words. */
import type { UnitSystem } from '../functions/calling/units.ts';
import type { JacketPlan } from './jacket-plan.ts';
import { reading } from './reading.ts';
import { rowsBelowHeader } from './worked.ts';

export interface TimeLine {
  readonly step: string;
  readonly starts: string;
  readonly lasts: string;
}

/** «2.33 h» */
const hours = (time: number, system: UnitSystem): string => reading(time, 'hours', system).replace(/ hours$/, ' h');

export const timeLines = ({ times, system }: JacketPlan): readonly TimeLine[] =>
  rowsBelowHeader(times).map(([step, starts, lasts]) => ({
    step: String(step),
    starts: hours(starts as number, system),
    lasts: hours(lasts as number, system),
  }));
