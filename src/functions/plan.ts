import { ADVICE, PLAN_ROWS } from '../calculation/plans/plan-rows.ts';
import { wholePlan } from '../calculation/plans/whole-plan.ts';
import { isFault } from '../calculation/result.ts';
import { SETTINGS } from '../calculation/settings.ts';
import { optional, single, word } from './calling/arguments.ts';
import { HEIGHT, LENGTH, SPECIMEN_WEIGHT, WIDTH } from './calling/common.ts';
import { planCell } from './calling/plan-table.ts';
import { type TableCell, unitOf } from './calling/tables.ts';
import { define } from './define.ts';

const HEADER = ['item', 'value', 'unit', 'low', 'high'];

export default define({
  id: 'PLAN',
  topic: 'jobs',
  question: 'What does one jacket need, weigh and stand?',
  description: 'The whole plan of one jacket as a table: materials, weights, feet, strength, crew.',
  equation:
    'layer area = shell area × (LAYERS + cover layers) + edge strips + patches; the rest by the functions of the same names',
  math: String.raw`\text{layer area} = \text{shell area} \times \left(\text{LAYERS} + \text{cover layers}\right) + \text{edge strips} + \text{patches}`,
  arguments: {
    length: single(LENGTH),
    width: single(WIDTH),
    height: single(HEIGHT),
    weight: single(SPECIMEN_WEIGHT),
    padding: optional(single(word(SETTINGS.padding.words, 'felt or foam'))),
  },
  settings: true,
  result: { kind: 'table', what: 'item, value, unit, low, high', header: true },
  examples: [
    {
      args: [60, 40, 30, 20],
      value: [HEADER, ['padding', 'felt'], ['surface area', 0.5781205375, 'm²']],
    },
  ],
  basis: 'derived',
  source: 'the single functions; each names its own source',
  remarks: [
    'Low and high: each uncertain input is moved to the ends of its plausible range, one at a time, and the deviations are added in quadrature. SETTINGS shows the ranges.',
    'Mean layers counts edge strips and patches too, so that PLASTER of shell area and mean layers is the plaster of the plan.',
    'Feet and strength use the dry weight, turn weight and crew the wet weight.',
  ],
  hurts: ['dust', 'heat', 'lifting', 'solvent', 'stability', 'strength'],
  limits: [
    {
      text: 'estimates for planning: weigh the jacket before you lift it, and see that it is dry before you trust its strength',
    },
    {
      text: 'heavier than the most layers are meant for; have the jacket and its support designed by an engineer',
      holds: ({ weight }, { mostLayersWeight }) => weight <= mostLayersWeight,
    },
  ],
  related: ['COLLECTION', 'COMPARE', 'PADDING_CHOICE', 'SETTINGS'],
  run: ({ length, width, height, weight, padding }, settings) => {
    const whole = wholePlan({ length, width, height, weight }, padding, settings);
    if (isFault(whole)) return whole;
    return [
      HEADER,
      ...PLAN_ROWS.map(({ of, label, quantity }): TableCell[] => {
        const ends = whole.ends[of];
        return [
          label,
          planCell(whole.plan[of], quantity),
          quantity && unitOf(quantity),
          ends ? planCell(ends.low, quantity) : null,
          ends ? planCell(ends.high, quantity) : null,
        ];
      }),
      [ADVICE, whole.advice, null, null, null],
    ];
  },
});
