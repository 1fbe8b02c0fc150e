import { ADVICE, PLAN_ROWS, type PlanRow } from '../calculation/plans/plan-rows.ts';
import { type WholePlan, wholePlan } from '../calculation/plans/whole-plan.ts';
import { isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { HEIGHT, LENGTH, SPECIMEN_WEIGHT, WIDTH } from './calling/common.ts';
import { planCell } from './calling/plan-table.ts';
import { type TableCell, unitOf } from './calling/tables.ts';
import { fromSi, type UnitSystem } from './calling/units.ts';
import { define } from './define.ts';

const HEADER = ['item', 'felt', 'foam', 'foam − felt', 'unit', 'felt low', 'felt high', 'foam low', 'foam high'];

/** The difference of the two cells as they are shown; blank for words, the error where there is one. */
const differenceOf = ({ of, quantity }: PlanRow, felt: WholePlan, foam: WholePlan, system: UnitSystem): TableCell => {
  const [a, b] = [felt.plan[of], foam.plan[of]];
  if (quantity === null) return null;
  if (isFault(a)) return a;
  if (isFault(b)) return b;
  return typeof a === 'number' && typeof b === 'number'
    ? fromSi(b, quantity, system) - fromSi(a, quantity, system)
    : null;
};

const endCells = ({ of, quantity }: PlanRow, { ends }: WholePlan): TableCell[] => {
  const both = ends[of];
  return both ? [planCell(both.low, quantity), planCell(both.high, quantity)] : [null, null];
};

export default define({
  id: 'COMPARE',
  topic: 'jobs',
  question: 'Felt or foam: what is the difference?',
  description: 'The plan of one jacket with felt and with foam, side by side.',
  equation: 'PLAN with felt and PLAN with foam; the difference is foam − felt',
  math: String.raw`\text{difference} = \text{PLAN}_{\text{foam}} - \text{PLAN}_{\text{felt}}`,
  arguments: { length: single(LENGTH), width: single(WIDTH), height: single(HEIGHT), weight: single(SPECIMEN_WEIGHT) },
  settings: true,
  result: {
    kind: 'table',
    what: 'item, felt, foam, foam − felt, unit, felt low, felt high, foam low, foam high',
    header: true,
  },
  examples: [
    {
      args: [60, 40, 30, 20],
      value: [HEADER, ['padding', 'felt', 'foam', '', '']],
    },
  ],
  basis: 'derived',
  source: 'the single functions; each names its own source',
  remarks: [
    'Both have the padding thickness of the settings, and a padding density set by hand counts for both; compare two PLANs where yours differ.',
  ],
  hurts: ['dust', 'heat', 'lifting', 'solvent', 'stability', 'strength'],
  limits: [
    {
      text: 'estimates for planning: weigh the jacket before you lift it, and see that it is dry before you trust its strength',
    },
  ],
  related: ['PLAN', 'PADDING_CHOICE'],
  run: ({ length, width, height, weight }, settings, system) => {
    const specimen = { length, width, height, weight };
    const felt = wholePlan(specimen, 'felt', settings);
    if (isFault(felt)) return felt;
    const foam = wholePlan(specimen, 'foam', settings);
    if (isFault(foam)) return foam;
    return [
      HEADER,
      ...PLAN_ROWS.map((row): TableCell[] => [
        row.label,
        planCell(felt.plan[row.of], row.quantity),
        planCell(foam.plan[row.of], row.quantity),
        differenceOf(row, felt, foam, system),
        row.quantity && unitOf(row.quantity),
        ...endCells(row, felt),
        ...endCells(row, foam),
      ]),
      [ADVICE, felt.advice, foam.advice, ...HEADER.slice(3).map(() => null)],
    ];
  },
});
