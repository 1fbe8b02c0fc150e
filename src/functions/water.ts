import { water } from '../calculation/mixing/water.ts';
import { quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'WATER',
  topic: 'mixing',
  question: 'How much water?',
  description: 'Mass of water for this much dry plaster.',
  equation: 'water ratio × plaster',
  math: String.raw`\text{water} = r \times \text{plaster}
r = \text{water ratio}`,
  arguments: { plaster: quantity('mass', 'the dry plaster') },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'water' },
  examples: [{ args: [10], value: 3.8 }],
  basis: 'published',
  source: 'published tables of consistency',
  remarks: ['Water first: plaster goes into the water, never the other way, soaks some minutes, then is stirred.'],
  related: ['PLASTER', 'WATER_RATIO', 'MIX_VOLUME'],
  run: ({ plaster }, settings) => water(plaster, settings),
});
