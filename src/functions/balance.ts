import { balance } from '../calculation/feet/balance.ts';
import { isFault, wrong } from '../calculation/result.ts';
import { numbers } from './calling/arguments.ts';
import { FEET, FEET_REMARK } from './calling/feet.ts';
import { define } from './define.ts';

/** A scale stands under each foot. */
const SCALES = 3;

export default define({
  id: 'BALANCE',
  topic: 'feet',
  question: 'Where is the balance point?',
  description: 'Balance point from a scale reading under each foot.',
  equation: 'Σ reading × position / Σ reading',
  math: String.raw`\mathbf{b} = \frac{\sum r_i\,\mathbf{p}_i}{\sum r_i}
r_i = \text{readings}, \quad \mathbf{p}_i = \text{places of the feet}`,
  arguments: { feet: FEET, readings: numbers('mass', 'the three scale readings', { zero: true }) },
  settings: false,
  result: {
    kind: 'table',
    what: 'x and y of the balance point, one row, in the unit of the feet',
    header: false,
    quantity: 'length',
  },
  examples: [
    {
      args: [
        [
          [0, 0],
          [60, 0],
          [20, 40],
        ],
        [[191.6666667], [158.3333333], [150]],
      ],
      value: [[25, 12]],
    },
  ],
  basis: 'derived',
  source: 'statics: moments about the origin',
  remarks: [FEET_REMARK],
  hurts: ['stability'],
  limits: [{ text: 'an estimate for planning: read all three scales while the jacket stands level and still' }],
  related: ['FEET', 'FOOT_LOADS'],
  run: ({ feet, readings }) => {
    const given = readings.filter((one) => one !== null);
    if (given.length !== readings.length)
      return wrong('readings:', `cell ${readings.indexOf(null) + 1} is blank; read all three scales`);
    if (given.length !== SCALES) return wrong('readings', `must be three numbers, not ${given.length}`);
    const point = balance(feet, [given[0]!, given[1]!, given[2]!]);
    return isFault(point) ? point : [[...point]];
  },
});
