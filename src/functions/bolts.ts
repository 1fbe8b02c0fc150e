import { bolts, limits } from '../calculation/strength/bolts.ts';
import { quantity } from './calling/arguments.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'BOLTS',
  topic: 'strength',
  question: 'How many bolts along the seam?',
  description: 'Bolts for the flanges of a seam of this length, at least four.',
  equation: 'max(4, seam/bolt spacing rounded up)',
  math: String.raw`\text{bolts} = \max\left(4,\ \left\lceil\frac{\text{seam}}{\text{bolt spacing}}\right\rceil\right)`,
  arguments: { seam: quantity('length', 'the length of the seam') },
  settings: true,
  result: { kind: 'number', quantity: 'count', what: 'bolts' },
  examples: [{ args: [165], value: 9 }],
  basis: 'assumption',
  source: 'no published spacing was found; four hold the corners',
  hurts: ['strength'],
  limits: [
    ...limitsFrom(limits, (v: { seam: number }, settings) => [v.seam, settings] as const),
    { text: 'an estimate for planning: a bolt spacing is a habit of the shop, not a proof' },
  ],
  related: ['SEAM'],
  run: ({ seam }, settings) => bolts(seam, settings),
});
