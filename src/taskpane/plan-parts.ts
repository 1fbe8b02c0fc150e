/** The rows of a plan in the order in which somebody needs them, under a few headings. */
import type { Hurt } from '../functions/define.ts';

export interface PlanPart {
  readonly title: string;
  readonly rows: readonly string[];
  /** What its numbers can do to somebody who trusts them too far. */
  readonly hurts: readonly Hurt[];
}

export const PARTS: readonly PlanPart[] = [
  {
    title: 'What to buy',
    rows: ['padding', 'plaster', 'cloth', 'padding sheets', 'sealer', 'bolts'],
    hurts: ['solvent'],
  },
  { title: 'What to mix', rows: ['mixes', 'water', 'slurry', 'mix temperature'], hurts: ['dust', 'heat'] },
  {
    title: 'How large it is',
    rows: [
      'surface area',
      'volume',
      'seam',
      'shell area',
      'layers',
      'mean layers',
      'thickness',
      'outer length',
      'outer width',
      'outer height',
    ],
    hurts: [],
  },
  {
    title: 'How it stands',
    rows: [
      'stable',
      'tip angle',
      'margin',
      'balance height',
      'foot size',
      'largest foot load',
      'foot pressure',
      'shelf load',
    ],
    hurts: ['stability'],
  },
  {
    title: 'Whether it is strong enough',
    rows: ['strong enough', 'safety factor', 'weakest', 'safety factor when made', 'rib height'],
    hurts: ['strength'],
  },
  {
    title: 'How it is handled',
    rows: ['crew', 'weight', 'wet weight', 'turn weight', 'drying time'],
    hurts: ['lifting'],
  },
];
