import { describe, expect, it } from 'vitest';
import { turnWeight } from '../../../src/calculation/strength/turn-weight.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING } from '../kit.ts';

describe('turnWeight', () => {
  it('gives the example value', () => {
    expect(turnWeight(50, 0.4)).toBe(25);
  });

  it('is a lever', () => {
    expectNear(turnWeight(50, 0.4, 0.1), 12.5, ROUNDING);
    expectNear(turnWeight(50, 0.4, 0.4), 50, ROUNDING);
    expectNear(turnWeight(50, 0.4, 0.2), 25, ROUNDING);
  });

  it('refuses what is not above 0', () => {
    expectPositiveArguments((m, w, o) => turnWeight(m!, w!, o!), [50, 0.4, 0.1], ['total_weight', 'width', 'offset']);
    expectFault(turnWeight(1e308, 1e-5, 1), 'overflow');
  });
});
