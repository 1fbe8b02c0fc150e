/**
 * Statics of three feet: rows T-01 to T-10.
 *
 * How known: [D] derived from statics; [R] read in a source; [M] from memory.
 */

import { describe, expect, it } from 'vitest';
import { balance } from '../../src/calculation/feet/balance.ts';
import { feet } from '../../src/calculation/feet/feet.ts';
import { footLoads } from '../../src/calculation/feet/foot-loads.ts';
import { margin } from '../../src/calculation/feet/margin.ts';
import type { Feet, Point } from '../../src/calculation/feet/points.ts';
import { stable } from '../../src/calculation/feet/stable.ts';
import { tipAngle } from '../../src/calculation/feet/tip-angle.ts';
import { DEFAULT_SETTINGS } from '../../src/calculation/settings.ts';
import { expectNear, known, ROUNDING, settings } from '../calculation/kit.ts';

const FEET: Feet = [
  [0, 0],
  [60, 0],
  [20, 40],
];
const CENTRE: Point = [25, 12];

/** The digits that the rows give. */
const SIX_DIGITS = 1e-6;

/** Three feet on a circle, as far apart as they can be. */
const onCircle = (radius: number): Feet => {
  const at = (turn: number): Point => [
    radius * Math.cos((turn * 2 * Math.PI) / 3),
    radius * Math.sin((turn * 2 * Math.PI) / 3),
  ];
  return [at(0), at(1), at(2)];
};

describe('three feet', () => {
  it('T-01: loads 191.6667, 158.3333 and 150 under 500 [D]', () => {
    const loads = known(footLoads(FEET, CENTRE, 500));
    for (const [i, expected] of [191.6667, 158.3333, 150].entries()) expectNear(loads[i]!, expected, SIX_DIGITS);
    // And back: the loads as readings of three scales.
    const [x, y] = known(balance(FEET, loads));
    expectNear(x, 25, ROUNDING);
    expectNear(y, 12, ROUNDING);
  });

  it('T-02: margin 12, the least of 12, 16.263 and 16.994 [D]; definition of McGhee and Frank 1968 [M]', () => {
    expectNear(margin(FEET, CENTRE), 12, ROUNDING);
    // The other two edges, each made the nearest by moving the third foot out of the way.
    expectNear(
      margin(
        [
          [60, 0],
          [20, 40],
          [-500, -300],
        ],
        CENTRE,
      ),
      16.26346,
      SIX_DIGITS,
    );
    expectNear(
      margin(
        [
          [0, 0],
          [20, 40],
          [500, -300],
        ],
        CENTRE,
      ),
      16.99412,
      SIX_DIGITS,
    );
  });

  it('T-03: tips at 30.9638 degrees with the balance point 20 high [D]', () => {
    // Half of the row's last digit.
    expect(Math.abs(known(tipAngle(FEET, CENTRE, 20)) - 30.9638)).toBeLessThan(5e-5);
  });

  it('T-05: three feet on a circle have a margin of half its radius, and FEET finds them [D]', () => {
    expectNear(margin(onCircle(3)), 1.5, ROUNDING);
    // A round jacket of 60 cm: feet 5 cm inside of the padded edge, on a circle of 25.635 cm.
    const found = known(feet(0.6, 0.6, 10, [0, 0], settings()));
    expectNear(margin(found), 0.25635 / 2, 1e-9);
  });

  it('T-06: a balance point 1 ft up over a base 3 ft across tips at 56.3 degrees [R]', () => {
    // Feet on a circle of twice 1.5 ft have the margin of a round base 3 ft across.
    expectNear(tipAngle(onCircle(3), [0, 0], 1), 56.3, 1e-3);
  });

  it('T-07: lifting the balance point over the edge takes a rise of 3.32381 [D]; Messuri and Klein 1985 [M]', () => {
    expectNear(Math.hypot(known(margin(FEET, CENTRE)), 20) - 20, 3.32381, SIX_DIGITS);
  });

  it('T-08: 10 degrees in transport need a margin of 0.176327 of the height, 5 degrees 0.0874887 [R], [D]', () => {
    for (const [tilt, share] of [
      [10, 0.176327],
      [5, 0.0874887],
    ] as const) {
      const s = settings({ leastTilt: tilt });
      // Either side of the limit by 1e-5 of it: the row has six digits.
      expect(stable(onCircle(2 * share * 1.00001), [0, 0], 1, s)).toBe(true);
      expect(stable(onCircle(2 * share * 0.99999), [0, 0], 1, s)).toBe(false);
    }
  });

  it('T-09: the yardstick is a plane of 10 degrees in the worst direction [R]', () => {
    expect(DEFAULT_SETTINGS.leastTilt).toBe(10);
    // The worst direction of a long triangle is over its long edges, not its ends.
    const long: Feet = [
      [-10, -1],
      [-10, 1],
      [10, 0],
    ];
    expect(known(margin(long))).toBeLessThan(0.5);
  });

  it('T-10: on the line between two feet they share by the lever, W(L − x)/L and Wx/L [D]', () => {
    const loads = known(footLoads(FEET, [45, 0], 80));
    expectNear(loads[0], (80 * 15) / 60, ROUNDING);
    expectNear(loads[1], (80 * 45) / 60, ROUNDING);
    expect(loads[2]).toBe(0);
  });
});
