import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { margin } from '../../../src/calculation/feet/margin.ts';
import type { Feet, Point } from '../../../src/calculation/feet/points.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED } from '../kit.ts';

const FEET: Feet = [
  [-0.25, -0.12],
  [0.25, -0.12],
  [0, 0.18],
];

const coordinate = fc.double({ min: -1, max: 1, noNaN: true });
const point = fc.tuple(coordinate, coordinate) as fc.Arbitrary<Point>;
const triangle = fc.tuple(point, point, point) as fc.Arbitrary<Feet>;

/** Twice the signed area. */
const turn = ([a, b, c]: Feet): number => (b[0] - a[0]) * (c[1] - a[1]) - (b[1] - a[1]) * (c[0] - a[0]);

/** A second way: the least distance to points along the edges. */
const bySampling = (feet: Feet, p: Point): number => {
  let least = Infinity;
  for (let i = 0; i < 3; i++)
    for (let k = 0; k <= 2000; k++) {
      const [a, b, share] = [feet[i]!, feet[(i + 1) % 3]!, k / 2000];
      least = Math.min(least, Math.hypot(a[0] + share * (b[0] - a[0]) - p[0], a[1] + share * (b[1] - a[1]) - p[1]));
    }
  return least;
};

describe('margin', () => {
  it('gives the example values', () => {
    expectNear(margin(FEET, [0, -0.15]), -0.03, EXAMPLE);
    // Area of the triangle from the origin to a long side, twice, over that side.
    expectNear(margin(FEET, [0, 0]), (0.25 * 0.18) / Math.hypot(0.25, 0.3), ROUNDING);
  });

  it('is the distance to the nearest point of an edge, below 0 outside', () => {
    fc.assert(
      fc.property(triangle, point, (feet, p) => {
        fc.pre(Math.abs(turn(feet)) > 1e-3);
        const value = known(margin(feet, p));
        // Samples are at most 3 m/2000 apart, half of that off along an edge.
        expect(Math.abs(Math.abs(value) - bySampling(feet, p))).toBeLessThan(1e-3);
        const inside = [0, 1, 2].every((i) => turn([feet[i]!, feet[(i + 1) % 3]!, p]) * turn(feet) >= 0);
        expect(Math.sign(value)).toBe(value === 0 ? 0 : inside ? 1 : -1);
      }),
      { seed: SEED, numRuns: 60 },
    );
  });

  it('does not depend on the order of the feet', () => {
    const [a, b, c] = FEET;
    for (const order of [
      [b, c, a],
      [c, a, b],
      [c, b, a],
    ] as const)
      expectNear(margin(order, [0.02, 0.01]), known(margin(FEET, [0.02, 0.01])), ROUNDING);
  });

  it('outside takes the edge between two feet, not its extension', () => {
    const feet: Feet = [
      [0, 0],
      [1, 0],
      [0, 1],
    ];
    expectNear(margin(feet, [4, 0]), -3, ROUNDING);
    expectNear(margin(feet, [-3, -4]), -5, ROUNDING);
    expect(margin(feet, [0.5, 0])).toBe(0);
  });

  it('refuses feet in one line and what is no point', () => {
    expectFault(
      margin([
        [0, 0],
        [0.1, 0.1],
        [0.3, 0.3],
      ]),
      'value',
      'feet',
    );
    expectFault(
      margin([
        [0, 0],
        [0, 0],
        [0.3, 0.1],
      ]),
      'value',
      'feet',
    );
    expectFault(margin([[0, Number.NaN], FEET[1], FEET[2]]), 'value', 'feet');
    expectFault(margin(FEET, [0, Infinity]), 'value', 'balance');
  });
});
