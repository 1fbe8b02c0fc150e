import { consistency } from '../calculation/mixing/consistency.ts';
import { quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'CONSISTENCY',
  topic: 'mixing',
  question: 'What consistency is my mix?',
  description: 'Parts of water to 100 parts of plaster, by mass.',
  equation: '100·water/plaster',
  math: String.raw`\text{consistency} = 100 \times \frac{\text{water}}{\text{plaster}}`,
  arguments: { plaster: quantity('mass', 'the dry plaster'), water: quantity('mass', 'the water, in the same unit') },
  settings: false,
  result: { kind: 'number', quantity: 'percent', what: 'parts of water to 100 of plaster' },
  examples: [{ args: [1.5, 1], value: 66.66666667 }],
  basis: 'published',
  source: 'definition in use by makers of plaster and in ASTM C472',
  related: ['WATER_RATIO', 'WATER'],
  run: ({ plaster, water }) => consistency(plaster, water),
});
