/**
 * A plate and a shallow shell under a load on a small circle: rows.
 *
 * How known: R-10 read in Roark's Formulas for Stress and Strain, 7th edition, Table 11.4 case 1b; derived [D], the closed form of E.
 * Reissner 1946, Journal of Mathematics and Physics 25, from memory [M].
 */

import { describe, expect, it } from 'vitest';
import { beta, plate } from '../../src/calculation/strength/plate.ts';
import { circleRatio, coefficients, shellPoint } from '../../src/calculation/strength/shell-point.ts';
import { expectNear } from '../calculation/kit.ts';

const POISSON = 0.3;

/** Bessel function J₁ by its integral, the trapezoidal rule on a periodic integrand. */
const besselJ1 = (x: number): number => {
  const steps = 24 + Math.ceil(x);
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const angle = ((i + 0.5) * Math.PI) / steps;
    sum += Math.cos(angle - x * Math.sin(angle));
  }
  return sum / steps;
};

/**
 * A second way to the plate: the double sine series of Navier for a unit load spread evenly over a circle in the middle.
 *
 * @returns 6·moment across the short side, in the middle: stress·s²
 */
const bySeries = (long: number, short: number, radius: number): number => {
  const terms = Math.ceil((40 * long) / (Math.PI * radius));
  let moment = 0;
  for (let m = 1; (m * Math.PI) / long < 40 / radius && m <= terms; m += 2)
    for (let n = 1; ; n += 2) {
      const kx = (m * Math.PI) / long;
      const ky = (n * Math.PI) / short;
      const k = Math.hypot(kx, ky);
      if (k * radius > 40) break;
      // In the middle the load's sines and the deflection's give +1 together for odd m and n.
      const load = ((4 / (long * short)) * 2 * besselJ1(k * radius)) / (k * radius);
      moment += (load * (ky * ky + POISSON * kx * kx)) / k ** 4;
    }
  return 6 * moment;
};

/**
 * A second way to the shell: rings of finite differences. In lengths of √(R·s)/(12(1 − ν²))^(1/4) the shell is a plate on an elastic bed,
 * ∇⁴w + w = p, here as two equations u = ∇²w and ∇²u + w = p with p·πμ² = 1. In the middle the bending coefficient is −3u and the membrane
 * coefficient √3·w.
 *
 * Each ring is expressed by the next one, x = P·next + q with x = (w, u), from the middle outwards; far out both are 0.
 */
const byRings = (mu: number): { readonly deflection: number; readonly curvature: number } => {
  const rings = 6000;
  const step = 24 / rings;
  const pressure = 1 / (Math.PI * mu * mu);
  const steps: { p: [number, number, number, number]; q: [number, number] }[] = [];
  let before = { p: [0, 0, 0, 0], q: [0, 0] } as (typeof steps)[number];
  for (let i = 0; i < rings; i++) {
    const r = i * step;
    const load = pressure * Math.min(1, Math.max(0, (mu - r) / step + 0.5));
    const outer = i === 0 ? 4 / step ** 2 : 1 / step ** 2 + 1 / (2 * r * step);
    const inner = i === 0 ? 0 : 1 / step ** 2 - 1 / (2 * r * step);
    const middle = -(outer + inner);
    // outer·next + middle·here + inner·before: of w equal to u, of u equal to load − w; the ring before is put in.
    const [a, b] = [middle + inner * before.p[0], inner * before.p[1] - 1];
    const [c, d] = [inner * before.p[2] + 1, middle + inner * before.p[3]];
    const [f, g] = [-inner * before.q[0], load - inner * before.q[1]];
    const det = a * d - b * c;
    before = {
      p: [(-d * outer) / det, (b * outer) / det, (c * outer) / det, (-a * outer) / det],
      q: [(d * f - b * g) / det, (a * g - c * f) / det],
    };
    steps.push(before);
  }
  let [deflection, curvature] = [0, 0];
  for (const { p, q } of steps.reverse())
    [deflection, curvature] = [
      p[0] * deflection + p[1] * curvature + q[0],
      p[2] * deflection + p[3] * curvature + q[1],
    ];
  return { deflection, curvature };
};

describe('R-10, flat plate', () => {
  it('has the β of the table [read]', () => {
    for (const [ratio, value] of [
      [1, 0.435],
      [1.2, 0.65],
      [1.4, 0.789],
      [1.6, 0.875],
      [1.8, 0.927],
      [2, 0.958],
      [1e9, 1],
    ] as const)
      expect(beta(ratio)).toBe(value);
  });

  it('agrees with a double sine series [D]', () => {
    // β has three digits, and the formula is for a circle small against the plate: 0.5 % of the stress.
    for (const ratio of [1, 1.2, 1.4, 1.6, 1.8, 2, 4])
      expectNear(plate(1, 0.05, 1, ratio, 1), bySeries(ratio, 1, 0.05), 0.005);
  });

  it('agrees between ratios of 2 and 3 too, where β is linear here [D]', () => {
    expectNear(plate(1, 0.05, 1, 2.5, 1), bySeries(2.5, 1, 0.05), 0.006);
  });
});

describe('R-11, shallow shell', () => {
  /** The rows give six decimals. */
  const SIX_DECIMALS = 6e-7;

  it('has the coefficients of the closed form [D]', () => {
    for (const [mu, b, c] of [
      [0.1, 1.393957, 0.215242],
      [0.4, 0.73891, 0.203895],
      [1, 0.336488, 0.168374],
      [1.4, 0.211204, 0.143043],
      [2, 0.104951, 0.108446],
      [3, 0.029298, 0.065206],
    ] as const) {
      const [bending, membrane] = coefficients(mu);
      expect(Math.abs(bending - b)).toBeLessThan(SIX_DECIMALS);
      expect(Math.abs(membrane - c)).toBeLessThan(SIX_DECIMALS);
    }
  });

  it('has the deflection of the rows, which is twice the membrane coefficient [D]', () => {
    for (const [mu, a] of [
      [0.1, 0.430484],
      [0.4, 0.407791],
      [1, 0.336747],
      [1.4, 0.286085],
      [2, 0.216892],
      [3, 0.130411],
    ] as const)
      expect(Math.abs(2 * coefficients(mu)[1] - a)).toBeLessThan(2 * SIX_DECIMALS);
  });

  it('satisfies the equation of the shell, by finite differences [D]', () => {
    for (const mu of [0.4, 1, 2]) {
      const { deflection, curvature } = byRings(mu);
      const [bending, membrane] = coefficients(mu);
      // 6000 rings: the edge of the load is known to half a ring.
      expectNear(-3 * curvature, bending, 2e-3);
      expectNear(Math.sqrt(3) * deflection, membrane, 2e-3);
    }
  });
});

describe('R-12, limits of the shell', () => {
  it('under a point load C is √3/8 and A is √3/4 [D, exact]', () => {
    expectNear(coefficients(1e-4)[1], Math.sqrt(3) / 8, 1e-7);
    expectNear(2 * coefficients(1e-4)[1], 0.433013, 1e-6);
  });

  it('under a wide load the stress is that of a sphere under pressure, p·R/(2s) [D, exact]', () => {
    const [force, wall, curvature] = [1000, 0.001, 1];
    for (const radius of [1, 3]) {
      expect(circleRatio(radius, wall, curvature)).toBeGreaterThan(50);
      const pressure = force / (Math.PI * radius * radius);
      // What is left of bending dies away with e^(−μ/√2).
      expectNear(shellPoint(force, radius, wall, curvature), (pressure * curvature) / (2 * wall), 1e-9);
    }
  });
});
