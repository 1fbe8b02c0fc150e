import { mixTable } from '../calculation/mixing/mix-table.ts';
import { amount, isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { LAYERS, SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

const HEADER = ['mix', 'half', 'water mass', 'water volume', 'plaster', 'slurry'];

export default define({
  id: 'MIX_TABLE',
  topic: 'mixing',
  question: 'What goes into each bucket?',
  description: 'Table of all mixes: half, water by mass and volume, plaster, slurry.',
  equation:
    'plaster of one mix = PLASTER/MIXES, equal within each half; water = ratio × plaster; slurry = V × plaster, V slurry volume of 1 kg plaster',
  math: String.raw`\text{plaster of one mix} = \frac{\text{PLASTER}}{\text{MIXES}}
\text{water} = r \times \text{plaster}, \quad \text{slurry} = V(r) \times \text{plaster}
V = \text{slurry of 1 kg of plaster}, \quad r = \text{water ratio}`,
  arguments: { shell_area: single(SHELL_AREA), layers: single(LAYERS) },
  settings: true,
  result: {
    kind: 'table',
    what: 'mix, half, water mass (kg, us: lb), water volume (L, us: US qt), plaster (kg, us: lb), slurry (L, us: US qt)',
    header: true,
  },
  examples: [
    {
      args: [1, 8],
      value: [HEADER, [1, 'lower', 3.47618612, 3.483152425, 9.14785821, 6.797593802], [2, 'upper']],
    },
  ],
  basis: 'derived',
  source:
    'absolute volumes of plaster and water, published tables of consistency; waste is included; least number of mixes: common practice, no source',
  remarks: [
    'Water first: plaster goes into the water, never the other way, soaks some minutes, then is stirred.',
    'A mix stays workable for about 40 minutes (common practice, no source); the maker’s data sheet comes first.',
    'A half padded with foam takes two mixes or more: the second within about an hour, on the wetted first (common practice, no source).',
  ],
  hurts: ['dust', 'heat'],
  related: ['MIXES', 'PLASTER', 'WATER', 'SCHEDULE'],
  run: ({ shell_area, layers }, settings) => {
    const list = mixTable(shell_area, layers, settings);
    if (isFault(list)) return list;
    return [
      HEADER,
      ...list.map(({ mix, half, water, waterVolume, plaster, slurry }) => [
        mix,
        half,
        amount(water, 'mass'),
        amount(waterVolume, 'liquidVolume'),
        amount(plaster, 'mass'),
        amount(slurry, 'liquidVolume'),
      ]),
    ];
  },
});
