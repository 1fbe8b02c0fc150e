import { describe, it } from 'vitest';
import { clay } from '../../../src/calculation/cloth/clay.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

describe('clay', () => {
  it('is the mass of a slab', () => {
    expectNear(clay(0.01, settings()), 0.0555625, ROUNDING);
    expectNear(clay(0.02, settings({ clayThickness: 0.005, clayDensity: 1600 })), 0.16, ROUNDING);
  });

  it('refuses an area that is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a) => clay(a!, settings()), [1], ['area']);
    expectFault(clay(1e308, settings()), 'overflow');
  });
});
