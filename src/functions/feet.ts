import { feet, limits } from '../calculation/feet/feet.ts';
import { isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { LENGTH, TOTAL_WEIGHT, WIDTH } from './calling/common.ts';
import { BALANCE_OR_MIDDLE, balanceOf, FEET_REMARK, PLANNING_LIMIT } from './calling/feet.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'FEET',
  topic: 'feet',
  question: 'Where do the three feet go?',
  description: 'Positions of three feet that stand as firmly as the outline allows.',
  equation:
    'the triangle inside the padded outline, half a foot from its edge, with the largest least distance from the balance point to an edge; long and heavy: at 0.3·length each way',
  math: String.raw`\text{feet} = \underset{\text{triangle in the outline}}{\arg\max}\ \ \underset{\text{edge}}{\min}\ d\left(\text{balance point},\ \text{edge}\right)
x = \pm 0.3 \times \text{length} \quad \text{where long and heavy}`,
  arguments: {
    length: single(LENGTH),
    width: single(WIDTH),
    total_weight: single(TOTAL_WEIGHT),
    balance: BALANCE_OR_MIDDLE,
  },
  settings: true,
  result: { kind: 'table', what: 'x and y of each foot, three rows', header: false, quantity: 'length' },
  examples: [
    {
      args: [60, 40, 10],
      value: [
        [-9.696064208, -14.43591043],
        [25.635, 0],
        [-9.696064208, 14.43591043],
      ],
    },
    {
      args: [150, 40, 60, [[5, 0]]],
      value: [
        [45, 11.54590641],
        [45, -11.54590641],
        [-45, 0],
      ],
    },
  ],
  basis: 'derived',
  source:
    'static stability margin: McGhee and Frank 1968, Math. Biosci. 3:331 (from memory); three feet far apart, and about a fifth in from each end on long heavy jackets: common practice, no source',
  remarks: [FEET_REMARK, 'Three feet always touch, whatever the shelf is like.'],
  hurts: ['stability'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { length: number; width: number; total_weight: number; balance: Parameters<typeof balanceOf>[0] }, s) =>
        [v.length, v.width, v.total_weight, balanceOf(v.balance), s] as const,
    ),
    PLANNING_LIMIT,
  ],
  related: ['MARGIN', 'TIP_ANGLE', 'FOOT_LOADS', 'BALANCE'],
  run: ({ length, width, total_weight, balance }, settings) => {
    const three = feet(length, width, total_weight, balanceOf(balance), settings);
    return isFault(three) ? three : three.map((point) => [...point]);
  },
});
