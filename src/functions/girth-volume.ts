import { girthVolume } from '../calculation/size/girth-volume.ts';
import { GIRTH_LIMIT, GIRTHS, STATIONS } from './calling/girths.ts';
import { define } from './define.ts';

export default define({
  id: 'GIRTH_VOLUME',
  topic: 'size',
  question: 'How large is the body of a long bone measured with a tape?',
  description: 'Body volume of a long bone from girths at stations.',
  equation: 'Σ π·h/3·(r₁² + r₁r₂ + r₂²) with radius girth/2π',
  math: String.raw`V = \sum\frac{\pi h_i}{3}\left(r_i^2 + r_i\,r_{i+1} + r_{i+1}^2\right), \quad r = \frac{\text{girth}}{2\pi}
h_i = \text{distance between stations}`,
  arguments: { stations: STATIONS, girths: GIRTHS },
  settings: true,
  result: { kind: 'number', quantity: 'bodyVolume', what: 'body volume of the bone' },
  examples: [
    {
      args: [
        [[0], [10], [40], [50]],
        [[40], [25], [25], [45]],
      ],
      value: 3.348885261,
    },
    { args: [[[0], [4], [16], [20]], [[16], [10], [10], [18]], 'us'], value: 0.1240327874 },
  ],
  basis: 'derived',
  source: 'volume of a cone frustum, as foresters measure logs',
  limits: [GIRTH_LIMIT],
  related: ['GIRTH_AREA', 'SPECIMEN_WEIGHT'],
  run: ({ stations, girths }) => girthVolume(stations, girths),
});
