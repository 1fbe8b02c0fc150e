import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { carlsonRD, carlsonRF, carlsonRG } from '../../../src/calculation/size/carlson.ts';
import { expectNear, SEED } from '../kit.ts';

/** A handful of roundings in a series that is exact beyond double precision, relative. */
const SERIES = 4e-15;

describe('Carlson integrals', () => {
  // Published: B. C. Carlson, Numerical Algorithms 10 (1995), section on numerical checks (values from memory, to 14 digits).
  it('RF', () => {
    expectNear(carlsonRF(1, 2, 0), 1.3110287771461, 1e-13);
    expectNear(carlsonRF(0.5, 1, 0), 1.8540746773014, 1e-13);
    expectNear(carlsonRF(2, 3, 4), 0.58408284167715, 1e-13);
  });

  it('RD', () => {
    expectNear(carlsonRD(0, 2, 1), 1.7972103521034, 1e-13);
    expectNear(carlsonRD(2, 3, 4), 0.16510527294261, 1e-13);
  });

  it('RG', () => {
    expectNear(carlsonRG(0, 16, 16), Math.PI, SERIES);
    expectNear(carlsonRG(2, 3, 4), 1.7255030280692, 1e-13);
    expectNear(carlsonRG(0, 0.0796, 4), 1.0284758090288, 1e-13);
  });

  it('agrees with closed forms', () => {
    // RF(x, x, x) = 1/√x, RD(x, x, x) = x^(−3/2), RG(x, x, x) = √x; RF(0, 1, 1) = π/2.
    expectNear(carlsonRF(7, 7, 7), 1 / Math.sqrt(7), SERIES);
    expectNear(carlsonRD(7, 7, 7), 7 ** -1.5, SERIES);
    expectNear(carlsonRG(7, 7, 7), Math.sqrt(7), SERIES);
    expectNear(carlsonRF(0, 1, 1), Math.PI / 2, SERIES);
    // Oblate: 2RG(x, x, z) = √z + x·asin(√(1 − z/x))/√(x − z).
    expectNear(carlsonRG(2, 2, 1), (1 + 2 * Math.asin(Math.sqrt(0.5))) / 2, SERIES);
  });

  it('takes its limits', () => {
    // Exact: RG(0, 0, x) = √x/2.
    expect(carlsonRG(0, 0, 4)).toBe(1);
    expect(carlsonRG(0, 4, 0)).toBe(1);
    expect(carlsonRG(0, 0, 0)).toBe(0);
    expectNear(carlsonRG(1, 1e-40, 1e-60), 0.5, SERIES);
    expect(carlsonRG(1, Number.MIN_VALUE, 0)).toBe(0.5);
  });

  it('ends and is right for the largest arguments too', () => {
    // Exact scaling: RF(λx, λy, λz) = RF(x, y, z)/√λ. The spread of the arguments times its usual factor is out of range here.
    expectNear(carlsonRF(0, 2 ** 1023, 2 ** 1022), carlsonRF(0, 2, 1) / 2 ** 511, SERIES);
    // Its limit for y → ∞ is 3/√y, from the integral without t beside y; what is left is of the order ln(y)/y.
    for (const y of [1e150, 1e300, 1e306, 1e308]) expectNear(carlsonRD(0, y, 1), 3 / Math.sqrt(y), SERIES);
  });

  it('does not mind the order of the arguments of RG', () => {
    const x = fc.double({ min: 1e-12, max: 1e12, noNaN: true });
    fc.assert(
      fc.property(x, x, x, (a, b, c) => {
        expect(carlsonRG(b, c, a)).toBe(carlsonRG(a, b, c));
        expect(carlsonRG(c, b, a)).toBe(carlsonRG(a, b, c));
      }),
      { seed: SEED },
    );
  });

  it('obeys the duplication theorem of RF and the sum rule of RD', () => {
    const x = fc.double({ min: 1e-6, max: 1e6, noNaN: true });
    fc.assert(
      fc.property(x, x, x, (a, b, c) => {
        const shift = Math.sqrt(a * b) + Math.sqrt(b * c) + Math.sqrt(c * a);
        // DLMF 19.26.18: RF(x, y, z) = RF((x + λ)/4, …). Rounding of a few square roots.
        expectNear(carlsonRF((a + shift) / 4, (b + shift) / 4, (c + shift) / 4), carlsonRF(a, b, c), 1e-14);
        // DLMF 19.21.9: RD(x, y, z) + RD(y, z, x) + RD(z, x, y) = 3/√(xyz). Each of the three to rounding.
        const sum = carlsonRD(a, b, c) + carlsonRD(b, c, a) + carlsonRD(c, a, b);
        expectNear(sum, 3 / Math.sqrt(a * b * c), 1e-13);
      }),
      { seed: SEED },
    );
  });
});
