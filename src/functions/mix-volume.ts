import { mixVolume } from '../calculation/mixing/mix-volume.ts';
import { quantity } from './calling/arguments.ts';
import { define } from './define.ts';

export default define({
  id: 'MIX_VOLUME',
  topic: 'mixing',
  question: 'How much slurry does that make?',
  description: 'Volume of slurry from this much dry plaster.',
  equation: 'plaster·(1/ρ + r/0.998), ρ 2.63 kg/L from a water ratio r of 0.5, 2.76 kg/L below',
  math: String.raw`\text{slurry} = \text{plaster} \times V(r), \quad V(r) = \frac{1}{\rho} + \frac{r}{0.998}
\rho = \begin{cases} 2.63\ \text{kg/L} & r \ge 0.5 \\ 2.76\ \text{kg/L} & r < 0.5 \end{cases}
r = \text{water ratio}`,
  arguments: { plaster: quantity('mass', 'the dry plaster') },
  settings: true,
  result: { kind: 'number', quantity: 'liquidVolume', what: 'slurry' },
  examples: [{ args: [10], value: 7.430803636 }],
  basis: 'derived',
  source: 'absolute volumes; densities of the two hemihydrates from mineral data',
  related: ['PLASTER', 'MIXES'],
  run: ({ plaster }, settings) => mixVolume(plaster, settings),
});
