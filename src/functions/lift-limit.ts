import { liftLimit, limits } from '../calculation/handling/lift-limit.ts';
import { LIFT_ARGUMENTS, LIFT_SOURCE } from './calling/lift.ts';
import { define } from './define.ts';

export default define({
  id: 'LIFT_LIMIT',
  topic: 'handling',
  question: 'How much may one person lift here?',
  description: 'Recommended weight limit for one person with two hands.',
  equation:
    'LC·HM·VM·DM·AM·FM·CM: load constant 23 kg or 51 lb times six multipliers for reach, height, travel, twist, rate and grip',
  math: String.raw`\text{limit} = \text{LC} \times \text{HM} \times \text{VM} \times \text{DM} \times \text{AM} \times \text{FM} \times \text{CM}`,
  arguments: LIFT_ARGUMENTS,
  settings: true,
  result: { kind: 'number', quantity: 'mass', what: 'recommended weight limit', asTyped: true },
  examples: [
    { args: [40, 70, 50, 30, 1, 1, 'fair'], value: 10.40172495 },
    { args: [16, 28, 20, 30, 1, 1, 'fair', 'us'], value: 23.06469445 },
    { args: [64, 70, 50, 30, 1, 1, 'fair'], value: 0 },
  ],
  basis: 'published',
  source: LIFT_SOURCE,
  remarks: [
    'A limit of 0 is a limit of 0, not an error: too far, too high or too often.',
    'Metric and US results differ a little, since the source publishes parallel constants. Most jackets give a fair or poor grip.',
  ],
  hurts: ['lifting'],
  limits,
  related: ['LIFT_INDEX', 'CREW'],
  run: (lift, _settings, system) => liftLimit(lift, system),
});
