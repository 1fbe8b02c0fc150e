import { describe, it } from 'vitest';
import { water } from '../../../src/calculation/mixing/water.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

describe('water', () => {
  it('is the ratio times the plaster', () => {
    expectNear(water(10, settings()), 3.8, ROUNDING);
    expectNear(water(10, settings({ plaster: 'casting plaster' })), 7, ROUNDING);
    expectNear(water(10, settings({ waterRatio: 0.41 })), 4.1, ROUNDING);
  });

  it('refuses plaster that is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((m) => water(m!, settings()), [1], ['plaster']);
    expectFault(water(1e308, settings({ waterRatio: 2 })), 'overflow');
  });
});
