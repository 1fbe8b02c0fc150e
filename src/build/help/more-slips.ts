/** Slips that follow from what a function is about, not from the kind of its arguments. */
import type { Argument } from '../../functions/calling/cell.ts';

const LINE = [
  [-20, 0],
  [0, 0],
  [20, 0],
];
const TRIANGLE = [
  [-25, -12],
  [25, -12],
  [0, 18],
];

export const MORE_SLIPS: Readonly<
  Record<string, readonly { readonly when: string; readonly args: readonly Argument[] }[]>
> = {
  BALANCE: [
    { when: 'all readings are 0', args: [TRIANGLE, [[0], [0], [0]]] },
    { when: 'two readings instead of three', args: [TRIANGLE, [[10], [12]]] },
  ],
  BENDING: [{ when: 'the feet stand in the middle', args: [120, 50, 60] }],
  BUDGET: [{ when: 'no column has a name that is known', args: [[['stuff'], [3]]] }],
  CALIBRATE: [{ when: 'fewer than two jobs have both numbers', args: [[[10]], [[11]]] }],
  CHECK: [{ when: 'there is no such function', args: ['PLASTR', 1, 8] }],
  COLLECTION: [
    {
      when: 'a column is missing',
      args: [
        [
          ['number', 'length', 'width'],
          ['INV 121', 24, 18],
        ],
      ],
    },
    { when: 'a row holds text for a number', args: [[[24, 'wide', 16, 7.8]]] },
  ],
  DENSITY: [{ when: 'only bone is said', args: ['bone'] }],
  DRY_TIME: [
    {
      when: 'the room is too damp for anything to dry',
      args: [
        8,
        [
          ['room humidity', 0.99],
          ['room temperature', 1],
        ],
      ],
    },
  ],
  DRYNESS: [{ when: 'wet is not above dry', args: [23, 22, 22.3] }],
  DUST_LIMIT: [{ when: 'there is no limit of that kind on record', args: ['silica', 'total'] }],
  EXPOSURE: [{ when: 'levels and hours are not as many', args: [[[10], [2]], [[2]]] }],
  FEET: [{ when: 'the feet find no room', args: [12, 9, 1, null, [['foot size', 10]]] }],
  FOOT_LOADS: [
    { when: 'the balance point is outside the feet', args: [TRIANGLE, [[0, -30]], 40] },
    { when: 'the feet stand in one line', args: [LINE, [[0, 0]], 40] },
  ],
  GIRTH_AREA: [
    {
      when: 'stations do not increase',
      args: [
        [[0], [20], [10]],
        [[40], [25], [25]],
      ],
    },
  ],
  GIRTH_VOLUME: [{ when: 'stations and girths are not as many', args: [[[0], [20]], [[40]]] }],
  GIRTH_BALANCE: [
    {
      when: 'stations do not increase',
      args: [
        [[0], [20], [10]],
        [[40], [25], [25]],
      ],
    },
  ],
  GIRTH_SHELL_AREA: [{ when: 'only one station is given', args: [[[0]], [[40]]] }],
  LAYERS_NEEDED: [{ when: 'most layers are not enough', args: [300, 200, 10, 900] }],
  LIFT_INDEX: [{ when: 'the limit is 0, so that nothing divides by it', args: [20, 64, 70, 50, 30, 1, 1, 'fair'] }],
  LIFT_LIMIT: [{ when: 'hours are above 8', args: [40, 70, 50, 30, 1, 9, 'fair'] }],
  MARGIN: [{ when: 'the feet stand in one line', args: [LINE] }],
  MEASURE: [
    { when: 'no unit is given', args: ['44.5'] },
    { when: 'the text is no size', args: ['about an arm'] },
  ],
  RIB_HEIGHT: [
    { when: 'the rib would be higher than the feet', args: [300, 40, 15, 600, 5, [['foot height', 1]]] },
    { when: 'no rib is enough', args: [400, 20, 4, 900, 1] },
  ],
  SOURCE: [{ when: 'the name is not known', args: ['sandston'] }],
  SPECIMEN_WEIGHT: [{ when: 'the material is not known', args: [20, 'granit'] }],
  STABLE: [{ when: 'the feet stand in one line', args: [LINE, [[0, 0]], 25] }],
  TIP_ANGLE: [{ when: 'the feet stand in one line', args: [LINE, [[0, 0]], 25] }],
};
