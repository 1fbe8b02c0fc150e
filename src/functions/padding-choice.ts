import { paddingChoice } from '../calculation/cloth/padding-choice.ts';
import { flag } from './calling/arguments.ts';
import { SPECIMEN_WEIGHT } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'PADDING_CHOICE',
  topic: 'cloth',
  question: 'Felt or foam?',
  description: 'Felt or foam for a specimen, by weight, fragility and relief.',
  equation: 'felt if fragile, or of high relief, or below the foam weight; else foam',
  math: String.raw`\text{padding} = \begin{cases} \text{felt} & \text{fragile, or high relief, or weight} < \text{foam weight} \\ \text{foam} & \text{else} \end{cases}`,
  arguments: {
    weight: SPECIMEN_WEIGHT,
    fragile: flag('TRUE if it is fragile, else FALSE'),
    relief: flag('high or low', 'high', 'low'),
  },
  settings: true,
  result: { kind: 'text', what: 'felt or foam' },
  examples: [
    { args: [20, false, 'low'], value: 'felt' },
    { args: [60, false, 'low'], value: 'foam' },
    { args: [60, true, 'low'], value: 'felt' },
  ],
  basis: 'common practice',
  source:
    'common practice, no source: felt for small, fragile or high-relief specimens, foam for larger and heavier ones',
  related: ['PADDING'],
  run: ({ weight, fragile, relief }, settings) => paddingChoice(weight, fragile, relief, settings),
});
