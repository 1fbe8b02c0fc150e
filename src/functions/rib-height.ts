import { ribHeight } from '../calculation/strength/rib-height.ts';
import { HALF, HALF_LIMITS, HALF_REMARK, HALF_SOURCE } from './calling/half.ts';
import { define } from './define.ts';

export default define({
  id: 'RIB_HEIGHT',
  topic: 'strength',
  question: 'Does the lower half want a rib, and how high?',
  description: 'Height of a rib under the lower half, or 0 where none is needed.',
  equation:
    'least height of the foam core in 0.5 cm steps at which bending along the length reaches the target: two webs and a cap of rib layers, the foam carries nothing',
  math: String.raw`h = \min\left\{\,k \times 0.5\,\text{cm} : \text{factor along the length}(k) \ge \text{target}\,\right\}`,
  arguments: HALF,
  settings: true,
  result: { kind: 'number', quantity: 'length', what: 'rib height' },
  examples: [
    { args: [120, 40, 30, 50, 8], value: 0 },
    { args: [300, 30, 15, 350, 5, [['condition', 'wet']]], value: 8 },
  ],
  basis: 'derived',
  source: HALF_SOURCE,
  remarks: [
    HALF_REMARK,
    'Strength is in the layers, the foam is only a spacer: common practice, no source.',
    '0 says only that bending along the length needs none: SAFETY_FACTOR looks at all three ways.',
  ],
  hurts: ['strength'],
  limits: HALF_LIMITS,
  related: ['SAFETY_FACTOR', 'STRENGTH'],
  run: ({ length, width, height, total_weight, layers }, settings) =>
    ribHeight(length, width, height, total_weight, layers, settings),
});
