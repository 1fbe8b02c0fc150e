import { describe, it } from 'vitest';
import { sealer } from '../../../src/calculation/cloth/sealer.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

describe('sealer', () => {
  it('is area times coats over coverage, with waste', () => {
    expectNear(sealer(1, settings()), 1.1 / 8000, ROUNDING);
    expectNear(sealer(3, settings({ sealerCoats: 2, sealerCoverage: 6000, waste: 0 })), 1e-3, ROUNDING);
  });

  it('refuses an area that is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a) => sealer(a!, settings()), [1], ['shell_area']);
    expectFault(sealer(1e308, settings({ sealerCoats: 1000 })), 'overflow');
  });
});
