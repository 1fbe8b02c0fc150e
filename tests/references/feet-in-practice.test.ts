/** Where feet and ribs go by habit of the trade. All of it is common practice, no source. */

import { describe, expect, it } from 'vitest';
import { feet } from '../../src/calculation/feet/feet.ts';
import { footOutline, isInside } from '../../src/calculation/feet/outline.ts';
import { layers } from '../../src/calculation/shell/layers.ts';
import { bending } from '../../src/calculation/strength/bending.ts';
import { ribHeight } from '../../src/calculation/strength/rib-height.ts';
import { known, settings } from '../calculation/kit.ts';

const s = settings();

describe('common practice, no source', () => {
  it('three feet stand as far apart as possible: none of them can go farther out', () => {
    for (const [length, width] of [
      [0.6, 0.4],
      [0.4, 0.4],
      [0.9, 0.3],
    ] as const) {
      const found = known(feet(length, width, 10, [0, 0], s));
      const curve = footOutline(length, width, s)!;
      // A thousandth farther out each would leave the outline, a thousandth farther in each is inside.
      for (const [x, y] of found) {
        expect(isInside(curve, [1.001 * x, 1.001 * y])).toBe(false);
        expect(isInside(curve, [0.999 * x, 0.999 * y])).toBe(true);
      }
    }
  });

  it('feet of a long heavy jacket stand about a fifth of its length from each end, which bends it far less', () => {
    for (const [x] of known(feet(1.5, 0.4, 60, [0, 0], s))) expect((0.75 - Math.abs(x)) / 1.5).toBeCloseTo(0.2, 9);
    expect(known(bending(1.5, 60, 0.3))).toBeLessThan(known(bending(1.5, 60, 0.05)) / 3);
  });

  it('a thick half needs no rib, a thin and slender one does', () => {
    // A slab of 3 m: as many layers as its weight asks for, then only the least, and wet.
    const thick = known(layers(350, s));
    expect(ribHeight(3, 0.3, 0.15, 350, thick, s)).toBe(0);
    expect(known(ribHeight(3, 0.3, 0.15, 350, 4, settings({ condition: 'wet' })))).toBeGreaterThan(0);
  });
});
