import { liftIndex } from '../calculation/handling/lift-index.ts';
import { limits } from '../calculation/handling/lift-limit.ts';
import { quantity } from './calling/arguments.ts';
import { LIFT_ARGUMENTS, LIFT_SOURCE } from './calling/lift.ts';
import { define } from './define.ts';

export default define({
  id: 'LIFT_INDEX',
  topic: 'handling',
  question: 'Is this lift too much for one person?',
  description: 'Weight to be lifted over the recommended weight limit.',
  equation: 'weight ÷ LIFT_LIMIT',
  math: String.raw`\text{index} = \frac{\text{weight}}{\text{LIFT\_LIMIT}}`,
  arguments: { weight: quantity('mass', 'the weight to be lifted', { asTyped: true }), ...LIFT_ARGUMENTS },
  settings: true,
  result: { kind: 'number', quantity: 'ratio', what: 'lifting index' },
  examples: [{ args: [20, 40, 70, 50, 30, 1, 1, 'fair'], value: 1.922758014 }],
  basis: 'published',
  source: LIFT_SOURCE,
  hurts: ['lifting'],
  limits,
  related: ['LIFT_LIMIT', 'CREW'],
  run: ({ weight, ...lift }, _settings, system) => liftIndex(weight, lift, system),
});
