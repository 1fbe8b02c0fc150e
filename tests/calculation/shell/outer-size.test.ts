import { describe, expect, it } from 'vitest';
import { outerSize } from '../../../src/calculation/shell/outer-size.ts';
import { expectFault, expectNear, expectPositiveArguments, known, ROUNDING, settings } from '../kit.ts';

describe('outerSize', () => {
  it('gives the example value', () => {
    const size = known(outerSize(0.6, 0.4, 0.3, 8, settings()));
    expect(size).toHaveLength(3);
    expectNear(size[0], 0.7387, ROUNDING);
    expectNear(size[1], 0.5387, ROUNDING);
    expectNear(size[2], 0.5387, ROUNDING);
  });

  it('adds padding, shell and flange on two sides, feet above and below', () => {
    const s = settings({
      paddingThickness: 0.01,
      layerThickness: 0.002,
      finishCoat: 0.003,
      flange: 0.06,
      footSize: 0.07,
      footHeight: 0.09,
    });
    const [length, width, height] = known(outerSize(1, 0.5, 0.4, 5, s));
    expectNear(length, 1 + 2 * (0.01 + 0.013 + 0.06), ROUNDING);
    expectNear(width, 0.5 + 2 * (0.01 + 0.013 + 0.06), ROUNDING);
    expectNear(height, 0.4 + 2 * (0.01 + 0.013 + 0.09), ROUNDING);
  });

  it('puts the longer first, but takes a cylinder as given', () => {
    expect(outerSize(0.4, 0.6, 0.3, 8, settings())).toEqual(outerSize(0.6, 0.4, 0.3, 8, settings()));
    const [length, width] = known(outerSize(0.4, 0.6, 0.3, 8, settings({ shape: 'cylinder' })));
    expect(length).toBeLessThan(width);
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments(
      (l, w, h, n) => outerSize(l!, w!, h!, n!, settings()),
      [3, 2, 1, 8],
      ['length', 'width', 'height', 'layers'],
    );
    const wide = settings({ flange: Number.MAX_VALUE });
    expectFault(outerSize(1, 1, 1, 1, wide), 'overflow');
    expectFault(outerSize(1, 1, 1, 1, settings({ footHeight: Number.MAX_VALUE })), 'overflow');
  });
});
