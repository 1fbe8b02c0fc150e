import { plaster } from '../calculation/mixing/plaster.ts';
import { LAYERS, SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'PLASTER',
  topic: 'mixing',
  question: 'How much plaster?',
  description: 'Dry plaster for a shell of this area and number of layers.',
  equation:
    'area·(layers·(layer thickness − cloth weight/glass density) + finish coat)/V·(1 + waste)·calibration, V slurry volume of 1 kg plaster',
  math: String.raw`\text{plaster} = \frac{\text{area} \times d}{V(r)}\left(1 + \text{waste}\right) \times \text{calibration}
d = \text{layers}\left(t - \frac{m}{\rho}\right) + \text{finish coat}
t = \text{layer thickness}, \quad m = \text{cloth weight}, \quad \rho = \text{glass density}
V = \text{slurry of 1 kg of plaster}, \quad r = \text{water ratio}`,
  arguments: { shell_area: SHELL_AREA, layers: LAYERS },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'dry plaster' },
  examples: [
    { args: [1, 8], value: 18.29571642 },
    { args: [1, 8.5], value: 19.34667842 },
    {
      args: [
        10,
        8,
        [
          ['units', 'us'],
          ['waste', 0.2],
        ],
      ],
      value: 40.87917908,
    },
  ],
  basis: 'derived',
  source:
    'absolute volumes of plaster and water; checked against published wet and dry densities of gypsum plasters and cements',
  remarks: [
    'Layers may be a mean over an uneven shell, such as 8.5.',
    'Weigh what you really use and set the calibration.',
  ],
  hurts: ['dust', 'heat'],
  related: ['WATER', 'MIX_VOLUME', 'MIXES', 'LAYERS'],
  run: ({ shell_area, layers }, settings) => plaster(shell_area, layers, settings),
});
