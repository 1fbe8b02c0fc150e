import { girthBalance } from '../calculation/size/girth-balance.ts';
import { GIRTH_LIMIT, GIRTHS, STATIONS } from './calling/girths.ts';
import { define } from './define.ts';

export default define({
  id: 'GIRTH_BALANCE',
  topic: 'size',
  question: 'Where does a long bone balance?',
  description: 'Distance of the balance point of a long bone from the first station.',
  equation: 'centroids of the cone frusta, weighted by their volumes',
  math: String.raw`x = \frac{\sum V_i\,x_i}{\sum V_i}, \quad x_i = \text{centroid of frustum } i
V_i = \text{volume of frustum } i`,
  arguments: { stations: STATIONS, girths: GIRTHS },
  settings: false,
  result: { kind: 'number', quantity: 'length', what: 'distance from the first station, in the unit of the stations' },
  examples: [
    {
      args: [
        [[0], [10], [40], [50]],
        [[40], [25], [25], [45]],
      ],
      value: 25.95544554,
    },
    {
      args: [
        [[0], [30]],
        [[0], [40]],
      ],
      value: 22.5,
    },
  ],
  basis: 'derived',
  source: 'centroid of a cone frustum, elementary statics',
  hurts: ['stability'],
  limits: [
    GIRTH_LIMIT,
    { text: 'one density all along; an estimate for planning, a scale under each foot tells better' },
  ],
  related: ['GIRTH_VOLUME'],
  run: ({ stations, girths }) => girthBalance(stations, girths),
});
