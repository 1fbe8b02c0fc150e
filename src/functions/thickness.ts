import { thickness } from '../calculation/shell/thickness.ts';
import { LAYERS } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'THICKNESS',
  topic: 'shell',
  question: 'How thick is the shell?',
  description: 'Thickness of the shell from its layers.',
  equation: 'layers × layer thickness + finish coat',
  math: String.raw`\text{thickness} = \text{layers} \times \text{layer thickness} + \text{finish coat}`,
  arguments: { layers: LAYERS },
  settings: true,
  result: { kind: 'number', quantity: 'thickness', what: 'shell thickness' },
  examples: [{ args: [8], value: 13 }],
  basis: 'assumption',
  source: 'layer thickness near the published 1/4 in of hand lay-up over four layers; finish coat: assumption',
  remarks: ['Measure an offcut of your own and set the layer thickness.'],
  related: ['LAYERS', 'PLASTER'],
  run: ({ layers }, settings) => thickness(layers, settings),
});
