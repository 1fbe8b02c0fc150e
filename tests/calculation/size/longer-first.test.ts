import { describe, expect, it } from 'vitest';
import { longerFirst } from '../../../src/calculation/size/longer-first.ts';
import { settings } from '../kit.ts';

describe('longerFirst', () => {
  it('puts the longer of length and width first', () => {
    for (const shape of ['ellipsoid', 'box'] as const) {
      expect(longerFirst(0.4, 0.6, settings({ shape }))).toEqual([0.6, 0.4]);
      expect(longerFirst(0.6, 0.4, settings({ shape }))).toEqual([0.6, 0.4]);
    }
  });

  it('leaves a cylinder as it was given, since its axis lies along the length', () => {
    expect(longerFirst(0.4, 0.6, settings({ shape: 'cylinder' }))).toEqual([0.4, 0.6]);
  });
});
