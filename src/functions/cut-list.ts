import { cutList } from '../calculation/cloth/cut-list.ts';
import { amount, isFault } from '../calculation/result.ts';
import { single } from './calling/arguments.ts';
import { HEIGHT, LAYERS, LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

const HEADER = ['purpose', 'pieces', 'piece length', 'piece width'];

export default define({
  id: 'CUT_LIST',
  topic: 'cloth',
  question: 'Which pieces of cloth are cut, and how much roll do they take?',
  description: 'Table of the pieces of glass cloth to cut, and the length of roll that they take.',
  equation:
    'cover: 2·layers·((shell area/2)/(piece − lap)² rounded up); edge strips: 2·strip layers·(seam/(piece − lap) rounded up); patches: 6 feet × patches; packed on the roll, pieces may turn',
  math: String.raw`\text{cover} = 2 \times \text{layers} \times \left\lceil\frac{\text{shell area}/2}{\left(\text{piece} - \text{lap}\right)^2}\right\rceil
\text{edge strips} = 2 \times \text{strip layers} \times \left\lceil\frac{\text{seam}}{\text{piece} - \text{lap}}\right\rceil
\text{patches} = 6 \times \text{patches to a foot}`,
  arguments: { length: single(LENGTH), width: single(WIDTH), height: single(HEIGHT), layers: single(LAYERS) },
  settings: true,
  result: {
    kind: 'table',
    what: 'purpose, pieces, piece length and piece width (cm, us: in); last row: length of roll (m, us: yd)',
    header: true,
  },
  examples: [
    {
      args: [60, 40, 30, 6],
      value: [
        HEADER,
        ['cover', 36, 42, 42],
        ['edge strip', 20, 42, 10.16],
        ['foot patch', 36, 15, 15],
        ['tip patch', 30, 10, 10],
        ['roll length'],
      ],
    },
  ],
  basis: 'derived',
  source:
    'geometry; packing by best fit, Burke, Kendall and Whitwell 2004, Oper. Res. 52:655; strips of 4 in, patches of 6 in, 5 or 6 to a foot and 4 or 5 smaller on the tip: common practice, no source',
  remarks: [
    'No waste is counted: CLOTH has it.',
    'Layers are rounded up. One last layer over everything holds the patches: count it in the layers.',
    'The roll length is that of a plan that was found, short but not proved to be the shortest.',
  ],
  limits: [{ text: 'pieces are counted as if the shell were flat; trim them to the shape as you lay them' }],
  hurts: ['dust'],
  related: ['CLOTH', 'LAYERS', 'SHELL_AREA', 'SEAM'],
  run: ({ length, width, height, layers }, settings) => {
    const list = cutList(length, width, height, layers, settings);
    if (isFault(list)) return list;
    return [
      HEADER,
      ...list.cuts.map(({ purpose, count, length: long, width: across }) => [
        purpose,
        count,
        amount(long, 'length'),
        amount(across, 'length'),
      ]),
      ['roll length', amount(list.layout.length, 'clothLength'), null, null],
    ];
  },
});
