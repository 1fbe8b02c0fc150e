import { describe, expect, it } from 'vitest';
import { crownRadius, footRadius, overFoot } from '../../../src/calculation/strength/over-foot.ts';
import { plate } from '../../../src/calculation/strength/plate.ts';
import { shellPoint } from '../../../src/calculation/strength/shell-point.ts';
import { expectNear, ROUNDING, settings } from '../kit.ts';

describe('overFoot', () => {
  it('spreads half of the weight over a circle as large as the foot', () => {
    expectNear(Math.PI * footRadius(0.1) ** 2, 0.01, ROUNDING);
    const force = (30 * 9.80665) / 2;
    const shell = shellPoint(force, footRadius(0.1), 0.01, 0.4);
    expectNear(overFoot(0.6, 0.4, 0.3, 30, 0.01, settings()), shell, ROUNDING);
    const flat = plate(force, footRadius(0.1), 0.01, 0.6, 0.4);
    expectNear(overFoot(0.6, 0.4, 0.3, 30, 0.01, settings({ shape: 'box' })), flat, ROUNDING);
    expect(shell).toBeLessThan(flat);
  });

  it('takes the crown of a sphere by its radius', () => {
    expectNear(crownRadius(0.4, 0.4, 0.4), 0.2, ROUNDING);
  });
});
