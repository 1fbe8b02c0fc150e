import { describe, expect, it } from 'vitest';
import { couplingMultiplier, GRIPS } from '../../../src/calculation/handling/coupling.ts';

describe('couplingMultiplier', () => {
  it('tells low from high hands for a fair grip alone', () => {
    expect(couplingMultiplier('fair', true)).toBe(0.95);
    expect(couplingMultiplier('fair', false)).toBe(1);
    expect(couplingMultiplier('good', true)).toBe(couplingMultiplier('good', false));
    expect(couplingMultiplier('poor', true)).toBe(couplingMultiplier('poor', false));
  });

  it.each([true, false])('never rises from good to poor, hands low %s', (low) => {
    const [good, fair, poor] = GRIPS.map((grip) => couplingMultiplier(grip, low));
    expect(good).toBe(1);
    expect(fair).toBeLessThanOrEqual(good!);
    expect(poor).toBeLessThan(fair!);
  });
});
