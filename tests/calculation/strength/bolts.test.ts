import { describe, expect, it } from 'vitest';
import { bolts, limits } from '../../../src/calculation/strength/bolts.ts';
import { expectFault, NOT_POSITIVE, settings } from '../kit.ts';

describe('bolts', () => {
  it('gives the example value', () => {
    expect(bolts(1.65, settings())).toBe(9);
  });

  it('is at least 4, and not one more for rounding', () => {
    expect(bolts(0.3, settings())).toBe(4);
    // 70 in at 7 in: in metres the quotient is a little above 10.
    expect(bolts(70 * 0.0254, settings({ boltSpacing: 7 * 0.0254 }))).toBe(10);
    expect(bolts(1.801, settings())).toBe(10);
  });

  it('says where it is doubtful', () => {
    const doubtful = (...input: Parameters<typeof bolts>): number => limits.filter((l) => !l.holds(...input)).length;
    expect(doubtful(1.65, settings())).toBe(0);
    expect(doubtful(0.4, settings({ flange: 0.025 }))).toBe(0);
    expect(doubtful(0.39, settings())).toBe(1);
    expect(doubtful(1.65, settings({ flange: 0.02 }))).toBe(1);
  });

  it('refuses what is not above 0', () => {
    for (const bad of NOT_POSITIVE) expectFault(bolts(bad, settings()), 'value', 'seam');
    expectFault(bolts(1e308, settings({ boltSpacing: 1e-3 })), 'overflow');
  });
});
