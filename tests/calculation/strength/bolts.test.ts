import { describe, expect, it } from 'vitest';
import { bolts } from '../../../src/calculation/strength/bolts.ts';
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

  it('refuses what is not above 0', () => {
    for (const bad of NOT_POSITIVE) expectFault(bolts(bad, settings()), 'value', 'seam');
    expectFault(bolts(1e308, settings({ boltSpacing: 1e-3 })), 'overflow');
  });
});
