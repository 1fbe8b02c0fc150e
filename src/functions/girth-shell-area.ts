import { girthShellArea } from '../calculation/shell/girth-shell-area.ts';
import { GIRTH_LIMIT, GIRTHS, STATIONS } from './calling/girths.ts';
import { define } from './define.ts';

export default define({
  id: 'GIRTH_SHELL_AREA',
  topic: 'shell',
  question: 'How much shell does a measured long bone want?',
  description: 'Area of both halves of a jacket for a long bone measured by girths.',
  equation:
    'the chain of frusta grown by the padding t, plus 2(P·f + πf²) with P = 2Σ√(Δx² + Δr²) + 2r of the first and the last station',
  math: String.raw`\text{area} = S_{\text{padded}} + 2\left(P f + \pi f^2\right)
P = 2\sum\sqrt{\Delta x^2 + \Delta r^2} + 2 r_1 + 2 r_n
f = \text{flange}, \quad r = \frac{\text{girth}}{2\pi} + \text{padding thickness}`,
  arguments: { stations: STATIONS, girths: GIRTHS },
  settings: true,
  result: { kind: 'number', quantity: 'area', what: 'area of both halves with their flanges' },
  examples: [
    {
      args: [
        [[0], [10], [40], [50]],
        [[40], [25], [25], [45]],
      ],
      value: 0.3538288698,
    },
    { args: [[[0], [4], [16], [20]], [[16], [10], [10], [18]], 'us'], value: 3.89626897 },
  ],
  basis: 'derived',
  source: 'lateral area of a cone frustum; flange width: assumption',
  limits: [GIRTH_LIMIT],
  related: ['GIRTH_AREA', 'SHELL_AREA', 'PLASTER'],
  run: ({ stations, girths }, settings) => girthShellArea(stations, girths, settings),
});
