import { limits, tipAngle } from '../calculation/feet/tip-angle.ts';
import { quantity } from './calling/arguments.ts';
import { BALANCE, balanceOf, FEET, FEET_REMARK } from './calling/feet.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'TIP_ANGLE',
  topic: 'feet',
  question: 'How far may it tilt before it tips?',
  description: 'Angle at which the jacket tips over its weakest edge.',
  equation: 'atan(margin/balance height)',
  math: String.raw`\text{angle} = \arctan\frac{\text{margin}}{\text{balance height}}`,
  arguments: { feet: FEET, balance: BALANCE, balance_height: quantity('length', 'the height of the balance point') },
  settings: false,
  result: { kind: 'number', quantity: 'angle', what: 'tip angle' },
  examples: [
    {
      args: [
        [
          [-25, -12],
          [25, -12],
          [0, 18],
        ],
        [[2, 1]],
        25,
      ],
      value: 20.49914593,
    },
  ],
  basis: 'derived',
  source: 'statics of a rigid body; to the centres of the feet, on the safe side by half a foot',
  remarks: [FEET_REMARK],
  hurts: ['stability'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { feet: Parameters<typeof tipAngle>[0]; balance: Parameters<typeof balanceOf>[0]; balance_height: number }) =>
        [v.feet, balanceOf(v.balance), v.balance_height] as const,
    ),
    { text: 'an estimate for planning: nothing pushes, rolls or drops the jacket' },
  ],
  related: ['STABLE', 'MARGIN', 'FEET'],
  run: ({ feet, balance, balance_height }) => tipAngle(feet, balanceOf(balance), balance_height),
});
