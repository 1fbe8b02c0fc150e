import { cloth } from '../calculation/cloth/cloth.ts';
import { LAYERS, SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'CLOTH',
  topic: 'cloth',
  question: 'How much glass cloth?',
  description: 'Running length of cloth off the roll, laps and waste included.',
  equation: 'area·layers·(piece/(piece − lap))²·(1 + waste)/roll width',
  math: String.raw`\text{cloth} = \frac{\text{area} \times \text{layers}}{\text{roll width}}\left(\frac{\text{piece}}{\text{piece} - \text{lap}}\right)^2\left(1 + \text{waste}\right)`,
  arguments: { shell_area: SHELL_AREA, layers: LAYERS },
  settings: true,
  result: { kind: 'number', quantity: 'clothLength', what: 'cloth off the roll' },
  examples: [{ args: [1, 8], value: 8.92840915 }],
  basis: 'derived',
  source: 'squares that lap on two sides; piece size, lap and waste: assumptions',
  hurts: ['dust'],
  related: ['PLASTER', 'PADDING'],
  run: ({ shell_area, layers }, settings) => cloth(shell_area, layers, settings),
});
