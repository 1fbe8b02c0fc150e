import { seam } from '../calculation/shell/seam.ts';
import { LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'SEAM',
  topic: 'shell',
  question: 'How long is the seam between the halves?',
  description: 'Length of the seam where the two halves meet.',
  equation: 'perimeter of the outline seen from above + 2π × padding thickness',
  math: String.raw`\text{seam} = \text{perimeter of the outline} + 2\pi t
t = \text{padding thickness}`,
  arguments: { length: LENGTH, width: WIDTH },
  settings: true,
  result: { kind: 'number', quantity: 'length', what: 'seam length' },
  examples: [{ args: [60, 40], value: 162.6442186 }],
  basis: 'derived',
  source: 'perimeter of an ellipse by elliptic integrals (NIST DLMF 19.30) and of its parallel curve (Steiner)',
  related: ['SHELL_AREA'],
  run: ({ length, width }, settings) => seam(length, width, settings),
});
