import { wetWeight } from '../calculation/weight/wet-weight.ts';
import { LAYERS, SHELL_AREA, SPECIMEN_OR_NONE } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'WET_WEIGHT',
  topic: 'weight',
  question: 'What will it weigh on the day it is made?',
  description: 'Weight of both halves while wet, and the specimen if given.',
  equation: 'as WEIGHT, with (1 + water ratio)/V for the plaster',
  math: String.raw`\text{weight} = \text{area}\left(G + \text{layers} \times m + t_{\text{padding}}\,\rho_{\text{padding}}\right) + \text{specimen}
G = \left(\text{layers}\left(t - \frac{m}{\rho}\right) + \text{finish coat}\right)\frac{1 + r}{V(r)} \times \text{calibration}
t = \text{layer thickness}, \quad m = \text{cloth weight}, \quad \rho = \text{glass density}
V = \text{slurry of 1 kg of plaster}, \quad r = \text{water ratio}`,
  arguments: { shell_area: SHELL_AREA, layers: LAYERS, specimen: SPECIMEN_OR_NONE },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'wet weight' },
  examples: [
    { args: [1, 8], value: 25.52964468 },
    { args: [10, 8, 45, 'us'], value: 97.28883372 },
  ],
  basis: 'derived',
  source: 'absolute volumes; wet density of the mix within 2.5 % of published tables',
  hurts: ['lifting'],
  limits: [{ text: 'an estimate for planning: weigh before you lift' }],
  related: ['WEIGHT', 'DRYNESS'],
  run: ({ shell_area, layers, specimen }, settings) => wetWeight(shell_area, layers, specimen ?? 0, settings),
});
