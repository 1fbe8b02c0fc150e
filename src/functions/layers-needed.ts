import { layersNeeded, limits } from '../calculation/shell/layers-needed.ts';
import { HEIGHT, LENGTH, SPECIMEN_WEIGHT, WIDTH } from './calling/common.ts';
import { HALF_SOURCE } from './calling/half.ts';
import { limitsFrom } from './calling/limits.ts';
import { define } from './define.ts';

export default define({
  id: 'LAYERS_NEEDED',
  topic: 'shell',
  question: 'How many layers until it is strong enough?',
  description: 'Least layers, cover layers included, at which the safety factor reaches its target.',
  equation:
    'least whole number from least to most layers with SAFETY_FACTOR of the whole, its own weight with it, at the target',
  math: String.raw`n = \min\left\{\,k : \text{SAFETY\_FACTOR}(k) \ge \text{target}\,\right\}, \quad \text{least layers} \le k \le \text{most layers}`,
  arguments: { length: LENGTH, width: WIDTH, height: HEIGHT, weight: SPECIMEN_WEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'count', what: 'layers, cover layers included' },
  examples: [{ args: [120, 80, 60, 300], value: 15 }],
  basis: 'derived',
  source: HALF_SOURCE,
  hurts: ['strength'],
  limits: [
    ...limitsFrom(
      limits,
      (v: { length: number; width: number; height: number; weight: number }, settings) =>
        [v.length, v.width, v.height, v.weight, settings] as const,
    ),
    { text: 'an estimate for planning: static, no impact, no creep, no end that is dropped' },
  ],
  related: ['LAYERS', 'SAFETY_FACTOR'],
  run: ({ length, width, height, weight }, settings) => layersNeeded(length, width, height, weight, settings),
});
