import { girthArea } from '../calculation/size/girth-area.ts';
import { GIRTH_LIMIT, GIRTHS, STATIONS } from './calling/girths.ts';
import { define } from './define.ts';

export default define({
  id: 'GIRTH_AREA',
  topic: 'size',
  question: 'How large is the surface of a long bone measured with a tape?',
  description: 'Surface area of a long bone from girths at stations.',
  equation: 'cone frusta of radius girth/2π between stations, plus both end discs',
  math: String.raw`S = \sum\pi\left(r_i + r_{i+1}\right)\sqrt{h_i^2 + \left(r_{i+1} - r_i\right)^2} + \pi r_1^2 + \pi r_n^2, \quad r = \frac{\text{girth}}{2\pi}
h_i = \text{distance between stations}`,
  arguments: { stations: STATIONS, girths: GIRTHS },
  settings: true,
  result: { kind: 'number', quantity: 'area', what: 'surface area of the bone' },
  examples: [
    {
      args: [
        [[0], [10], [40], [50]],
        [[40], [25], [25], [45]],
      ],
      value: 0.1739904874,
    },
    {
      args: [
        [[0], [50]],
        [[30], [30]],
      ],
      value: 0.1643239449,
    },
  ],
  basis: 'derived',
  source: 'lateral area of a cone frustum, elementary geometry',
  limits: [GIRTH_LIMIT],
  remarks: ['Blank cells at the end of both ranges are left out.'],
  related: ['GIRTH_VOLUME', 'GIRTH_BALANCE', 'GIRTH_SHELL_AREA'],
  run: ({ stations, girths }) => girthArea(stations, girths),
});
