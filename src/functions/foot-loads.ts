import { footLoads, limits } from '../calculation/feet/foot-loads.ts';
import { isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { TOTAL_WEIGHT } from './calling/common.ts';
import { BALANCE, balanceOf, FEET, FEET_REMARK } from './calling/feet.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'FOOT_LOADS',
  topic: 'feet',
  question: 'What does each foot carry?',
  description: 'Load on each of the three feet.',
  equation: 'total weight × barycentric coordinates of the balance point',
  math: String.raw`F_i = W\,\lambda_i, \quad \sum\lambda_i\,\mathbf{p}_i = \mathbf{b}, \quad \sum\lambda_i = 1
W = \text{weight}, \quad \mathbf{p}_i = \text{feet}, \quad \mathbf{b} = \text{balance point}`,
  arguments: { feet: FEET, balance: BALANCE, total_weight: single(TOTAL_WEIGHT) },
  settings: false,
  result: { kind: 'table', what: 'load on each foot, three rows, in the unit of the weight', header: false },
  examples: [
    {
      args: [
        [
          [-25, -12],
          [25, -12],
          [0, 18],
        ],
        [[2, 1]],
        40,
      ],
      value: [[9.733333333], [12.93333333], [17.33333333]],
    },
  ],
  basis: 'derived',
  source: 'statics: three moments about three edges',
  remarks: [FEET_REMARK],
  hurts: ['stability'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { feet: Parameters<typeof footLoads>[0]; balance: Parameters<typeof balanceOf>[0]; total_weight: number }) =>
        [v.feet, balanceOf(v.balance), v.total_weight] as const,
    ),
    { text: 'an estimate for planning' },
  ],
  related: ['FEET', 'FOOT_PRESSURE', 'BALANCE'],
  run: ({ feet, balance, total_weight }) => {
    const loads = footLoads(feet, balanceOf(balance), total_weight);
    return isFault(loads) ? loads : loads.map((load) => [load]);
  },
});
