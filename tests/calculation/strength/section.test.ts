import { describe, expect, it } from 'vitest';
import { centroid, modulus, section } from '../../../src/calculation/strength/section.ts';
import { FLATTEST_BOX } from '../../../src/calculation/strength/strength.ts';
import { expectNear, ROUNDING } from '../kit.ts';

/** A second way: the section as 20 000 small rectangles along its mid-line, about its own centroid. */
const byPieces = (width: number, height: number, wall: number, padding: number, flange: number): number => {
  const a = width / 2 + padding + wall / 2;
  const b = height / 2 + padding + wall / 2;
  const steps = 20000;
  const pieces: [area: number, y: number][] = [];
  for (let i = 0; i < steps; i++) {
    const [u, v] = [(i * Math.PI) / steps, ((i + 1) * Math.PI) / steps];
    const length = Math.hypot(a * (Math.cos(v) - Math.cos(u)), b * (Math.sin(v) - Math.sin(u)));
    pieces.push([length * wall, b * Math.sin((u + v) / 2)]);
  }
  // Flanges cut into strips, for their own bending.
  for (let i = 0; i < 1000; i++) pieces.push([(2 * flange * wall) / 1000, wall * ((i + 0.5) / 1000 - 0.5)]);
  const area = pieces.reduce((sum, [one]) => sum + one, 0);
  const middle = pieces.reduce((sum, [one, y]) => sum + one * y, 0) / area;
  const inertia = pieces.reduce((sum, [one, y]) => sum + one * (y - middle) ** 2, 0);
  return inertia / Math.max(middle + wall / 2, b + wall / 2 - middle);
};

/** A box as it is: two straight walls, a flat floor, two flanges, each a rectangle about its own centroid. */
const ofBox = (width: number, height: number, wall: number, flange: number): number => {
  const across = width + wall;
  const depth = height / 2 + wall / 2;
  const parts = [
    { area: 2 * depth * wall, y: depth / 2, own: (2 * wall * depth ** 3) / 12 },
    { area: across * wall, y: depth, own: (across * wall ** 3) / 12 },
    { area: 2 * flange * wall, y: 0, own: (2 * flange * wall ** 3) / 12 },
  ];
  const area = parts.reduce((sum, p) => sum + p.area, 0);
  const middle = parts.reduce((sum, p) => sum + p.area * p.y, 0) / area;
  const inertia = parts.reduce((sum, p) => sum + p.own + p.area * (p.y - middle) ** 2, 0);
  return inertia / Math.max(middle + wall / 2, depth + wall / 2 - middle);
};

describe('section', () => {
  it('agrees with a section cut into pieces', () => {
    // Pieces of a 20 000th of the arc, chords for arcs.
    for (const [width, height, wall, padding, flange] of [
      [0.4, 0.3, 0.013, 0.00635, 0.05],
      [1, 0.2, 0.02, 0, 0],
      [0.1, 0.4, 0.005, 0.01, 0.07],
    ] as const)
      expectNear(
        modulus(section(width, height, wall, padding, flange)),
        byPieces(width, height, wall, padding, flange),
        1e-6,
      );
  });

  it('of a half ring is the closed form of the handbook', () => {
    // Thin half ring of radius r: centroid 2r/π, I = s·r³·(π/2 − 4/π).
    const r = 0.2 + 0.0005;
    const ring = section(0.4, 0.4, 0.001, 0, 0);
    expectNear(centroid(ring), (2 * r) / Math.PI, ROUNDING);
    expectNear(
      ring.second - ring.first * centroid(ring),
      0.001 * r ** 3 * (Math.PI / 2 - 4 / Math.PI),
      1e-11, // a difference of two numbers five times its size
    );
  });

  it('is on the safe side for a box up to the flattest, and not for a much flatter one', () => {
    const share = (width: number, height: number, wall: number, flange: number): number =>
      ofBox(width, height, wall, flange) / modulus(section(width, height, wall, 0, flange));
    for (const height of [0.1, 0.2, 0.4, 0.8])
      for (const wall of [0.02, 0.05, 0.1].map((part) => (part * height) / 2))
        for (const flange of [0, 0.05]) {
          for (const ratio of [0.5, 1, 1.5, 2, FLATTEST_BOX])
            expect(share(ratio * height, height, wall, flange)).toBeGreaterThan(1);
          expect(share(8 * height, height, wall, flange)).toBeLessThan(1);
        }
    expect(share(1.6, 0.2, 0.0025, 0)).toBeGreaterThan(0.5);
    expect(share(0.2, 0.2, 0.005, 0)).toBeLessThan(1.2);
  });

  it('is stiffer with wider flanges, a thicker wall and more depth', () => {
    const plain = modulus(section(0.4, 0.3, 0.013, 0.006, 0.05));
    expect(modulus(section(0.4, 0.3, 0.013, 0.006, 0.07))).toBeGreaterThan(plain);
    expect(modulus(section(0.4, 0.3, 0.02, 0.006, 0.05))).toBeGreaterThan(plain);
    expect(modulus(section(0.4, 0.4, 0.013, 0.006, 0.05))).toBeGreaterThan(plain);
  });
});
