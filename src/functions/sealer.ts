import { sealer } from '../calculation/cloth/sealer.ts';
import { SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'SEALER',
  topic: 'cloth',
  question: 'How much sealing solution?',
  description: 'Volume of thin sealing solution for the dry shell.',
  equation: 'area × coats ÷ coverage × (1 + waste)',
  math: String.raw`\text{sealer} = \frac{\text{area} \times \text{coats}}{\text{coverage}}\left(1 + \text{waste}\right)`,
  arguments: { shell_area: SHELL_AREA },
  settings: true,
  result: { kind: 'number', quantity: 'liquidVolume', what: 'sealing solution' },
  examples: [{ args: [1], value: 0.1375 }],
  basis: 'assumption',
  source: 'coverage and coats: assumptions; the maker’s data sheet comes first',
  remarks: ['Only on a dry shell: at least 24 hours of drying come first.'],
  hurts: ['solvent'],
  related: ['DRY_TIME', 'DRYNESS'],
  run: ({ shell_area }, settings) => sealer(shell_area, settings),
});
