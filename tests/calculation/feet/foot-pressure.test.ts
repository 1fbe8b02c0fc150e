import { describe, expect, it } from 'vitest';
import { footPressure, limits } from '../../../src/calculation/feet/foot-pressure.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments } from '../kit.ts';

describe('footPressure', () => {
  it('gives the example value', () => {
    expectNear(footPressure(15, 0.1, 0.1), 14709.975, EXAMPLE);
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((m, l, w) => footPressure(m!, l!, w!), [15, 0.1, 0.1], ['load', 'length', 'width']);
    expectFault(footPressure(1e300, 1e-10, 1e-10), 'overflow');
  });

  it('says that a long foot is doubtful', () => {
    expect(limits.every((l) => l.holds(15, 0.1, 0.1))).toBe(true);
    expect(limits.every((l) => l.holds(15, 0.1, 0.5))).toBe(false);
  });
});
