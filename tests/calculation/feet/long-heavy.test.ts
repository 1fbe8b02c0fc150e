import { describe, expect, it } from 'vitest';
import { longHeavy } from '../../../src/calculation/feet/long-heavy.ts';
import { settings } from '../kit.ts';

describe('longHeavy', () => {
  it('asks for both, length and weight', () => {
    expect(longHeavy(1.5, 0.5, 25, settings())).toBe(true);
    expect(longHeavy(1.49, 0.5, 25, settings())).toBe(false);
    expect(longHeavy(1.5, 0.5, 24.9, settings())).toBe(false);
  });

  it('follows its settings', () => {
    expect(longHeavy(1, 0.5, 10, settings({ longRatio: 2, longHeavyWeight: 10 }))).toBe(true);
    expect(longHeavy(1, 0.5, 1e-3, settings({ longRatio: 2, longHeavyWeight: 0 }))).toBe(true);
  });
});
