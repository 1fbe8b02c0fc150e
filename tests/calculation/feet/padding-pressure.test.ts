import { describe, expect, it } from 'vitest';
import { limits, paddingPressure } from '../../../src/calculation/feet/padding-pressure.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, settings } from '../kit.ts';

describe('paddingPressure', () => {
  it('gives the example value', () => {
    expectNear(paddingPressure(0.6, 0.4, 30, settings()), 1560.776823, EXAMPLE);
  });

  it('is spread over the whole rectangle under box and cylinder', () => {
    const round = known(paddingPressure(0.6, 0.4, 30, settings()));
    for (const shape of ['box', 'cylinder'] as const)
      expectNear(paddingPressure(0.6, 0.4, 30, settings({ shape })), (round * Math.PI) / 4, ROUNDING);
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments(
      (l, w, m) => paddingPressure(l!, w!, m!, settings()),
      [0.6, 0.4, 30],
      ['length', 'width', 'weight'],
    );
    expectFault(paddingPressure(1e-10, 1e-10, 1e300, settings()), 'overflow');
  });

  it('says that a very high pressure is doubtful', () => {
    expect(limits.every((l) => l.holds(0.6, 0.4, 30, settings()))).toBe(true);
    expect(limits.every((l) => l.holds(0.6, 0.4, 300, settings()))).toBe(false);
  });
});
