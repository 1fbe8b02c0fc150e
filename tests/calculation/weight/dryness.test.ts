import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Fault } from '../../../src/calculation/result.ts';
import { dryness } from '../../../src/calculation/weight/dryness.ts';
import { expectFault, expectNear, known, NEGATIVE, NOT_POSITIVE, ROUNDING, SEED } from '../kit.ts';

describe('dryness', () => {
  it('gives the example value', () => {
    expectNear(dryness(23, 25.5, 22.3), 0.78125, ROUNDING);
  });

  it('runs from wet to dry, and is held there', () => {
    expect(dryness(25.5, 25.5, 22.3)).toBe(0);
    expect(dryness(26, 25.5, 22.3)).toBe(0);
    expect(dryness(22.3, 25.5, 22.3)).toBe(1);
    expect(dryness(20, 25.5, 22.3)).toBe(1);
    expect(dryness(0, 25.5, 22.3)).toBe(1);
  });

  it('falls as the reading rises, and stays within 0 and 1', () => {
    const mass = fc.double({ min: 0.1, max: 1000, noNaN: true });
    fc.assert(
      fc.property(mass, mass, mass, (reading, dry, more) => {
        const share = known(dryness(reading, dry + more, dry));
        expect(share >= 0 && share <= 1).toBe(true);
        expect(known(dryness(reading * 1.01, dry + more, dry))).toBeLessThanOrEqual(share);
      }),
      { seed: SEED },
    );
  });

  it('refuses weights that cannot be', () => {
    for (const bad of NEGATIVE) expectFault(dryness(bad, 2, 1), 'value', 'reading');
    for (const bad of NOT_POSITIVE) {
      expectFault(dryness(1, bad, 1), 'value', 'wet');
      expectFault(dryness(1, 2, bad), 'value', 'dry');
    }
    expectFault(dryness(1, 2, 2), 'value', 'wet');
    const fault = dryness(1, 1, 2);
    expectFault(fault, 'value', 'wet');
    expect((fault as Fault).problem).toBe('must be above dry; check that the two weights are not swapped');
  });
});
