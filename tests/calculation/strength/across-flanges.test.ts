import { describe, it } from 'vitest';
import { acrossFlanges } from '../../../src/calculation/strength/across-flanges.ts';
import { expectNear, ROUNDING, settings } from '../kit.ts';

describe('acrossFlanges', () => {
  it('is that of a strip on two supports: w·span²/8 over a metre, 6M/s²', () => {
    const pressure = (30 * 9.80665) / (0.8 * 0.4127);
    const expected = (6 * pressure * 0.4127 ** 2) / 8 / 0.01 ** 2;
    expectNear(acrossFlanges(0.8, 0.4, 30, 0.01, settings()), expected, ROUNDING);
  });

  it('spans the shorter side', () => {
    expectNear(acrossFlanges(0.4, 0.8, 30, 0.01, settings()), acrossFlanges(0.8, 0.4, 30, 0.01, settings()), ROUNDING);
  });
});
