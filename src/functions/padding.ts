import { padding } from '../calculation/cloth/padding.ts';
import { SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'PADDING',
  topic: 'cloth',
  question: 'How much felt or foam?',
  description: 'Sheets of padding for a shell of this area, not rounded.',
  equation: 'area·(1 + waste)/sheet area; padding covers the flange too',
  math: String.raw`\text{sheets} = \frac{\text{area} \times \left(1 + \text{waste}\right)}{\text{sheet length} \times \text{sheet width}}`,
  arguments: { shell_area: SHELL_AREA },
  settings: true,
  result: { kind: 'number', quantity: 'count', what: 'sheets of padding' },
  examples: [{ args: [2.9], value: 0.9538020619 }],
  basis: 'derived',
  source: 'area over area; sheet size 108 × 48 in from memory',
  remarks: ['Not rounded, since small jackets share a sheet. Round the sum of a season.'],
  related: ['PADDING_CHOICE', 'CLOTH'],
  run: ({ shell_area }, settings) => padding(shell_area, settings),
});
