import { mixes } from '../calculation/mixing/mixes.ts';
import { LAYERS, SHELL_AREA } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'MIXES',
  topic: 'mixing',
  question: 'How many mixes?',
  description: 'Number of mixes for both halves within bucket and working time.',
  equation:
    '2·max(1 with felt, 2 with foam, half the slurry/one mix rounded up); one mix = bucket, or laying rate × working time × plaster part of a layer if that is less',
  math: String.raw`\text{mixes} = 2 \times \max\left(\text{felt } 1 \text{ or foam } 2,\ \left\lceil\frac{\text{slurry of a half}}{\text{one mix}}\right\rceil\right)
\text{one mix} = \min\left(\text{bucket},\ \text{laying rate} \times \text{working time} \times \text{plaster part of a layer}\right)`,
  arguments: { shell_area: SHELL_AREA, layers: LAYERS },
  settings: true,
  result: { kind: 'number', quantity: 'count', what: 'mixes for both halves' },
  examples: [
    { args: [1, 8], value: 2 },
    { args: [1, 8, [['padding', 'foam']]], value: 4 },
  ],
  basis: 'common practice',
  source: 'common practice, no source: a felt-padded half can be done in one mix, a foam-padded half needs two',
  hurts: ['dust', 'heat'],
  related: ['PLASTER', 'MIX_VOLUME'],
  run: ({ shell_area, layers }, settings) => mixes(shell_area, layers, settings),
});
