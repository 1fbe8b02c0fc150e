import { describe, it } from 'vitest';
import { consistency } from '../../../src/calculation/mixing/consistency.ts';
import { water } from '../../../src/calculation/mixing/water.ts';
import { expectFault, expectNear, expectPositiveArguments, known, ROUNDING, settings } from '../kit.ts';

describe('consistency', () => {
  it('counts water to 100 of plaster', () => {
    expectNear(consistency(10, 3.8), 38, ROUNDING);
  });

  it('is 100 ratios of the water worked out', () => {
    expectNear(consistency(7, known(water(7, settings({ plaster: 'dental stone' })))), 30, ROUNDING);
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((m, w) => consistency(m!, w!), [1, 1], ['plaster', 'water']);
    expectFault(consistency(1, 1e308), 'overflow');
    expectFault(consistency(1e-308, 1e308), 'overflow');
  });
});
