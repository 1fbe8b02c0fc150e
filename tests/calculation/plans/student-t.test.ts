import { describe, expect, it } from 'vitest';
import { studentT } from '../../../src/calculation/plans/student-t.ts';
import { expectNear } from '../kit.ts';

describe('studentT', () => {
  it.each([
    // Independent calculation: roots of the regularised incomplete beta function to 30 digits.
    { freedom: 1, t95: 12.7062047361747, t99: 63.65674116287158 },
    { freedom: 2, t95: 4.302652729749464, t99: 9.924843200918293 },
    { freedom: 3, t95: 3.18244630528371, t99: 5.840909309733357 },
    { freedom: 4, t95: 2.776445105197794, t99: 4.604094871349993 },
    { freedom: 5, t95: 2.570581835636316, t99: 4.032142983555228 },
    { freedom: 10, t95: 2.228138851986275, t99: 3.169272672616951 },
    { freedom: 11, t95: 2.20098516009164, t99: 3.105806515539281 },
    { freedom: 30, t95: 2.042272456301238, t99: 2.749995653567225 },
    { freedom: 99, t95: 1.984216951586417, t99: 2.626405457280828 },
    { freedom: 100, t95: 1.983971518523552, t99: 2.625890521438018 },
    { freedom: 1000, t95: 1.962339080826408, t99: 2.580754698065951 },
    { freedom: 10000, t95: 1.960201239890626, t99: 2.576321046668529 },
  ])('$freedom degrees of freedom', ({ freedom, t95, t99 }) => {
    // Rounding of the sum, and of tan near a right angle for one degree of freedom.
    expectNear(studentT(0.95, freedom), t95, 1e-12);
    expectNear(studentT(0.99, freedom), t99, 1e-12);
  });

  it('has closed forms for one and two degrees of freedom', () => {
    for (const share of [0.5, 0.8, 0.95, 0.999]) {
      expectNear(studentT(share, 1), Math.tan((Math.PI / 2) * share), 1e-12);
      expectNear(studentT(share, 2), share * Math.sqrt(2 / (1 - share * share)), 1e-12);
    }
  });

  it('falls towards the normal distribution', () => {
    let before = Infinity;
    for (let freedom = 1; freedom <= 200; freedom++) {
      const t = studentT(0.95, freedom);
      expect(t).toBeLessThan(before);
      expect(t).toBeGreaterThan(1.959963984540054);
      before = t;
    }
  });
});
