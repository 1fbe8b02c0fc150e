import fc from 'fast-check';
import { describe, it } from 'vitest';
import { girthVolume } from '../../../src/calculation/size/girth-volume.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED } from '../kit.ts';

const GIRTH_PER_RADIUS = 2 * Math.PI;

describe('girthVolume', () => {
  it('gives the example values', () => {
    expectNear(girthVolume([0, 0.5], [0.3, 0.3]), 3.58098622e-3, EXAMPLE);
    expectNear(girthVolume([0, 0.1, 0.4, 0.5], [0.4, 0.25, 0.25, 0.45]), 3.348885261e-3, EXAMPLE);
    const inches = (list: number[]) => list.map((x) => x * 0.0254);
    expectNear(girthVolume(inches([0, 4, 16, 20]), inches([16, 10, 10, 18])), 0.1240327874 * 0.3048 ** 3, EXAMPLE);
  });

  it('is that of a cone', () => {
    expectNear(girthVolume([0, 4], [3 * GIRTH_PER_RADIUS, 0]), (Math.PI * 9 * 4) / 3, ROUNDING);
  });

  it('does not mind which way the bone lies, or a station more on a straight piece; scales with the cube', () => {
    const x = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(x, x, x, x, x, (a, b, c, p, q) => {
        const whole = known(girthVolume([0, p, p + q], [a, b, c]));
        expectNear(girthVolume([0, q, p + q], [c, b, a]), whole, ROUNDING);
        expectNear(girthVolume([0, p / 2, p, p + q], [a, (a + b) / 2, b, c]), whole, ROUNDING);
        expectNear(girthVolume([0, 2 * p, 2 * (p + q)], [2 * a, 2 * b, 2 * c]), 8 * whole, ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('refuses a chain that is wrong, and says when a result is too large', () => {
    expectFault(girthVolume([0, 1], [0, 0]), 'value', '');
    expectFault(girthVolume([0, 1], [1e200, 1e200]), 'overflow');
  });
});
