import { describe, expect, it } from 'vitest';
import { allowedStress } from '../../../src/calculation/strength/allowed-stress.ts';
import { settings } from '../kit.ts';

describe('allowedStress', () => {
  it('is the flexural strength, less when wet', () => {
    expect(allowedStress(settings({ flexuralStrength: 6e6 }))).toBe(6e6);
    expect(allowedStress(settings({ flexuralStrength: 6e6, condition: 'wet' }))).toBe(3e6);
    expect(allowedStress(settings({ flexuralStrength: 6e6, condition: 'wet', wetStrengthFactor: 0.4 }))).toBe(2.4e6);
  });
});
