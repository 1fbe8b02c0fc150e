/** Mixes in the order in which they are made: those of a half that are alike are one line. */
import type { JacketPlan } from './jacket-plan.ts';
import { reading } from './reading.ts';
import { rowsBelowHeader } from './worked.ts';

export interface MixLine {
  /** lower or upper */
  readonly half: string;
  /** How many such mixes follow each other. */
  readonly count: number;
  readonly waterMass: string;
  readonly water: string;
  readonly plaster: string;
  readonly slurry: string;
}

export const mixLines = ({ mixes, system }: JacketPlan): readonly MixLine[] => {
  const lines: MixLine[] = [];
  for (const [, half, waterMass, water, plaster, slurry] of rowsBelowHeader(mixes)) {
    const words = (cell: unknown, quantity: 'mass' | 'liquidVolume') => reading(cell as number, quantity, system);
    const next: MixLine = {
      half: String(half),
      count: 1,
      waterMass: words(waterMass, 'mass'),
      water: words(water, 'liquidVolume'),
      plaster: words(plaster, 'mass'),
      slurry: words(slurry, 'liquidVolume'),
    };
    const before = lines.at(-1);
    const same = before && JSON.stringify({ ...before, count: 1 }) === JSON.stringify(next);
    if (same) lines[lines.length - 1] = { ...before, count: before.count + 1 };
    else lines.push(next);
  }
  return lines;
};
