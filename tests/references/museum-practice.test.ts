/** What museums have published about storage jackets. Row numbers such as M-01 name the check value. */

import { describe, it } from 'vitest';
import { clay } from '../../src/calculation/cloth/clay.ts';
import { outerSize } from '../../src/calculation/shell/outer-size.ts';
import { expectNear, known, settings } from '../calculation/kit.ts';

describe('Jabo, Kroehler and Grady 2006, Journal of Paleontological Techniques 1', () => {
  it('M-01: feet on both halves, so the closed jacket grows by two of them', () => {
    // Published practice; the numbers are ours.
    const low = known(outerSize(0.6, 0.4, 0.3, 8, settings({ footHeight: 0 })));
    const high = known(outerSize(0.6, 0.4, 0.3, 8, settings({ footHeight: 0.1 })));
    expectNear(high[2] - low[2], 0.2, 1e-12);
  });
});

describe('account of a museum’s procedure, 2014', () => {
  it('M-06: clay of about 3 mm stands in for padding', () => {
    // Published as about 3 mm, 1/8 in: 6 % between the two figures.
    const s = settings();
    expectNear(known(clay(1, s)) / s.clayDensity, 0.003, 0.06);
    expectNear(known(clay(1, s)) / s.clayDensity, 0.0254 / 8, 1e-12);
  });
});
