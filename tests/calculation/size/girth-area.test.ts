import fc from 'fast-check';
import { describe, it } from 'vitest';
import { girthArea } from '../../../src/calculation/size/girth-area.ts';
import { EXAMPLE, expectFault, expectNear, known, ROUNDING, SEED } from '../kit.ts';

const GIRTH_PER_RADIUS = 2 * Math.PI;

describe('girthArea', () => {
  it('gives the example values', () => {
    expectNear(girthArea([0, 0.5], [0.3, 0.3]), 0.1643239449, EXAMPLE);
    expectNear(girthArea([0, 0.1, 0.4, 0.5], [0.4, 0.25, 0.25, 0.45]), 0.1739904874, EXAMPLE);
  });

  it('is that of a cylinder and of a cone, with their discs', () => {
    expectNear(girthArea([1, 3], [GIRTH_PER_RADIUS, GIRTH_PER_RADIUS]), 2 * Math.PI * 2 + 2 * Math.PI, ROUNDING);
    // Cone of radius 3 and height 4: slant 5.
    expectNear(girthArea([0, 4], [0, 3 * GIRTH_PER_RADIUS]), Math.PI * 3 * 5 + Math.PI * 9, ROUNDING);
  });

  it('comes near to a ball that is cut fine', () => {
    const n = 2000;
    const stations = Array.from({ length: n + 1 }, (_, i) => -Math.cos((Math.PI * i) / n));
    const girths = Array.from(
      { length: n + 1 },
      (_, i) => GIRTH_PER_RADIUS * Math.sin((Math.PI * i) / n) * (i % n ? 1 : 0),
    );
    // Chords of 1/2000 of half a turn: short by about (π/2000)²/8 in length and in radius.
    expectNear(girthArea(stations, girths), 4 * Math.PI, 1e-6);
  });

  it('does not mind where the first station is, which way the bone lies, or a station more on a straight piece', () => {
    const girth = fc.double({ min: 0.05, max: 2, noNaN: true });
    const step = fc.double({ min: 0.05, max: 2, noNaN: true });
    fc.assert(
      fc.property(girth, girth, girth, step, step, (a, b, c, x, y) => {
        const whole = known(girthArea([0, x, x + y], [a, b, c]));
        expectNear(girthArea([7, 7 + x, 7 + x + y], [a, b, c]), whole, ROUNDING);
        expectNear(girthArea([0, y, x + y], [c, b, a]), whole, ROUNDING);
        expectNear(girthArea([0, x / 2, x, x + y], [a, (a + b) / 2, b, c]), whole, ROUNDING);
        expectNear(girthArea([0, 2 * x, 2 * (x + y)], [2 * a, 2 * b, 2 * c]), 4 * whole, ROUNDING);
      }),
      { seed: SEED },
    );
  });

  it('refuses a chain that is wrong, and says when a result is too large', () => {
    expectFault(girthArea([0, 0], [0.3, 0.4]), 'value', 'stations');
    expectFault(girthArea([-1e308, 1e308], [1e308, 1e308]), 'overflow');
  });
});
