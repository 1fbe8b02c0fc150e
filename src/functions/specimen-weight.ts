import { isFault } from '../calculation/result.ts';
import { specimenWeight } from '../calculation/size/specimen-weight.ts';
import { numberOrText, quantity } from './calling/arguments.ts';
import { define } from './define.ts';
import { densityByName } from './density.ts';

export default define({
  id: 'SPECIMEN_WEIGHT',
  topic: 'size',
  question: 'What will the specimen weigh?',
  description: 'Weight of a specimen from its volume and its material or density.',
  equation: 'volume × density',
  math: String.raw`\text{weight} = \text{volume} \times \text{density}`,
  arguments: {
    volume: quantity('bodyVolume', 'the body volume'),
    material_or_density: numberOrText('density', 'a material such as sandstone, or a density'),
  },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'weight of the specimen alone' },
  examples: [
    { args: [20, 'mudstone'], value: 48 },
    { args: [20, 2.5], value: 50 },
  ],
  basis: 'derived',
  source: 'volume times density; densities as in DENSITY',
  remarks: ['A scale is better than any estimate: weigh before you plan a lift.'],
  hurts: ['lifting'],
  limits: [{ text: 'an estimate for planning: shape and density are each known to some 10 to 20 %' }],
  related: ['VOLUME', 'DENSITY', 'WEIGHT'],
  run: ({ volume, material_or_density: material }) => {
    const known = typeof material === 'string' ? densityByName(material, 'material_or_density') : material;
    return isFault(known) ? known : specimenWeight(volume, known);
  },
});
