import { shellArea } from '../calculation/shell/shell-area.ts';
import { HEIGHT, LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'SHELL_AREA',
  topic: 'shell',
  question: 'How much shell is there to lay up?',
  description: 'Area of both halves outside the padding, flanges included.',
  equation:
    'S + 2Mt + 4πt² + 2(P·f + πf²): S surface, M integral of mean curvature, t padding thickness, P seam, f flange',
  math: String.raw`\text{area} = S + 2 M t + 4\pi t^2 + 2\left(P f + \pi f^2\right)
P = \text{seam}, \quad f = \text{flange}, \quad t = \text{padding thickness}`,
  arguments: { length: LENGTH, width: WIDTH, height: HEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'area', what: 'area of both halves with their flanges' },
  examples: [
    { args: [60, 40, 30], value: 0.7923952088 },
    { args: [24, 16, 12, 'us'], value: 8.763418158 },
    {
      args: [
        60,
        40,
        30,
        [
          ['shape', 'box'],
          ['flange', 6],
        ],
      ],
      value: 1.399781656,
    },
  ],
  basis: 'derived',
  source: 'Steiner’s formula for parallel bodies (Schneider, Convex Bodies); flange width: assumption',
  limits: [{ text: 'three sizes tell a surface to about 15 % (setting shape uncertainty)' }],
  related: ['AREA', 'SEAM', 'PLASTER', 'CLOTH', 'PADDING'],
  run: ({ length, width, height }, settings) => shellArea(length, width, height, settings),
});
