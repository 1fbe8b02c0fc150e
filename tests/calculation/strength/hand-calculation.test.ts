/** Compares the product with the numbers of `hand-calculation.md`, step by step. */

import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { thickness } from '../../../src/calculation/shell/thickness.ts';
import { allowedStress } from '../../../src/calculation/strength/allowed-stress.ts';
import { moment } from '../../../src/calculation/strength/along-length.ts';
import { arc } from '../../../src/calculation/strength/arc.ts';
import { kelvin } from '../../../src/calculation/strength/kelvin.ts';
import { crownRadius, footRadius } from '../../../src/calculation/strength/over-foot.ts';
import { beta, plate } from '../../../src/calculation/strength/plate.ts';
import { safetyFactor } from '../../../src/calculation/strength/safety-factor.ts';
import { centroid, section } from '../../../src/calculation/strength/section.ts';
import { circleRatio, coefficients, shellPoint } from '../../../src/calculation/strength/shell-point.ts';
import { strength } from '../../../src/calculation/strength/strength.ts';
import { expectNear, known, settings } from '../kit.ts';

const page = readFileSync(new URL('hand-calculation.md', import.meta.url), 'utf8');
const values = new Map(
  [...page.matchAll(/^\| (\w+) +\| (-?[\d.]+) +\|/gm)].map(([, name, value]) => [name!, Number(value)]),
);

/** The value of a symbol on the page; a symbol that is not there fails the test. */
const by = (name: string): number => {
  const value = values.get(name);
  if (value === undefined) throw new Error(`${name} is not on the page`);
  return value;
};

/** The page gives ten digits; an area less a square loses one. */
const PAGE = 2e-9;

const s = settings();
const [L, W, H, m, n] = ['L', 'W', 'H', 'm', 'n'].map(by) as [number, number, number, number, number];

describe('the hand calculation', () => {
  it('has every step in its tables', () => {
    expect(values.size).toBe(44);
  });

  it('starts from the defaults', () => {
    expectNear(thickness(n, s), by('s'), PAGE);
    expectNear(allowedStress(s), by('allowed'), PAGE);
    expect(s.paddingThickness).toBe(by('t'));
    expect(s.flange).toBe(by('f'));
  });

  it('along its length', () => {
    expectNear(moment(L, W, m, s), by('M_middle'), PAGE);
    const line = arc(by('A'), by('B'));
    expectNear(line.length, by('arc'), PAGE);
    expectNear(line.first, by('arc_first'), PAGE);
    expectNear(line.second, by('arc_second'), PAGE);
    const half = section(W, H, by('s'), by('t'), by('f'));
    expectNear(half.area, by('area'), PAGE);
    expectNear(half.first, by('first'), PAGE);
    expectNear(half.second, by('second'), PAGE);
    expectNear(centroid(half), by('depth'), PAGE);
    expectNear(known(strength(L, W, H, m, n, s))[0].stress, by('stress_along'), PAGE);
    expectNear(known(strength(L, W, H, m, n, s))[0].factor, by('factor_along'), PAGE);
    expectNear((by('M_middle') * by('c')) / by('I'), by('stress_along'), PAGE);
  });

  it('across', () => {
    expectNear(known(strength(L, W, H, m, n, s))[1].stress, by('stress_across'), PAGE);
    expectNear(known(strength(L, W, H, m, n, s))[1].factor, by('factor_across'), PAGE);
    expectNear((6 * by('M_crown')) / by('s') ** 2, by('stress_across'), PAGE);
  });

  it('over one foot', () => {
    expectNear(footRadius(by('foot')), by('r0'), PAGE);
    expectNear(beta(L / W), by('beta'), PAGE);
    expectNear(plate(by('F'), by('r0'), by('s'), L, W), by('stress_plate'), PAGE);
    expectNear(crownRadius(L, W, H), by('R'), PAGE);
    const mu = circleRatio(by('r0'), by('s'), by('R'));
    expectNear(mu, by('mu'), PAGE);
    expectNear(kelvin(mu).kei * mu, by('kei_slope'), PAGE);
    expectNear((kelvin(mu).ker * mu * mu - 1) / mu, by('ker_slope'), PAGE);
    expectNear(coefficients(mu)[0], by('B_shell'), PAGE);
    expectNear(coefficients(mu)[1], by('C_shell'), PAGE);
    expectNear(shellPoint(by('F'), by('r0'), by('s'), by('R')), by('stress_shell'), PAGE);
    expectNear(known(strength(L, W, H, m, n, s))[2].stress, by('stress_shell'), PAGE);
    expectNear(safetyFactor(L, W, H, m, n, s), by('factor_foot'), PAGE);
  });
});
