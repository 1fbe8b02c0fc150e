import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { girthShellArea } from '../../../src/calculation/shell/girth-shell-area.ts';
import { girthArea } from '../../../src/calculation/size/girth-area.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED, settings } from '../kit.ts';

describe('girthShellArea', () => {
  it('gives the example values', () => {
    expectNear(girthShellArea([0, 0.5], [0.3, 0.3], settings()), 0.3325396759, EXAMPLE);
    expectNear(girthShellArea([0, 0.1, 0.4, 0.5], [0.4, 0.25, 0.25, 0.45], settings()), 0.3538288698, EXAMPLE);
    const inches = (list: number[]) => list.map((x) => x * 0.0254);
    expectNear(
      girthShellArea(inches([0, 4, 16, 20]), inches([16, 10, 10, 18]), settings()),
      3.89626897 * 0.3048 ** 2,
      EXAMPLE,
    );
  });

  it('is the surface itself without padding and flange, whatever the relief factor', () => {
    const bare = settings({ paddingThickness: 0, flange: 0, reliefFactor: 1.5 });
    expect(girthShellArea([0, 0.1, 0.5], [0, 0.3, 0.2], bare)).toBe(girthArea([0, 0.1, 0.5], [0, 0.3, 0.2]));
  });

  it('is a longer and thicker cylinder round a cylinder, with flanges round a rectangle', () => {
    const s = settings({ paddingThickness: 0.01, flange: 0.05 });
    const [r, l] = [0.11, 0.52];
    const seam = 2 * l + 4 * r;
    const expected = 2 * Math.PI * r * l + 2 * Math.PI * r * r + 2 * (seam * 0.05 + Math.PI * 0.05 ** 2);
    expectNear(girthShellArea([0, 0.5], [0.2 * Math.PI, 0.2 * Math.PI], s), expected, ROUNDING);
  });

  it('grows with each girth, the padding and the flange', () => {
    const x = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(x, x, x, x, (a, b, p, q) => {
        const whole = known(girthShellArea([0, p, p + q], [a, a, b], settings()));
        expect(known(girthShellArea([0, p, p + q], [1.1 * a, 1.1 * a, 1.1 * b], settings()))).toBeGreaterThan(whole);
        expect(known(girthShellArea([0, p, p + q], [a, a, b], settings({ flange: 0.06 })))).toBeGreaterThan(whole);
        expect(known(girthShellArea([0, p, p + q], [a, a, b], settings({ paddingThickness: 0.01 })))).toBeGreaterThan(
          whole,
        );
      }),
      { seed: SEED },
    );
  });

  it('refuses a chain that is wrong, and says when a result is too large', () => {
    expectFault(girthShellArea([0, 0], [0.3, 0.4], settings()), 'value', 'stations');
    expectFault(girthShellArea([0, 1], [0, 0], settings()), 'value', '');
    expectFault(girthShellArea([0, 1e308], [1e308, 1e308], settings()), 'overflow');
  });
});
