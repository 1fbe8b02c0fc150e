import { describe, expect, it } from 'vitest';
import { limits, shelfLoad } from '../../../src/calculation/strength/shelf-load.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments } from '../kit.ts';

describe('shelfLoad', () => {
  it('gives the example value', () => {
    expectNear(shelfLoad(0.6, 0.4, 50), 2043.052083, EXAMPLE);
  });

  it('is doubtful above the load of light storage', () => {
    expect(limits.every((l) => l.holds(0.6, 0.4, 146))).toBe(true);
    expect(limits.every((l) => l.holds(0.6, 0.4, 147))).toBe(false);
  });

  it('refuses what is not above 0', () => {
    expectPositiveArguments((l, w, m) => shelfLoad(l!, w!, m!), [0.6, 0.4, 50], ['length', 'width', 'total_weight']);
    expectFault(shelfLoad(1e-10, 1e-10, 1e300), 'overflow');
  });
});
