import { area } from '../calculation/size/area.ts';
import { HEIGHT, LENGTH, WIDTH } from './calling/common.ts';
import { define } from './define.ts';

export default define({
  id: 'AREA',
  topic: 'size',
  question: 'How large is the surface of the specimen?',
  description: 'Surface area of a specimen from its three sizes.',
  equation:
    'ellipsoid: S = 2πc² + (2πab/sin φ)·(E·sin²φ + F·cos²φ) with cos φ = c/a; box: 2(lw + lh + wh); cylinder: perimeter of the end × length + 2 × area of the end; all × relief factor',
  math: String.raw`S_{\text{ellipsoid}} = 2\pi c^2 + \frac{2\pi a b}{\sin\varphi}\left(E\sin^2\varphi + F\cos^2\varphi\right), \quad \cos\varphi = \frac{c}{a}
S_{\text{box}} = 2\left(l\,w + l\,h + w\,h\right)
S_{\text{cylinder}} = P\,l + 2A_{\text{end}}
\text{area} = \text{relief factor} \times S
a \ge b \ge c = \text{half sizes}, \quad P = \text{perimeter of the end}`,
  arguments: { length: LENGTH, width: WIDTH, height: HEIGHT },
  settings: true,
  result: { kind: 'number', quantity: 'area', what: 'surface area of the specimen' },
  examples: [
    { args: [60, 40, 30], value: 0.5781205375 },
    {
      args: [
        24,
        16,
        12,
        [
          ['units', 'us'],
          ['shape', 'box'],
        ],
      ],
      value: 12,
    },
    { args: [60, 20, 16, [['shape', 'cylinder']]], value: 0.3906054971 },
  ],
  basis: 'derived',
  source: 'area of an ellipsoid by elliptic integrals: Carlson 1995, Numerical Algorithms 10:13; NIST DLMF 19.33',
  remarks: [
    'Real specimens are rougher than an ellipsoid: the setting relief factor enlarges the surface, 1.2 to 1.5 for skulls and the like.',
    'A given area, measured in another way, can go straight into the functions of the shell.',
  ],
  limits: [{ text: 'three sizes tell a surface to about 15 % (setting shape uncertainty)' }],
  related: ['VOLUME', 'SHELL_AREA'],
  run: ({ length, width, height }, settings) => area(length, width, height, settings),
});
