import { crew } from '../calculation/handling/crew.ts';
import { optional, quantity } from './calling/arguments.ts';
import { TOTAL_WEIGHT } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'CREW',
  topic: 'handling',
  question: 'How many people to lift it?',
  description: 'People for a lift: 1, 2, 3 or hoist.',
  equation:
    'one person: one-person limit × min(1, 25/(20 + width/2)) in cm; two share 2/3 and three 1/2 of the sum of their limits; above: hoist',
  math: String.raw`m = L \times \min\left(1,\ \frac{25}{20 + \text{width}/2}\right), \quad L = \text{one-person limit}
\text{crew} = \begin{cases} 1 & \text{weight} \le m \\ 2 & \text{weight} \le \frac{2}{3} \times 2L \\ 3 & \text{weight} \le \frac{1}{2} \times 3L \\ \text{hoist} & \text{above} \end{cases}`,
  arguments: {
    total_weight: TOTAL_WEIGHT,
    width: optional(quantity('length', 'the width of the jacket, for the reach')),
  },
  settings: true,
  result: { kind: 'numberOrText', what: 'number of people, or hoist' },
  examples: [
    { args: [20], value: 1 },
    { args: [20, 60], value: 2 },
    { args: [33], value: 3 },
    { args: [35], value: 'hoist' },
  ],
  basis: 'published',
  source:
    'team shares: HSE L23, Manual handling; one-person limit and reach: NIOSH Publication 94-110; local rules come first',
  remarks: ['Left out, the width is that of a load held close to the body.'],
  hurts: ['lifting'],
  limits: [
    {
      text: 'an estimate for planning, for people who are about equally strong and lift together, hands no lower than 25 cm',
    },
    { text: 'above three people no share is published' },
  ],
  related: ['LIFT_LIMIT', 'WEIGHT'],
  run: ({ total_weight, width }, { onePersonLimit }) => crew(total_weight, onePersonLimit, width ?? null),
});
