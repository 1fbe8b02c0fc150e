import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { footOutline, isInside, outline, parallelCurve, ring } from '../../../src/calculation/feet/outline.ts';
import { EXAMPLE, expectNear, SEED, settings } from '../kit.ts';
import { beyond } from './brute-force.ts';

const shape = fc.record({
  length: fc.double({ min: 0.1, max: 3, noNaN: true }),
  ratio: fc.double({ min: 1, max: 20, noNaN: true }),
  box: fc.boolean(),
  /** Offset in half widths: inside, past the sharpest bend of a slender ellipse, or outside. */
  offset: fc.double({ min: -0.95, max: 1, noNaN: true }),
  start: fc.double({ min: 0, max: 1, noNaN: true }),
  place: fc.double({ min: 0, max: 7, noNaN: true }),
  turn: fc.double({ min: 0, max: 7, noNaN: true }),
});

describe('parallelCurve', () => {
  it('is left by a ray where the ray and the support function say', () => {
    fc.assert(
      fc.property(shape, ({ length, ratio, box, offset, start, place, turn }) => {
        const width = length / ratio;
        const one = { length, width, box, offset: (offset * width) / 2, apart: 0, balance: [0, 0] as const };
        const curve = parallelCurve(length, width, one.offset, settings({ shape: box ? 'box' : 'ellipsoid' }));
        if (!curve) {
          expect(beyond(one, [0, 0])).toBeGreaterThanOrEqual(-1e-9 * width);
          return;
        }
        const edge = curve.at(place);
        const from = [edge[0] * start, edge[1] * start] as const;
        const e = [Math.cos(turn), Math.sin(turn)] as const;
        const out = curve.exit(from, e);
        const beside = (out[0] - from[0]) * e[1] - (out[1] - from[1]) * e[0];
        const along = (out[0] - from[0]) * e[0] + (out[1] - from[1]) * e[1];
        expect(beyond(one, out)).toBeLessThanOrEqual(1e-9 * length);
        // From a point on the curve a ray may only graze it, and then end anywhere on the flat of the curve.
        if (start > 0.99) return;
        // Newton's method ends below 1e-12 of the size; a corner of the curve, clamped, is as near.
        expect(Math.abs(beside)).toBeLessThan(1e-9 * length);
        expect(along).toBeGreaterThan(0);
        // On the edge: beyond it a small step is outside. The second way's straight edges overshoot by (2π/720)²/8 of the size.
        expect(beyond(one, out)).toBeGreaterThan(-1e-4 * length);
      }),
      { seed: SEED, numRuns: 1000 },
    );
  });

  it('has each of its places where the ray towards it leaves, once around, counterclockwise', () => {
    fc.assert(
      fc.property(shape, ({ length, ratio, box, offset, place, turn }) => {
        const width = length / ratio;
        const curve = parallelCurve(
          length,
          width,
          (offset * width) / 2,
          settings({ shape: box ? 'box' : 'ellipsoid' }),
        );
        if (!curve) return;
        const [x, y] = curve.at(place);
        const away = Math.hypot(x, y);
        const out = curve.exit([0, 0], [x / away, y / away]);
        // Newton's method ends below 1e-12 of the size.
        expect(Math.hypot(out[0] - x, out[1] - y)).toBeLessThan(1e-9 * length);
        const next = curve.at(place + turn / 7);
        expect(x * next[1] - y * next[0]).toBeGreaterThanOrEqual(-1e-12 * length * length);
        const around = curve.at(place - 2 * Math.PI);
        expect(Math.hypot(around[0] - x, around[1] - y)).toBeLessThan(1e-12 * length);
        // A quarter of a turn is a quarter of the curve.
        const quarter = curve.at(Math.PI / 2);
        expect(Math.hypot(quarter[0], quarter[1] - curve.halfWidth)).toBeLessThan(1e-12 * length);
        expect(Math.abs(curve.at(0)[0] - curve.halfLength)).toBeLessThan(1e-12 * length);
      }),
      { seed: SEED, numRuns: 500 },
    );
  });

  it('has its ends on the axes', () => {
    const plain = parallelCurve(0.6, 0.4, 0.05, settings())!;
    expectNear(plain.halfLength, 0.35, EXAMPLE);
    expectNear(plain.halfWidth, 0.25, EXAMPLE);
    // Farther inside than the sharpest bend: the corner is √((a² − b²)(1 − δ²/b²)) from the middle.
    const inside = parallelCurve(2, 0.4, -0.1, settings())!;
    expectNear(inside.halfLength, Math.sqrt((1 - 0.04) * (1 - 0.25)), EXAMPLE);
    expectNear(inside.exit([0, 0], [1, 0])[0], inside.halfLength, EXAMPLE);
  });

  it('leaves nothing where the offset is half of the width or more', () => {
    for (const one of ['ellipsoid', 'box'] as const)
      for (const offset of [-0.2, -0.3])
        expect(parallelCurve(0.6, 0.4, offset, settings({ shape: one }))).toBeUndefined();
  });

  it('rounds the corners of a box outside and not inside', () => {
    const box = settings({ shape: 'box' });
    const half = Math.SQRT1_2;
    const round = parallelCurve(0.4, 0.4, 0.1, box)!.exit([0, 0], [half, half]);
    expectNear(round[0], 0.2 + 0.1 * half, EXAMPLE);
    const sharp = parallelCurve(0.4, 0.4, -0.1, box)!.exit([0, 0], [half, half]);
    expectNear(sharp[0], 0.1, EXAMPLE);
  });
});

describe('outline and footOutline', () => {
  it('are the padding outside, and half a foot inside of that', () => {
    expectNear(outline(0.6, 0.4, settings())!.halfLength, 0.30635, EXAMPLE);
    expectNear(footOutline(0.6, 0.4, settings())!.halfLength, 0.25635, EXAMPLE);
    expectNear(footOutline(0.4, 0.6, settings())!.halfWidth, 0.15635, EXAMPLE);
    expect(footOutline(0.6, 0.4, settings({ footSize: 0.5 }))).toBeUndefined();
  });
});

describe('ring and isInside', () => {
  it('go once around, counterclockwise, alike on both sides of both axes', () => {
    const curve = footOutline(0.6, 0.4, settings())!;
    const points = ring(curve, 48);
    expect(points).toHaveLength(48);
    for (const [i, p] of points.entries()) {
      const [x, y] = curve.at((2 * Math.PI * i) / 48);
      // The same point by another way.
      expect(Math.hypot(x - p[0], y - p[1])).toBeLessThan(1e-9);
      expect(points[(48 - i) % 48]).toEqual([p[0], -p[1] + 0]);
    }
  });

  it('tell inside from outside', () => {
    const curve = footOutline(0.6, 0.4, settings())!;
    expect(isInside(curve, [0, 0])).toBe(true);
    expect(isInside(curve, [0.256, 0])).toBe(true);
    expect(isInside(curve, [0.257, 0])).toBe(false);
    expect(isInside(curve, [Number.NaN, 0])).toBe(false);
  });
});
