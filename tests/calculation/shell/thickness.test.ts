import { describe, expect, it } from 'vitest';
import { thickness } from '../../../src/calculation/shell/thickness.ts';
import { expectFault, expectNear, expectPositiveArguments, ROUNDING, settings } from '../kit.ts';

describe('thickness', () => {
  it('gives the example value', () => {
    expectNear(thickness(8, settings()), 0.013, ROUNDING);
  });

  it('takes a mean of layers, and no finish coat', () => {
    expectNear(thickness(8.5, settings({ finishCoat: 0, layerThickness: 0.002 })), 0.017, ROUNDING);
  });

  it('does not count the padding', () => {
    expect(thickness(8, settings({ paddingThickness: 0.05 }))).toBe(thickness(8, settings()));
  });

  it('refuses layers that are not above 0, and says when a result is too large', () => {
    expectFault(thickness(Number.MAX_VALUE, settings({ finishCoat: Number.MAX_VALUE })), 'overflow');
    expectPositiveArguments((n) => thickness(n!, settings()), [1], ['layers']);
  });
});
