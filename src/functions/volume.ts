import { volume } from '../calculation/size/volume.ts';
import { HEIGHT, LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'VOLUME',
  topic: 'size',
  question: 'How large is the body of the specimen?',
  description: 'Body volume of a specimen from its three sizes.',
  equation: 'ellipsoid: 4/3·π·abc with half sizes; box: lwh; cylinder: π/4·wh·l',
  math: String.raw`V_{\text{ellipsoid}} = \frac{4}{3}\pi\,a\,b\,c
V_{\text{box}} = l\,w\,h
V_{\text{cylinder}} = \frac{\pi}{4}\,w\,h\,l
a,\ b,\ c = \text{half of each size}`,
  arguments: { length: LENGTH, width: WIDTH, height: HEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'bodyVolume', what: 'body volume of the specimen' },
  examples: [
    { args: [24, 16, 12, 'us'], value: 1.396263402 },
    { args: [60, 40, 30], value: 37.6991118431 },
  ],
  basis: 'derived',
  source: 'elementary geometry',
  remarks: ['The relief factor does not change the volume.'],
  related: ['AREA', 'SPECIMEN_WEIGHT', 'DENSITY'],
  run: ({ length, width, height }, settings) => volume(length, width, height, settings),
});
