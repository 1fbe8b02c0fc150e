/**
 * A beam on two supports that stand as far in from both ends: rows B-01 to B-10, against a second way, double integration of its load step by step.
 *
 * How known: [D] derived from the equation of the beam; [R] read in a source; [M] from memory.
 */

import { describe, expect, it } from 'vitest';
import { bending } from '../../src/calculation/strength/bending.ts';
import { expectNear, known } from '../calculation/kit.ts';

/** Steps along the beam. Supports fall on a step for every inset with four decimals. */
const STEPS = 20000;

interface Bent {
  readonly support: number;
  readonly middle: number;
  readonly largest: number;
  /** Deflections, down above 0, and the slope at the end; in w·L⁴/EI and w·L³/EI. */
  readonly atMiddle: number;
  readonly atEnd: number;
  readonly endSlope: number;
  /** ∫slope², which shortens the beam seen from above. */
  readonly shortening: number;
}

/** Shear from load and reactions, moment from shear, slope from moment, deflection from slope: trapezoids, in units of w, L and EI. */
const integrate = (inset: number): Bent => {
  const h = 1 / STEPS;
  const moments = new Float64Array(STEPS + 1);
  // Moment at a place: the load left of it, less the reactions left of it, each half of the weight.
  for (let i = 0; i <= STEPS; i++) {
    const x = i * h;
    moments[i] = -(x * x) / 2 + Math.max(0, x - inset) / 2 + Math.max(0, x - (1 - inset)) / 2;
  }
  const slopes = new Float64Array(STEPS + 1);
  const deflections = new Float64Array(STEPS + 1);
  for (let i = 1; i <= STEPS; i++) slopes[i] = slopes[i - 1]! - ((moments[i - 1]! + moments[i]!) * h) / 2;
  const level = slopes[STEPS / 2]!;
  for (let i = 0; i <= STEPS; i++) slopes[i]! -= level;
  for (let i = 1; i <= STEPS; i++) deflections[i] = deflections[i - 1]! + ((slopes[i - 1]! + slopes[i]!) * h) / 2;
  const place = Math.floor(inset * STEPS);
  const share = inset * STEPS - place;
  const zero = deflections[place]! * (1 - share) + deflections[place + 1]! * share;
  let shortening = 0;
  for (let i = 0; i < STEPS; i++) shortening += ((slopes[i]! ** 2 + slopes[i + 1]! ** 2) * h) / 2;
  return {
    support: (inset * inset) / 2,
    middle: moments[STEPS / 2]!,
    largest: moments.reduce((most, one) => Math.max(most, Math.abs(one)), 0),
    atMiddle: deflections[STEPS / 2]! - zero,
    atEnd: deflections[0]! - zero,
    endSlope: slopes[0]!,
    shortening,
  };
};

/** The product's moment in units of w·L². */
const ours = (inset: number): number => known(bending(1, 1 / 9.80665, inset));

/** Steps of a 20 000th: a kink at the support lies up to half a step off. */
const STEPPED = 2e-4;

/** Deflections beside those on end supports, 0.013; what 20 000 trapezoids leave of a zero. */
const NO_DEFLECTION = 1e-9;

describe('beam on two supports', () => {
  it('has the moments of a beam integrated step by step', () => {
    for (let inset = 0; inset < 0.5; inset += 0.0137) expectNear(ours(inset), integrate(inset).largest, STEPPED);
  });

  it('B-01, B-02: equal moments at (√2 − 1)/2 of the length [D]; 0.207 for lifting piles at two points [R]', () => {
    const inset = (Math.SQRT2 - 1) / 2;
    expectNear(inset, 0.207106781186548, 1e-14);
    expectNear(ours(inset), 0.0214466094067, 1e-11);
    const { support, middle } = integrate(inset);
    expectNear(middle, support, STEPPED);
    // No other inset has less.
    for (let other = 0; other < 0.5; other += 0.001) expect(ours(other)).toBeGreaterThanOrEqual(ours(inset));
  });

  it('B-03: at 0.2113 of the length the ends are level [R], [D]', () => {
    expect(Math.abs(integrate(0.211324865405187).endSlope)).toBeLessThan(NO_DEFLECTION);
  });

  it('B-04, B-07: where the ends, and where the middle do not move [D]', () => {
    expect(Math.abs(integrate(0.214174997059).atEnd)).toBeLessThan(NO_DEFLECTION);
    expect(Math.abs(integrate(0.238612787526).atMiddle)).toBeLessThan(NO_DEFLECTION);
  });

  it('B-05: at 0.2203 of the length the beam shortens least [R], [D]', () => {
    const least = integrate(0.220309940683).shortening;
    for (const change of [-2e-3, -1e-3, 1e-3, 2e-3])
      expect(integrate(0.220309940683 + change).shortening).toBeGreaterThan(least);
  });

  it('B-06: at 0.2231 of the length ends and middle sink alike, 48.27 times less than on end supports [D]', () => {
    const { atMiddle, atEnd } = integrate(0.223149101095);
    expectNear(atMiddle, 2.69728e-4, 1e-5);
    expectNear(atEnd, atMiddle, 1e-5);
    expectNear(integrate(0).atMiddle / atMiddle, 48.27, 1e-4);
  });

  it('B-08: on end supports w·L²/8 [D] and 5/384·w·L⁴/EI [R]', () => {
    expectNear(ours(0), 1 / 8, 1e-12);
    expectNear(integrate(0).atMiddle, 5 / 384, 1e-7);
  });

  it('B-09: at a fifth of the length [R, practice with piles] 0.025, near the least and a fifth of that on end supports', () => {
    expectNear(ours(0.2), 0.025, 1e-12);
    expectNear(integrate(0.2).support, 0.02, 1e-12);
    const least = ours((Math.SQRT2 - 1) / 2);
    // 0.0071 of the length from the point of equal moments costs a sixth of the least moment …
    expect(0.2071067811865475 - 0.2).toBeLessThan(0.0072);
    expectNear(ours(0.2) / least, 1.16569, 1e-5);
    // … and saves four fifths of the moment on end supports, of the 83 % that could be saved.
    expectNear(1 - ours(0.2) / ours(0), 0.8, 1e-12);
    expectNear(1 - least / ours(0), 0.82843, 1e-5);
  });

  it('B-10: at the quarter points 0.03125 over the supports and none in the middle [D]', () => {
    expectNear(ours(0.25), 0.03125, 1e-12);
    const quarter = integrate(0.25);
    expect(Math.abs(quarter.middle)).toBeLessThan(1e-12);
    expectNear(quarter.atMiddle, -1.6276e-4, 1e-4);
    expectNear(quarter.atEnd, 1.13932e-3, 1e-5);
  });
});
