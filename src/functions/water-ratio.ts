import { waterRatio } from '../calculation/mixing/water-ratio.ts';
import { SETTINGS } from '../calculation/settings.ts';
import { optional, single, word } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'WATER_RATIO',
  topic: 'mixing',
  question: 'How much water to a kilogram of plaster?',
  description: 'Water by mass per mass of plaster for a kind of plaster.',
  equation: 'table: casting plaster 0.70, gypsum cement 0.38, dental stone 0.30',
  math: String.raw`r = \begin{cases} 0.70 & \text{casting plaster} \\ 0.38 & \text{gypsum cement} \\ 0.30 & \text{dental stone} \end{cases}
r = \text{water ratio}`,
  arguments: { plaster_kind: optional(single(word(SETTINGS.plaster.words, 'the kind of plaster'))) },
  settings: false,
  result: { kind: 'number', quantity: 'ratio', what: 'water by mass per mass of plaster' },
  examples: [
    { args: ['gypsum cement'], value: 0.38 },
    { args: ['casting plaster'], value: 0.7 },
  ],
  basis: 'published',
  source: 'published tables of consistency of gypsum plasters, cements and dental stones',
  remarks: ['The maker’s data sheet comes first. Left out, the plaster is gypsum cement.'],
  related: ['WATER', 'CONSISTENCY'],
  run: ({ plaster_kind }) => waterRatio(plaster_kind ?? SETTINGS.plaster.value),
});
