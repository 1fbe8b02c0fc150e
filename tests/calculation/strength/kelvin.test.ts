import { describe, expect, it } from 'vitest';
import { EULER, kelvin } from '../../../src/calculation/strength/kelvin.ts';
import { expectNear } from '../kit.ts';

/** A second way: −e^(iπ/4)·K₁(x·e^(iπ/4)), K₁ by Simpson's rule on its integral. */
const bySimpson = (x: number): { kei: number; ker: number } => {
  const [steps, end] = [20000, Math.acosh(1 + 60 / x)];
  let real = 0;
  let imaginary = 0;
  for (let i = 0; i <= steps; i++) {
    const cosh = Math.cosh((i * end) / steps);
    const weight = (i === 0 || i === steps ? 1 : i % 2 === 0 ? 2 : 4) * cosh * Math.exp(-x * Math.SQRT1_2 * cosh);
    real += weight * Math.cos(x * Math.SQRT1_2 * cosh);
    imaginary -= weight * Math.sin(x * Math.SQRT1_2 * cosh);
  }
  const scale = (end / steps / 3) * Math.SQRT1_2;
  return { kei: -scale * (real + imaginary), ker: -scale * (real - imaginary) };
};

describe('kelvin', () => {
  it('agrees with the integral where the series is used, and on both sides of the change', () => {
    for (const x of [0.3, 1, 2, 3.9, 4, 4.1, 6, 10]) {
      const { kei, ker } = kelvin(x);
      const second = bySimpson(x);
      // Of 1 + x·ker′ near 0.05·x² a difference of sums of 20 000 terms is left.
      expectNear(kei * x, second.kei, 1e-9);
      expectNear(ker * x * x - 1, second.ker * x, 1e-9);
    }
  });

  it('is smooth at the change from series to integral', () => {
    const before = kelvin(4);
    const after = kelvin(4 * (1 + 1e-12));
    // The functions themselves change by less than 1e-11 there.
    expectNear(after.kei, before.kei, 1e-10);
    expectNear(after.ker, before.ker, 1e-10);
  });

  it('has its limits', () => {
    // kei′(x)/x → −½·ln(x/2) + ¼ − ½·γ and (1 + x·ker′)/x² → π/8 for small x, DLMF 10.65.
    for (const x of [1e-3, 1e-9, 1e-200]) {
      expectNear(kelvin(x).kei, -Math.log(x / 2) / 2 + 1 / 4 - EULER / 2, 1e-6);
      expectNear(kelvin(x).ker, Math.PI / 8, 1e-5);
    }
    for (const x of [100, 1e6]) {
      expect(Math.abs(kelvin(x).kei)).toBeLessThan(1e-30);
      expectNear(kelvin(x).ker, 1 / x / x, 1e-20 + 1e-12);
    }
  });
});
