import { limits, shelfLoad } from '../calculation/strength/shelf-load.ts';
import { LENGTH, TOTAL_WEIGHT, WIDTH } from './calling/common.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'SHELF_LOAD',
  topic: 'handling',
  question: 'Will the shelf bear it?',
  description: 'Load per area of shelf under a jacket.',
  equation: 'weight × g/(length × width)',
  math: String.raw`\text{load} = \frac{\text{weight} \times g}{\text{length} \times \text{width}}`,
  arguments: { length: LENGTH, width: WIDTH, total_weight: TOTAL_WEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'shelfLoad', what: 'load per area' },
  examples: [{ args: [60, 40, 50], value: 2.043052083 }],
  basis: 'derived',
  source: 'load over area; for comparison, ASCE 7 takes 6.0 kPa (125 lb/ft²) for light storage floors',
  hurts: ['lifting'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { length: number; width: number; total_weight: number }) => [v.length, v.width, v.total_weight] as const,
    ),
    { text: 'a mean for planning: three feet press on three spots; the maker’s plate of the shelf comes first' },
  ],
  related: ['FOOT_PRESSURE', 'OUTER_SIZE'],
  run: ({ length, width, total_weight }) => shelfLoad(length, width, total_weight),
});
