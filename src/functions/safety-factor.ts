import { safetyFactor } from '../calculation/strength/safety-factor.ts';
import { HALF, HALF_LIMITS, HALF_REMARK, HALF_SOURCE } from './calling/half.ts';
import { define } from './define.ts';

export default define({
  id: 'SAFETY_FACTOR',
  topic: 'strength',
  question: 'Is the lower half strong enough?',
  description: 'Least of allowed over stress for the three ways the lower half can fail.',
  equation: 'least factor of STRENGTH',
  math: String.raw`\text{factor} = \underset{\text{way}}{\min}\ \frac{\text{allowed}}{\text{stress}}`,
  arguments: HALF,
  settings: true,
  result: { kind: 'number', quantity: 'ratio', what: 'safety factor' },
  examples: [
    { args: [120, 40, 30, 50, 8], value: 9.589162895 },
    { args: [120, 40, 30, 50, 8, [['condition', 'wet']]], value: 4.794581447 },
  ],
  basis: 'derived',
  source: HALF_SOURCE,
  remarks: [HALF_REMARK, 'Compare it with the setting target safety factor, 2.'],
  hurts: ['strength'],
  limits: HALF_LIMITS,
  related: ['STRENGTH', 'LAYERS_NEEDED', 'RIB_HEIGHT'],
  run: ({ length, width, height, total_weight, layers }, settings) =>
    safetyFactor(length, width, height, total_weight, layers, settings),
});
