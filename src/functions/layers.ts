import { layers } from '../calculation/shell/layers.ts';
import { SPECIMEN_WEIGHT } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'LAYERS',
  topic: 'shell',
  question: 'How many layers of cloth and plaster?',
  description: 'Cloth-and-plaster layers for a specimen of this weight.',
  equation:
    'least + (most − least)·√((weight − light)/(heaviest − light)), rounded half up, never below least or above most',
  math: String.raw`\text{layers} = n_{\text{least}} + \left(n_{\text{most}} - n_{\text{least}}\right)\sqrt{\frac{\text{weight} - w_{\text{light}}}{w_{\text{heaviest}} - w_{\text{light}}}}`,
  arguments: { weight: SPECIMEN_WEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'count', what: 'layers' },
  examples: [
    { args: [20], value: 6 },
    { args: [50, 'us'], value: 6 },
  ],
  basis: 'common practice',
  source:
    'the two ends: common practice, no source; between them the thickness of a plate in bending grows with the root of its load',
  remarks: ['The last layer that covers the patches comes on top (setting cover layers).'],
  hurts: ['strength'],
  limits: [
    {
      text: 'a specimen up to the most layers weight; above it a jacket wants a pallet or a frame, not more layers',
      holds: ({ weight }, { mostLayersWeight }) => weight <= mostLayersWeight,
    },
  ],
  related: ['THICKNESS', 'PLASTER', 'CLOTH', 'WEIGHT'],
  run: ({ weight }, settings) => layers(weight, settings),
});
