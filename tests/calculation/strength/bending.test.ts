import { describe, expect, it } from 'vitest';
import { bending, limits } from '../../../src/calculation/strength/bending.ts';
import { EXAMPLE, expectFault, expectNear, expectPositiveArguments, known, NEGATIVE, ROUNDING } from '../kit.ts';

const INCH = 0.0254;
const POUND = 0.45359237;
const FOOT_POUND = POUND * 9.80665 * 0.3048;

describe('bending', () => {
  it('gives the example values', () => {
    expectNear(bending(1.2, 50, 0.24), 14.709975, EXAMPLE);
    expectNear(bending(1.2, 50, 0.05), 61.2915625, EXAMPLE);
    expectNear(bending(48 * INCH, 110 * POUND, 10 * INCH), 9.548611111 * FOOT_POUND, EXAMPLE);
  });

  it('is in proportion to weight and length, and largest on end supports or supports in the middle', () => {
    expectNear(bending(2.4, 150, 0.48), 6 * known(bending(1.2, 50, 0.24)), ROUNDING);
    expect(known(bending(1.2, 50, 0))).toBeGreaterThan(known(bending(1.2, 50, 0.1)));
    expect(known(bending(1.2, 50, 0.5))).toBeGreaterThan(known(bending(1.2, 50, 0.3)));
  });

  it('refuses an inset of half of the length or more, and what is not above 0', () => {
    expectPositiveArguments((l, m) => bending(l!, m!, 0), [1.2, 50], ['length', 'total_weight']);
    for (const bad of NEGATIVE) expectFault(bending(1.2, 50, bad), 'value', 'inset');
    expectFault(bending(1.2, 50, 0.6), 'value', 'inset');
    expectFault(bending(1e300, 1e300, 0), 'overflow');
  });

  it('says that far-in supports are doubtful', () => {
    expect(limits.every((l) => l.holds(1.2, 50, 0.24))).toBe(true);
    expect(limits.every((l) => l.holds(1.2, 50, 0.5))).toBe(false);
  });
});
