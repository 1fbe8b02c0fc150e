import { clay } from '../calculation/cloth/clay.ts';
import { quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'CLAY',
  topic: 'cloth',
  question: 'How much modelling clay?',
  description: 'Mass of clay for pockets of this area.',
  equation: 'area × clay thickness × clay density',
  math: String.raw`\text{clay} = \text{area} \times \text{clay thickness} \times \text{clay density}`,
  arguments: { area: quantity('clayArea', 'the area to cover with clay') },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'modelling clay' },
  examples: [{ args: [500], value: 0.2778125 }],
  basis: 'common practice',
  source: 'thickness about 1/8 in: common practice, no source; density of oil modelling clay from memory',
  related: ['PADDING'],
  run: ({ area }, settings) => clay(area, settings),
});
