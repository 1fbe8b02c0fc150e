import { isFault, wrong } from '../calculation/result.ts';
import { density, MATERIALS } from '../calculation/size/density.ts';
import { single, text } from './calling/arguments.ts';
import { plainName, unknownName } from './calling/names.ts';
import { define } from './define.ts';

/** Density of a material by its name; an unknown one is refused with the nearest known name. */
export const densityByName = (typed: string, field: string) => {
  const name = plainName(typed);
  const known = density(name);
  if (!isFault(known) || name === 'bone') return known;
  return wrong(field, `is ${unknownName(typed, Object.keys(MATERIALS), 'a known material')}`);
};

export default define({
  id: 'DENSITY',
  topic: 'size',
  question: 'How heavy is a litre of it?',
  description: 'Density of a material by its name, in kg/L.',
  equation: 'table of published densities',
  math: String.raw`\rho = \text{the material’s row of the table}`,
  arguments: { material: single(text('a material such as fossil bone or sandstone')) },
  settings: false,
  result: { kind: 'number', quantity: 'density', what: 'density of the material' },
  examples: [
    { args: ['sandstone'], value: 2.35 },
    { args: ['fossil bone'], value: 2.9 },
  ],
  basis: 'published',
  source:
    'density tables of rocks and minerals (Telford, Geldart and Sheriff 1990, table 2.1); SOURCE names the range of each',
  remarks: ['The range of a rock is wide: weigh the specimen where you can.'],
  related: ['SPECIMEN_WEIGHT', 'VOLUME', 'SOURCE'],
  run: ({ material }) => densityByName(material, 'material'),
});
