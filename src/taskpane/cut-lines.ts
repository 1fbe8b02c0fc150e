/** Pieces of cloth to cut, and the roll that they take, in words. */
import type { JacketPlan } from './jacket-plan.ts';
import { reading } from './reading.ts';
import { rowsBelowHeader } from './worked.ts';

export interface CutLine {
  readonly purpose: string;
  readonly pieces: string;
  /** «42 × 10.2 cm» */
  readonly size: string;
}

/** «42 × 10.2 cm» of two lengths with their unit. */
const sizeWords = (long: string, across: string): string => `${long.split(' ')[0]} × ${across}`;

/** A line for each purpose. */
export const cutLines = ({ cuts, system }: JacketPlan): readonly CutLine[] =>
  rowsBelowHeader(cuts)
    .slice(0, -1)
    .map(([purpose, pieces, long, across]) => ({
      purpose: String(purpose),
      pieces: String(pieces),
      size: sizeWords(reading(long as number, 'length', system), reading(across as number, 'length', system)),
    }));

/** Length of roll: the last row of the list. */
export const rollWords = ({ cuts, system }: JacketPlan): string =>
  reading((rowsBelowHeader(cuts).at(-1)?.[1] ?? '') as number, 'clothLength', system);
