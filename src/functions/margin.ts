import { margin } from '../calculation/feet/margin.ts';
import { BALANCE_OR_MIDDLE, balanceOf, FEET, FEET_REMARK, PLANNING_LIMIT } from './calling/feet.ts';
import { define } from './define.ts';

export default define({
  id: 'MARGIN',
  topic: 'feet',
  question: 'How far is the balance point from tipping?',
  description: 'Least distance of the balance point to an edge between the feet.',
  equation: 'least distance to the three edges; outside the triangle minus the distance to the nearest edge',
  math: String.raw`\text{margin} = \pm\,\underset{\text{edge}}{\min}\ d\left(\text{balance point},\ \text{edge}\right)`,
  arguments: { feet: FEET, balance: BALANCE_OR_MIDDLE },
  settings: false,
  result: { kind: 'number', quantity: 'length', what: 'margin, in the unit of the feet' },
  examples: [
    {
      args: [
        [
          [-25, -12],
          [25, -12],
          [0, 18],
        ],
        [[0, -15]],
      ],
      value: -3,
    },
  ],
  basis: 'derived',
  source: 'static stability margin: McGhee and Frank 1968, Math. Biosci. 3:331 (from memory)',
  remarks: [FEET_REMARK, 'Below 0 the balance point is outside the feet and the jacket tips.'],
  hurts: ['stability'],
  limits: [PLANNING_LIMIT],
  related: ['FEET', 'TIP_ANGLE'],
  run: ({ feet, balance }) => margin(feet, balanceOf(balance)),
});
