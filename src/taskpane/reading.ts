/** Values of a plan as people read them: rounded, with their unit, and with the ends of what is plausible. */
import type { Quantity } from '../calculation/result.ts';
import { type Answer, isCellError, isRows } from '../functions/calling/cell.ts';
import type { UnitSystem } from '../functions/calling/units.ts';
import { HIGH, type JacketPlan, LOW, planCell, rowOf } from './jacket-plan.ts';
import { estimate } from './numbers.ts';

/** What is counted, where a number of a plan has no other unit. */
const COUNTED: Readonly<Record<string, readonly [one: string, many: string]>> = {
  layers: ['layer', 'layers'],
  'mean layers': ['layer', 'layers'],
  mixes: ['mix', 'mixes'],
  'padding sheets': ['sheet', 'sheets'],
  bolts: ['bolt', 'bolts'],
  crew: ['person', 'people'],
};

/** Significant digits of a count that is not whole, such as sheets. */
const DIGITS = 3;

/** An estimate with its unit. */
export const reading = (answer: Answer, quantity: Quantity | null, system: UnitSystem, label = ''): string => {
  if (isRows(answer)) return '';
  if (isCellError(answer)) return answer.reason || answer.code;
  if (typeof answer === 'boolean') return answer ? 'yes' : 'no';
  if (typeof answer === 'string') return answer;
  if (quantity === null) return estimate(answer, 'count', system);
  if (quantity === 'count') {
    const shown = Number.isInteger(answer) ? answer : Number(answer.toPrecision(DIGITS));
    const [one, many] = COUNTED[label] ?? ['', ''];
    return `${shown} ${shown === 1 ? one : many}`.trim();
  }
  if (quantity === 'ratio') return String(Number(answer.toPrecision(DIGITS)));
  return estimate(answer, quantity, system);
};

/** A range in words: the unit stands once where both ends have it. */
export const rangeWords = (low: string, high: string): string => {
  if (low === '' || high === '') return '';
  if (low === high) return '';
  const [number, ...unit] = low.split(' ');
  const after = ` ${unit.join(' ')}`;
  return unit.length > 0 && high.endsWith(after) && /^-?[\d.]/.test(low) ? `${number} to ${high}` : `${low} to ${high}`;
};

/** One row of a plan in words. */
export interface Line {
  readonly label: string;
  readonly value: string;
  /** «12.7 to 22.7 kg», or blank where the ends do not differ from the value. */
  readonly range: string;
}

/** The unit of a plan's row as its cells say it, with its ends. */
export const lineOf = ({ plan, system }: JacketPlan, label: string): Line => {
  const { quantity } = rowOf(label);
  const words = (column?: number): string => reading(planCell(plan, label, column).answer, quantity, system, label);
  return { label, value: words(), range: rangeWords(words(LOW), words(HIGH)) };
};
