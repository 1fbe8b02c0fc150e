import { limits, paddingPressure } from '../calculation/feet/padding-pressure.ts';
import { LENGTH, SPECIMEN_WEIGHT, WIDTH } from './calling/common.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'PADDING_PRESSURE',
  topic: 'feet',
  question: 'How hard does the specimen press on its padding?',
  description: 'Mean pressure of the specimen on its padding.',
  equation: 'weight × g/(π/4·length·width); box and cylinder: length × width',
  math: String.raw`\text{pressure} = \frac{\text{weight} \times g}{\frac{\pi}{4} \times \text{length} \times \text{width}}`,
  arguments: { length: LENGTH, width: WIDTH, weight: SPECIMEN_WEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'bearing', what: 'mean pressure' },
  examples: [{ args: [60, 40, 30], value: 1.560776823 }],
  basis: 'derived',
  source: 'load over area; standard gravity',
  hurts: ['stability'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { length: number; width: number; weight: number }, s) => [v.length, v.width, v.weight, s] as const,
    ),
    { text: 'a mean for planning: edges and knobs of the specimen press harder' },
  ],
  related: ['FOOT_PRESSURE', 'PADDING_CHOICE'],
  run: ({ length, width, weight }, settings) => paddingPressure(length, width, weight, settings),
});
