import { weight } from '../calculation/weight/weight.ts';
import { LAYERS, SHELL_AREA, SPECIMEN_OR_NONE } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'WEIGHT',
  topic: 'weight',
  question: 'What will it weigh when it is dry?',
  description: 'Dry weight of both halves with padding, and the specimen if given.',
  equation:
    'area·((layers·(layer thickness − m/ρ) + finish coat)·calibration·1.18618/V + layers·m + padding thickness·padding density) + specimen',
  math: String.raw`\text{weight} = \text{area}\left(G + \text{layers} \times m + t_{\text{padding}}\,\rho_{\text{padding}}\right) + \text{specimen}
G = \left(\text{layers}\left(t - \frac{m}{\rho}\right) + \text{finish coat}\right)\frac{1.18618}{V(r)} \times \text{calibration}
t = \text{layer thickness}, \quad m = \text{cloth weight}, \quad \rho = \text{glass density}
V = \text{slurry of 1 kg of plaster}, \quad r = \text{water ratio}`,
  arguments: { shell_area: SHELL_AREA, layers: LAYERS, specimen: SPECIMEN_OR_NONE },
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'dry weight' },
  examples: [
    { args: [1, 8], value: 22.30593945 },
    { args: [1, 8, 20], value: 42.30593945 },
    { args: [10, 8, 45, 'us'], value: 90.68616498 },
  ],
  basis: 'derived',
  source: 'absolute volumes; dry density of the set plaster within 2.5 % of published tables',
  hurts: ['lifting'],
  limits: [{ text: 'an estimate for planning: weigh before you lift' }],
  related: ['WET_WEIGHT', 'LAYERS', 'SHELL_AREA'],
  run: ({ shell_area, layers, specimen }, settings) => weight(shell_area, layers, specimen ?? 0, settings),
});
