import { turnWeight } from '../calculation/strength/turn-weight.ts';
import { optional, quantity } from './calling/arguments.ts';
import { TOTAL_WEIGHT } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'TURN_WEIGHT',
  topic: 'handling',
  question: 'What do you feel when you begin to turn it over?',
  description: 'Weight felt at the lifting edge as a turn begins.',
  equation: 'weight × offset/width',
  math: String.raw`\text{felt at the edge} = \text{weight} \times \frac{\text{offset}}{\text{width}}`,
  arguments: {
    total_weight: TOTAL_WEIGHT,
    width: quantity('length', 'the width of the jacket'),
    offset: optional(quantity('length', 'the distance of the balance point from the resting edge')),
  },
  settings: false,
  result: { kind: 'number', quantity: 'mass', what: 'weight felt, in the unit of the weight' },
  examples: [
    { args: [50, 40], value: 25 },
    { args: [50, 40, 24], value: 30 },
  ],
  basis: 'derived',
  source: 'statics: moments about the resting edge',
  remarks: ['Left out, the balance point is in the middle. Bolts tight, and agree who calls.'],
  hurts: ['lifting'],
  limits: [
    {
      text: 'an estimate for planning: the beginning of a slow turn; it grows lighter, then runs away past the balance',
    },
  ],
  related: ['CREW', 'WET_WEIGHT'],
  run: ({ total_weight, width, offset }) => turnWeight(total_weight, width, offset ?? null),
});
