import { amount, isFault } from '../calculation/result.ts';
import { strength } from '../calculation/strength/strength.ts';
import { single } from './calling/arguments.ts';
import { HALF, HALF_LIMITS, HALF_REMARK, HALF_SOURCE } from './calling/half.ts';
import { define } from './define.ts';

export default define({
  id: 'STRENGTH',
  topic: 'strength',
  question: 'How hard is the lower half stressed, and where?',
  description: 'Stress, allowed stress and safety factor for three ways the lower half can fail.',
  equation:
    'along its length: M·c/I of the section with its flanges; across: 6·weight·g·span/(8·length)/s²; over one foot: the smaller of a flat plate and a shallow shell under half the weight',
  math: String.raw`\sigma_{\text{along}} = \frac{M\,c}{I}
\sigma_{\text{across}} = \frac{6}{s^2} \times \frac{\text{weight} \times g \times \text{span}}{8 \times \text{length}}
\sigma_{\text{foot}} = \min\left(\sigma_{\text{plate}},\ \sigma_{\text{shell}}\right) \quad \text{under half of the weight}
s = \text{thickness of the shell}, \quad c = \text{outer fibre}, \quad I = \text{second moment}`,
  arguments: {
    length: single(HALF.length),
    width: single(HALF.width),
    height: single(HALF.height),
    total_weight: single(HALF.total_weight),
    layers: single(HALF.layers),
  },
  settings: true,
  result: { kind: 'table', what: 'way, stress, allowed, factor, three rows', header: true },
  examples: [
    {
      args: [120, 40, 30, 50, 8],
      value: [
        ['way', 'stress', 'allowed', 'factor'],
        ['along its length, on its feet', 0.04607014241, 8.273708752, 179.5893896],
        ['across, lifted by the flanges', 0.7483736048, 8.273708752, 11.055586],
        ['over one foot', 0.8628186675, 8.273708752, 9.589162895],
      ],
    },
  ],
  basis: 'derived',
  source: HALF_SOURCE,
  remarks: [HALF_REMARK],
  hurts: ['strength'],
  limits: HALF_LIMITS,
  related: ['SAFETY_FACTOR', 'RIB_HEIGHT', 'LAYERS_NEEDED', 'BENDING'],
  run: ({ length, width, height, total_weight, layers }, settings) => {
    const ways = strength(length, width, height, total_weight, layers, settings);
    if (isFault(ways)) return ways;
    return [
      ['way', 'stress', 'allowed', 'factor'],
      ...ways.map(({ way, stress, allowed, factor }) => [
        way,
        amount(stress, 'strength'),
        amount(allowed, 'strength'),
        factor,
      ]),
    ];
  },
});
