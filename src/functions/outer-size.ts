import { isFault } from '../calculation/result.ts';
import { outerSize } from '../calculation/shell/outer-size.ts';
import { single } from './calling/arguments.ts';
import { HEIGHT, LAYERS, LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'OUTER_SIZE',
  topic: 'shell',
  question: 'Will the closed jacket fit on the shelf?',
  description: 'Outer length, width and height of the closed jacket on its feet.',
  equation:
    'size + 2·(padding + thickness + flange) for length and width; height + 2·(padding + thickness + foot height), since both halves have feet',
  math: String.raw`\text{length}_{\text{outer}} = \text{length} + 2\left(\text{padding} + \text{thickness} + \text{flange}\right)
\text{height}_{\text{outer}} = \text{height} + 2\left(\text{padding} + \text{thickness} + \text{foot height}\right)`,
  arguments: { length: single(LENGTH), width: single(WIDTH), height: single(HEIGHT), layers: single(LAYERS) },
  settings: true,
  result: { kind: 'table', what: 'outer length, width and height, side by side', header: false, quantity: 'length' },
  examples: [{ args: [60, 40, 30, 8], value: [[73.87, 53.87, 53.87]] }],
  basis: 'derived',
  source: 'geometry of the closed jacket; foot height and flange: assumptions',
  related: ['THICKNESS'],
  run: ({ length, width, height, layers }, settings) => {
    const sizes = outerSize(length, width, height, layers, settings);
    return isFault(sizes) ? sizes : [[...sizes]];
  },
});
