import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cloth, lapFactor } from '../../../src/calculation/cloth/cloth.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

describe('cloth', () => {
  it('gives the example value', () => {
    expectNear(cloth(1, 8, settings()), 8.92840915, EXAMPLE);
  });

  it('is worked out by hand', () => {
    // Pieces of 50 cm that show 40: (5/4)² of the area, a tenth lost, off a roll of 1 m.
    const s = settings({ pieceSize: 0.5, lap: 0.1, waste: 0.1, rollWidth: 1 });
    expectNear(lapFactor(s), 1.5625, ROUNDING);
    expectNear(cloth(2, 3, s), 2 * 3 * 1.5625 * 1.1, ROUNDING);
  });

  it('is the bare area without lap and waste', () => {
    expect(cloth(3, 4, settings({ lap: 0, waste: 0, rollWidth: 1 }))).toBe(12);
  });

  it('is in proportion to area times layers', () => {
    const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (a, n) => {
        expectNear(cloth(a, n, settings()), a * n * known(cloth(1, 1, settings())), ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a, n) => cloth(a!, n!, settings()), [1, 8], ['shell_area', 'layers']);
    expectFault(cloth(1e308, 1e308, settings()), 'overflow');
  });
});
