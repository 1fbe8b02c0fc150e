/** The ratio estimator of CALIBRATE, and Student's t behind its interval, against published values. */

import { describe, expect, it } from 'vitest';
import { calibrate } from '../../src/calculation/plans/calibrate.ts';
import { studentT } from '../../src/calculation/plans/student-t.ts';
import { expectNear, known } from '../calculation/kit.ts';

describe('volume of trees by their basal area', () => {
  // Published exercise: Scheaffer, Mendenhall and Ott, Elementary Survey Sampling, 6.1; its data and a worked solution were read.
  const basalArea = [0.3, 0.5, 0.4, 0.9, 0.7, 0.2, 0.6, 0.5, 0.8, 0.4, 0.8, 0.6];
  const volume = [6, 9, 7, 19, 15, 5, 12, 9, 20, 9, 18, 13];
  const n = basalArea.length;
  const found = known(calibrate(basalArea, volume));

  it('has the ratio 21.1940', () => {
    // Six digits printed.
    expectNear(found.ratio, 21.194, 5e-6);
    expect(found.jobs).toBe(12);
  });

  it('has the residual variance 1.75029, and the bound 186.317 on the error of the total', () => {
    // Table: t of 11 degrees of freedom is 2.201, four digits.
    const standardError = (found.high - found.ratio) / 2.201;
    const mean = basalArea.reduce((sum, x) => sum + x, 0) / n;
    const variance = n * (standardError * mean) ** 2;
    expectNear(variance, 1.75029, 1e-4);
    // The exercise: 250 trees of 75 square feet in all, two standard errors, without the 12 trees that were measured.
    const bound = 2 * 75 * Math.sqrt(((1 - n / 250) * variance) / n) * (250 / 75);
    expectNear(bound, 186.317, 5e-5);
  });
});

describe("table of Student's t", () => {
  // Published: upper critical values of Student's t distribution, NIST/SEMATECH e-Handbook of Statistical Methods, section 1.3.6.7.2; printed to three decimals.
  it.each([
    [1, 12.706, 63.657],
    [2, 4.303, 9.925],
    [3, 3.182, 5.841],
    [4, 2.776, 4.604],
    [5, 2.571, 4.032],
    [6, 2.447, 3.707],
    [7, 2.365, 3.499],
    [8, 2.306, 3.355],
    [9, 2.262, 3.25],
    [10, 2.228, 3.169],
    [11, 2.201, 3.106],
    [12, 2.179, 3.055],
    [13, 2.16, 3.012],
    [14, 2.145, 2.977],
    [15, 2.131, 2.947],
    [20, 2.086, 2.845],
    [25, 2.06, 2.787],
    [30, 2.042, 2.75],
    [40, 2.021, 2.704],
    [60, 2, 2.66],
    [100, 1.984, 2.626],
  ])('%d degrees of freedom', (freedom, t95, t99) => {
    // Half of the last digit printed.
    expect(Math.abs(studentT(0.95, freedom) - t95)).toBeLessThanOrEqual(5e-4);
    expect(Math.abs(studentT(0.99, freedom) - t99)).toBeLessThanOrEqual(5e-4);
  });
});
