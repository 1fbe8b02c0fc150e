import { mixTemperature } from '../calculation/mixing/mix-temperature.ts';
import { optional, quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'MIX_TEMPERATURE',
  topic: 'mixing',
  question: 'How hot can a thick mix get?',
  description: 'Highest possible temperature of a thick setting mix.',
  equation: 'start + q/(1.18618·1.0815 + (r − 0.18618)·4.184), q = 133 kJ/kg from a water ratio r of 0.5, 118 below',
  math: String.raw`T = T_{\text{start}} + \frac{q}{1.18618 \times 1.0815 + \left(r - 0.18618\right) \times 4.184}
q = \begin{cases} 133\ \text{kJ/kg} & r \ge 0.5 \\ 118\ \text{kJ/kg} & r < 0.5 \end{cases}
r = \text{water ratio}`,
  arguments: {
    temperature: optional(quantity('temperature', 'the temperature of water and plaster', { signed: true })),
  },
  settings: true,
  result: { kind: 'number', quantity: 'temperature', what: 'highest possible temperature' },
  examples: [
    { args: [20], value: 76.35695598 },
    { args: [68, 'us'], value: 169.442520764 },
  ],
  basis: 'derived',
  source: 'heat of hydration: NBS tables (Wagman et al. 1982), from memory; heat capacity of gypsum: BRGM database',
  remarks: [
    'Left out, the mix starts at the setting room temperature.',
    'An upper bound: no heat is lost. Plaster of 46.9 to 50.8 °C in a vessel and of 70 °C in a block has been measured, and harm begins near 45 °C.',
  ],
  hurts: ['heat'],
  limits: [{ text: 'an upper bound for a thick mass; a thin shell stays cooler' }],
  related: ['MIXES'],
  run: ({ temperature }, settings) => mixTemperature(temperature ?? settings.roomTemperature, settings),
});
