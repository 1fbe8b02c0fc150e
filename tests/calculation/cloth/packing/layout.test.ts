import { describe, expect, it } from 'vitest';
import { fitsRoll } from '../../../../src/calculation/cloth/packing/layout.ts';

describe('fitsRoll', () => {
  it('asks for the shorter side', () => {
    expect(fitsRoll({ length: 2, width: 1, count: 1 }, 1)).toBe(true);
    expect(fitsRoll({ length: 1, width: 2, count: 1 }, 1)).toBe(true);
    expect(fitsRoll({ length: 1.01, width: 2, count: 1 }, 1)).toBe(false);
    expect(fitsRoll({ length: Number.NaN, width: 1, count: 1 }, 1)).toBe(false);
  });
});
