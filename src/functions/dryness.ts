import { dryness } from '../calculation/weight/dryness.ts';
import { quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'DRYNESS',
  topic: 'weight',
  question: 'Is it dry yet?',
  description: 'Share of the free water that is gone, from three weights.',
  equation: '(wet − reading)/(wet − dry), held to 0 and 1',
  math: String.raw`\text{dryness} = \min\left(1,\ \max\left(0,\ \frac{\text{wet} - \text{reading}}{\text{wet} - \text{dry}}\right)\right)`,
  arguments: {
    reading: quantity('mass', 'the weight on the scale now', { zero: true }),
    wet: quantity('mass', 'the wet weight, in the same unit'),
    dry: quantity('mass', 'the dry weight to expect, in the same unit'),
  },
  settings: false,
  result: { kind: 'number', quantity: 'fraction', what: 'share of the free water that is gone' },
  examples: [{ args: [23, 25.5, 22.3], value: 0.78125 }],
  basis: 'derived',
  source: 'mass balance; strength returns from about 0.93 (trade bulletin on drying plaster casts)',
  related: ['DRY_TIME', 'WET_WEIGHT', 'WEIGHT'],
  run: ({ reading, wet, dry }) => dryness(reading, wet, dry),
});
