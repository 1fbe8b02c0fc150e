import { describe, expect, it } from 'vitest';
import { safetyFactor } from '../../../src/calculation/strength/safety-factor.ts';
import { strength } from '../../../src/calculation/strength/strength.ts';
import { EXAMPLE, expectFault, expectNear, known, settings } from '../kit.ts';

describe('safetyFactor', () => {
  it('gives the example values', () => {
    expectNear(safetyFactor(1.2, 0.4, 0.3, 50, 8, settings()), 9.589162895, EXAMPLE);
    expectNear(safetyFactor(1.2, 0.4, 0.3, 50, 8, settings({ condition: 'wet' })), 4.794581447, EXAMPLE);
  });

  it('is the least of the three', () => {
    for (const layers of [4, 8, 16]) {
      const factors = known(strength(3, 0.3, 0.15, 350, layers, settings())).map((row) => row.factor);
      expect(safetyFactor(3, 0.3, 0.15, 350, layers, settings())).toBe(Math.min(...factors));
    }
  });

  it('passes faults on', () => {
    expectFault(safetyFactor(1.2, 0.4, 0.3, 50, 0, settings()), 'value', 'layers');
  });
});
