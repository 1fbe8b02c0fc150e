import { dryTime } from '../calculation/weight/dry-time.ts';
import { LAYERS } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'DRY_TIME',
  topic: 'weight',
  question: 'How long must it dry?',
  description: 'Hours of drying before sealing, at least 24.',
  equation:
    'free water per area ÷ ((p(Tw) − RH·p(T))·(0.089 + 0.0782·v)/(2501 − 2.381·Tw)), Tw wet-bulb temperature; at least 24 h',
  math: String.raw`\text{time} = \max\left(24\,\text{h},\ \frac{\text{free water per area}}{E}\right)
E = \frac{\left(p(T_w) - \text{RH}\,p(T)\right)\left(0.089 + 0.0782\,v\right)}{2501 - 2.381\,T_w}
T = \text{room temperature}, \quad T_w = \text{wet bulb}, \quad v = \text{air speed}
p = \text{saturation pressure}, \quad \text{RH} = \text{room humidity}`,
  arguments: { layers: LAYERS },
  settings: true,
  result: { kind: 'number', quantity: 'hours', what: 'hours of drying' },
  examples: [
    { args: [8], value: 57.31283256 },
    { args: [8, [['plaster', 'casting plaster']]], value: 104.3808841 },
    {
      args: [
        8,
        [
          ['room temperature', 25],
          ['room humidity', 0.4],
        ],
      ],
      value: 38.21243685,
    },
  ],
  basis: 'derived',
  source:
    'evaporation as in ASHRAE handbooks (from memory) at the wet-bulb temperature of Stull 2011, J. Appl. Meteor. Climatol. 50:2267; vapour pressure: Wagner and Pruß, IAPWS; 24 h: common practice, no source',
  remarks: [
    'Not before this: it counts one face and a constant rate, and the last tenth dries slower. Dry is when two weighings a day apart agree.',
  ],
  hurts: ['solvent'],
  limits: [{ text: 'the constant-rate part only; the whole may take twice as long' }],
  related: ['DRYNESS', 'SEALER'],
  run: ({ layers }, settings) => dryTime(layers, settings),
});
