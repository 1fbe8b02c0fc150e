import { describe, expect, it } from 'vitest';
import { evaporation, evaporationHeat } from '../../../src/calculation/weight/evaporation.ts';
import { saturationPressure } from '../../../src/calculation/weight/saturation-pressure.ts';
import { expectNear, ROUNDING } from '../kit.ts';

describe('evaporation', () => {
  it('is worked out by hand', () => {
    const difference = saturationPressure(15) - 0.4 * saturationPressure(25);
    expectNear(evaporation(15, 25, 0.4, 0.5), (difference * (0.089 + 0.0782 * 0.5)) / (2501 - 2.381 * 15), ROUNDING);
  });

  it('stops where the air is as moist as the surface', () => {
    expect(evaporation(20, 20, 1, 0.1)).toBe(0);
    expect(evaporation(10, 20, 0.99, 0.1)).toBeLessThan(0);
  });

  it('goes on in still air, and rises with the air speed', () => {
    expect(evaporation(15, 20, 0.5, 0)).toBeGreaterThan(0);
    expect(evaporation(15, 20, 0.5, 0.2)).toBeGreaterThan(evaporation(15, 20, 0.5, 0.1));
  });

  it('takes its heat from a falling line', () => {
    expectNear(evaporationHeat(0), 2501, ROUNDING);
    expectNear(evaporationHeat(0) - evaporationHeat(10), 23.81, ROUNDING);
  });
});
