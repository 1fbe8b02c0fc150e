import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { limits, strength, WAYS } from '../../../src/calculation/strength/strength.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

const box = settings({ shape: 'box' });

describe('strength', () => {
  it('gives the example values', () => {
    const rows = known(strength(1.2, 0.4, 0.3, 50, 8, settings()));
    expect(rows.map((row) => row.way)).toEqual(WAYS);
    for (const [i, [stress, factor]] of (
      [
        [46070.14241, 179.5893896],
        [748373.6048, 11.055586],
        [862818.6675, 9.589162895],
      ] as const
    ).entries()) {
      expectNear(rows[i]!.stress, stress, EXAMPLE);
      expectNear(rows[i]!.allowed, 8273708.752, ROUNDING);
      expectNear(rows[i]!.factor, factor, EXAMPLE);
    }
    for (const [i, factor] of [107.7536337, 5.527793002, 4.279509276].entries())
      expectNear(known(strength(0.6, 0.4, 0.3, 50, 8, box))[i]!.factor, factor, EXAMPLE);
  });

  it('is weaker under more weight and stronger in more layers, in every way', () => {
    const size = fc.double({ min: 0.1, max: 1.5, noNaN: true });
    fc.assert(
      fc.property(
        size,
        size,
        size,
        fc.double({ min: 1, max: 500, noNaN: true }),
        fc.integer({ min: 4, max: 15 }),
        (l, w, h, m, n) => {
          // The same places of the feet under both weights.
          const s = settings({ longHeavyWeight: 1e9 });
          const plain = known(strength(l, w, h, m, n, s));
          const heavier = known(strength(l, w, h, 2 * m, n, s));
          const thicker = known(strength(l, w, h, m, n + 1, s));
          for (const i of [0, 1, 2] as const) {
            expectNear(heavier[i].stress, 2 * plain[i].stress, ROUNDING);
            expect(thicker[i].factor).toBeGreaterThan(plain[i].factor);
          }
        },
      ),
      { seed: SEED },
    );
  });

  it('does not depend on which of length and width is given first, but for a cylinder', () => {
    expect(strength(0.4, 1.2, 0.3, 50, 8, settings())).toEqual(strength(1.2, 0.4, 0.3, 50, 8, settings()));
    const cylinder = settings({ shape: 'cylinder' });
    expect(strength(0.4, 1.2, 0.3, 50, 8, cylinder)).not.toEqual(strength(1.2, 0.4, 0.3, 50, 8, cylinder));
  });

  it('bends a long and heavy jacket less', () => {
    const long = known(strength(1.5, 0.4, 0.3, 60, 8, settings()));
    const spread = known(strength(1.5, 0.4, 0.3, 60, 8, settings({ longHeavyWeight: 100 })));
    expect(long[0].stress).toBeLessThan(spread[0].stress / 3);
    expect(long[1]).toEqual(spread[1]);
  });

  it('takes the smaller stress of plate and shell, and for a box the plate', () => {
    const round = known(strength(0.6, 0.4, 0.3, 50, 8, settings()))[2];
    const flat = known(strength(0.6, 0.4, 0.3, 50, 8, box))[2];
    expect(round.stress).toBeLessThan(flat.stress);
    // Nearly flat, a shell is no stiffer than the plate.
    const nearlyFlat = known(strength(0.6, 0.4, 0.001, 50, 8, settings()))[2];
    expectNear(nearlyFlat.stress, flat.stress, ROUNDING);
  });

  it('refuses what is not above 0, a foot as long as the jacket, and says when a result is too large', () => {
    expectPositiveArguments(
      (l, w, h, m, n) => strength(l!, w!, h!, m!, n!, settings()),
      [1.2, 0.4, 0.3, 50, 8],
      ['length', 'width', 'height', 'total_weight', 'layers'],
    );
    expectFault(strength(0.6, 0.4, 0.3, 50, 8, settings({ footSize: 0.6 })), 'value', 'foot size');
    expectFault(strength(1.2, 0.4, 0.3, 1e308, 8, settings()), 'overflow');
    expectFault(strength(1e200, 1e200, 1e200, 50, 8, settings()), 'overflow');
    expectFault(strength(1.2, 0.4, 0.3, 50, 1e308, settings()), 'overflow');
  });

  it('says where it is doubtful', () => {
    const doubtful = (...input: Parameters<typeof strength>): readonly string[] =>
      limits.filter((l) => !l.holds(...input)).map((l) => l.text);
    expect(doubtful(1.2, 0.4, 0.3, 50, 8, settings())).toEqual([]);
    expect(doubtful(0.1, 0.1, 0.1, 50, 16, settings())[0]).toContain('thin shell');
    expect(doubtful(1.2, 0.4, 0.3, 50, 8, settings({ footSize: 0.01 }))[0]).toContain('feet');
    expect(doubtful(0.3, 0.3, 0.3, 5, 5, settings({ footSize: 0.28 }))[0]).toContain('foot small against the curve');
    expect(doubtful(0.4, 0.4, 0.6, 5, 5, settings())).toHaveLength(1);
    expect(doubtful(0.8, 0.5, 0.2, 50, 5, box)).toEqual([]);
    expect(doubtful(0.8, 0.51, 0.2, 50, 5, box)[0]).toContain('2.5 times as wide as high');
    expect(doubtful(0.8, 0.51, 0.2, 50, 5, settings())).toEqual([]);
  });
});
