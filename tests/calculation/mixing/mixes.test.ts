import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mixes, oneMix } from '../../../src/calculation/mixing/mixes.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, ROUNDING, SEED, settings } from '../kit.ts';

/** A plain shell: 10 mm of plaster, no cloth, no waste, so that 1 m² is 10 L of slurry, 5 L a half. */
const plainShell = { clothWeight: 0, finishCoat: 0, waste: 0, layerThickness: 0.01 } as const;

describe('mixes', () => {
  // Exact: counts.
  it('gives the example value', () => {
    expect(mixes(1, 8, settings())).toBe(2);
  });

  it.each([
    [0.005, 2],
    [0.0049, 4],
    [0.0025, 4],
    [0.0024, 6],
    [0.02, 2],
  ])('a bucket of %d m³: %d', (bucket, count) => {
    expect(mixes(1, 1, settings({ ...plainShell, bucket }))).toBe(count);
  });

  it('takes two mixes a half with foam, and no more where there are more anyway', () => {
    expect(mixes(1, 1, settings({ ...plainShell, bucket: 0.02, padding: 'foam' }))).toBe(4);
    expect(mixes(1, 1, settings({ ...plainShell, bucket: 0.0024, padding: 'foam' }))).toBe(6);
  });

  it('is limited by the laying rate where one is given', () => {
    // 0.01 m²/min for 20 min at 10 mm is 2 L; 5 L a half need 3 mixes.
    const slow = settings({ ...plainShell, layingRate: 0.01, workingTime: 20 });
    expectNear(oneMix(slow), 0.002, ROUNDING);
    expect(mixes(1, 1, slow)).toBe(6);
    // A fast hand is limited by the bucket again.
    expect(oneMix(settings({ ...plainShell, layingRate: 1 }))).toBe(0.008);
    expect(oneMix(settings())).toBe(0.008);
  });

  it('lays plaster between the glass: the rate counts t − m/ρg of each layer', () => {
    expectNear(oneMix(settings({ layingRate: 0.05 })), 0.05 * 40 * (0.0015 - 0.203434484849 / 2540), EXAMPLE);
  });

  it('is an even whole number that never falls with area or layers', () => {
    const positive = fc.double({ min: 0.01, max: 100, noNaN: true });
    fc.assert(
      fc.property(positive, positive, (a, n) => {
        const count = known(mixes(a, n, settings()));
        expect(count % 2).toBe(0);
        expect(known(mixes(a * 1.5, n, settings()))).toBeGreaterThanOrEqual(count);
        expect(known(mixes(a, n * 1.5, settings()))).toBeGreaterThanOrEqual(count);
      }),
      { seed: SEED },
    );
  });

  it('refuses what is not above 0, and says when a result is too large', () => {
    expectPositiveArguments((a, n) => mixes(a!, n!, settings()), [1, 8], ['shell_area', 'layers']);
    expectFault(mixes(1e308, 8, settings()), 'overflow');
    expectFault(mixes(1e305, 8, settings({ bucket: 1e-6 })), 'overflow');
  });
});
