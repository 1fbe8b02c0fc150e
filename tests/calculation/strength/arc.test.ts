import fc from 'fast-check';
import { describe, it } from 'vitest';
import { arc } from '../../../src/calculation/strength/arc.ts';
import { expectNear, ROUNDING, SEED } from '../kit.ts';
import { gaussLegendre } from '../size/quadrature.ts';

const NODES = gaussLegendre(60);

/** A second way: Gauss and Legendre over 40 pieces of the arc. */
const byQuadrature = (a: number, b: number) => {
  const sums = { length: 0, first: 0, second: 0 };
  for (let piece = 0; piece < 40; piece++)
    for (const [node, weight] of NODES) {
      const u = ((piece + (node + 1) / 2) * Math.PI) / 40;
      const ds = (Math.hypot(a * Math.sin(u), b * Math.cos(u)) * weight * Math.PI) / 80;
      const y = b * Math.sin(u);
      sums.length += ds;
      sums.first += y * ds;
      sums.second += y * y * ds;
    }
  return sums;
};

describe('arc', () => {
  it('of a half circle is π, 2 and π/2', () => {
    const { length, first, second } = arc(1, 1);
    expectNear(length, Math.PI, ROUNDING);
    expectNear(first, 2, ROUNDING);
    expectNear(second, Math.PI / 2, ROUNDING);
  });

  it('agrees with quadrature, flat and deep', () => {
    const size = fc.double({ min: 0.02, max: 1, noNaN: true });
    fc.assert(
      fc.property(size, size, (a, b) => {
        const exact = arc(a, b);
        const summed = byQuadrature(a, b);
        // 2400 nodes on a bend as sharp as 1 in 50 leave a few units in the tenth digit.
        expectNear(exact.length, summed.length, 1e-10);
        expectNear(exact.first, summed.first, 1e-10);
        expectNear(exact.second, summed.second, 1e-10);
      }),
      { seed: SEED, numRuns: 50 },
    );
  });

  it('nearly a circle loses nothing', () => {
    for (const change of [1e-3, 1e-6, 1e-9, 1e-12]) {
      const { first, second } = arc(1 + change, 1);
      const summed = byQuadrature(1 + change, 1);
      expectNear(first, summed.first, ROUNDING);
      expectNear(second, summed.second, ROUNDING);
    }
  });

  it('scales with its size', () => {
    const one = arc(0.2, 0.15);
    const two = arc(0.4, 0.3);
    expectNear(two.length, 2 * one.length, ROUNDING);
    expectNear(two.first, 4 * one.first, ROUNDING);
    expectNear(two.second, 8 * one.second, ROUNDING);
  });
});
