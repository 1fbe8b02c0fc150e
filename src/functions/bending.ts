import { bending, limits } from '../calculation/strength/bending.ts';
import { quantity } from './calling/arguments.ts';
import { LENGTH, TOTAL_WEIGHT } from './calling/common.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'BENDING',
  topic: 'strength',
  question: 'How hard does it bend between its supports?',
  description: 'Largest bending moment on two supports, each at the inset from an end.',
  equation: 'max(w·a²/2, |w·L·(L − 4a)/8|), w weight per length, a inset',
  math: String.raw`M = \max\left(\frac{w\,a^2}{2},\ \left|\frac{w\,L\left(L - 4a\right)}{8}\right|\right), \quad w = \frac{\text{weight} \times g}{L}
a = \text{inset}, \quad L = \text{length}`,
  arguments: {
    length: LENGTH,
    total_weight: TOTAL_WEIGHT,
    inset: quantity('length', 'the distance of each support from its end', { zero: true }),
  },
  settings: true,
  result: { kind: 'number', quantity: 'moment', what: 'largest moment' },
  examples: [
    { args: [120, 50, 24], value: 14.709975 },
    { args: [48, 110, 10, 'us'], value: 9.548611111 },
  ],
  basis: 'derived',
  source: 'beam with two overhangs under a uniform load; least at 0.2071·L from each end, as for lifting piles',
  hurts: ['strength'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { length: number; total_weight: number; inset: number }) => [v.length, v.total_weight, v.inset] as const,
    ),
    { text: 'an estimate for planning: static, no impact' },
  ],
  related: ['STRENGTH', 'RIB_HEIGHT'],
  run: ({ length, total_weight, inset }) => bending(length, total_weight, inset),
});
