import { stable } from '../calculation/feet/stable.ts';
import { quantity } from './calling/arguments.ts';
import { BALANCE, balanceOf, FEET, FEET_REMARK } from './calling/feet.ts';
import { define } from './define.ts';

export default define({
  id: 'STABLE',
  topic: 'feet',
  question: 'Will it stand?',
  description: 'Whether the jacket may tilt as far as the least tilt without tipping.',
  equation: 'tip angle ≥ least tilt',
  math: String.raw`\text{stable} = \left(\text{tip angle} \ge \text{least tilt}\right)`,
  arguments: { feet: FEET, balance: BALANCE, balance_height: quantity('length', 'the height of the balance point') },
  settings: true,
  result: { kind: 'flag', what: 'TRUE or FALSE' },
  examples: [
    {
      args: [
        [
          [-25, -12],
          [25, -12],
          [0, 18],
        ],
        [[2, 1]],
        60,
      ],
      value: false,
    },
  ],
  basis: 'published',
  source: 'IEC 60601-1, 10 degrees in transport, used as a yardstick; no rule for jackets was found',
  remarks: [FEET_REMARK],
  hurts: ['stability'],
  limits: [{ text: 'an estimate for planning: nothing pushes, rolls or drops the jacket' }],
  related: ['TIP_ANGLE', 'FEET'],
  run: ({ feet, balance, balance_height }, settings) => stable(feet, balanceOf(balance), balance_height, settings),
});
