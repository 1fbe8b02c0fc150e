import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/calculation/result.ts';
import { ribHeight, withRib } from '../../../src/calculation/strength/rib-height.ts';
import { modulus, section } from '../../../src/calculation/strength/section.ts';
import { strength } from '../../../src/calculation/strength/strength.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, settings } from '../kit.ts';

const wet = settings({ condition: 'wet' });

/** A second way: the section and its rib cut into thin level strips below the arc's own pieces. */
const byStrips = (
  width: number,
  height: number,
  wall: number,
  core: number,
  ribWidth: number,
  ribWall: number,
): number => {
  const [padding, flange] = [0.00635, 0.05];
  const a = width / 2 + padding + wall / 2;
  const b = height / 2 + padding + wall / 2;
  const strips: [area: number, y: number][] = [];
  for (let i = 0; i < 20000; i++) {
    const [u, v] = [(i * Math.PI) / 20000, ((i + 1) * Math.PI) / 20000];
    const length = Math.hypot(a * (Math.cos(v) - Math.cos(u)), b * (Math.sin(v) - Math.sin(u)));
    strips.push([length * wall, b * Math.sin((u + v) / 2)]);
  }
  const level = (from: number, to: number, across: number): void => {
    for (let i = 0; i < 2000; i++)
      strips.push([(across * (to - from)) / 2000, from + ((to - from) * (i + 0.5)) / 2000]);
  };
  const crown = b + wall / 2;
  level(-wall / 2, wall / 2, 2 * flange);
  level(crown, crown + core, 2 * ribWall);
  level(crown + core, crown + core + ribWall, ribWidth);
  const area = strips.reduce((sum, [one]) => sum + one, 0);
  const middle = strips.reduce((sum, [one, y]) => sum + one * y, 0) / area;
  const inertia = strips.reduce((sum, [one, y]) => sum + one * (y - middle) ** 2, 0);
  return inertia / Math.max(middle + wall / 2, crown + core + ribWall - middle);
};

describe('ribHeight', () => {
  it('gives the example values', () => {
    expect(ribHeight(1.2, 0.4, 0.3, 50, 8, settings())).toBe(0);
    expectNear(ribHeight(3, 0.3, 0.15, 350, 5, wet), 0.08, EXAMPLE);
  });

  it('has the section of arc, flanges, two webs and a cap', () => {
    // Strips of a 2000th of each part, chords for arcs.
    for (const core of [0.005, 0.08, 0.3])
      expectNear(
        modulus(withRib(section(0.3, 0.15, 0.0085, 0.00635, 0.05), core, 0.05, 0.006)),
        byStrips(0.3, 0.15, 0.0085, core, 0.05, 0.006),
        1e-5,
      );
  });

  it('is the least height that is enough', () => {
    const s = settings({ condition: 'wet', footHeight: 0.4 });
    for (const weight of [250, 300, 350]) {
      const core = known(ribHeight(3, 0.3, 0.15, weight, 5, s));
      const needed = known(strength(3, 0.3, 0.15, weight, 5, s))[0].factor;
      if (core === 0) {
        expect(needed).toBeGreaterThanOrEqual(2);
        continue;
      }
      expect(needed).toBeLessThan(2);
      const plain = section(0.3, 0.15, 0.0085, 0.00635, 0.05);
      const factor = (height: number): number =>
        (needed * modulus(withRib(plain, height, 0.05, 0.006))) / modulus(plain);
      expect(factor(core)).toBeGreaterThanOrEqual(2 - 1e-9);
      for (let lower = 0.005; lower < core - 1e-9; lower += 0.005) expect(factor(lower)).toBeLessThan(2);
    }
  });

  it('says so where the feet are lower than the rib, and where no rib is enough', () => {
    const low = ribHeight(3, 0.3, 0.15, 350, 5, settings({ condition: 'wet', footHeight: 0.05 }));
    expectFault(low, 'none');
    expect((low as Fault).problem).toContain('needs a rib of {rib}, but the feet are {feet} high');
    expectNear((low as Fault).amounts.rib!.value, 0.086, EXAMPLE);
    expect((low as Fault).amounts.feet!.value).toBe(0.05);
    const none = ribHeight(3, 0.3, 0.15, 1e5, 5, wet);
    expectFault(none, 'none');
    expect((none as Fault).problem).toContain('no rib up to {most} is enough');
    expectNear((none as Fault).amounts.most!.value, 0.3, EXAMPLE);
  });

  it('refuses what is not above 0', () => {
    expectPositiveArguments(
      (l, w, h, m, n) => ribHeight(l!, w!, h!, m!, n!, settings()),
      [1.2, 0.4, 0.3, 50, 8],
      ['length', 'width', 'height', 'total_weight', 'layers'],
    );
  });
});
