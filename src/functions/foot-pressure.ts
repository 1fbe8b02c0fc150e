import { footPressure, limits } from '../calculation/feet/foot-pressure.ts';
import { quantity } from './calling/arguments.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'FOOT_PRESSURE',
  topic: 'feet',
  question: 'How hard does a foot press?',
  description: 'Bearing pressure under a foot.',
  equation: 'load × g/(length × width)',
  math: String.raw`\text{pressure} = \frac{\text{load} \times g}{\text{length} \times \text{width}}`,
  arguments: {
    load: quantity('mass', 'the load on the foot'),
    length: quantity('length', 'the length of the foot'),
    width: quantity('length', 'the width of the foot'),
  },
  settings: true,
  result: { kind: 'number', quantity: 'bearing', what: 'bearing pressure' },
  examples: [{ args: [15, 10, 10], value: 14.709975 }],
  basis: 'derived',
  source: 'load over area; standard gravity',
  hurts: ['stability'],
  limits: [
    ...limitsFrom(limits, (v: { load: number; length: number; width: number }) => [v.load, v.length, v.width] as const),
    { text: 'an estimate for planning: the mean over the foot, the edge of a tilted foot presses harder' },
  ],
  related: ['FOOT_LOADS', 'PADDING_PRESSURE', 'SHELF_LOAD'],
  run: ({ load, length, width }) => footPressure(load, length, width),
});
