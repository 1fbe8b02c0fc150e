import { describe, expect, it } from 'vitest';
import { saturationPressure } from '../../../src/calculation/weight/saturation-pressure.ts';
import { expectNear, ROUNDING } from '../kit.ts';

describe('saturationPressure', () => {
  // From memory: verification table of IAPWS SR1-86(1992), in kPa, to the digits printed there.
  it.each([
    [273.16, 0.611657, 1e-6],
    [373.1243, 101.325, 1e-6],
    [647.096, 22064, 1e-9],
  ])('%d K: %d kPa', (kelvin, pressure, tolerance) => {
    expectNear(saturationPressure(kelvin - 273.15), pressure, tolerance);
  });

  it('takes the critical pressure for what it is', () => {
    expectNear(saturationPressure(647.096 - 273.15), 22064, ROUNDING);
  });

  it('rises with temperature, as steeply as the heat of evaporation tells (Clausius and Clapeyron)', () => {
    for (let t = 0; t <= 50; t += 5) {
      const slope = (saturationPressure(t + 0.01) - saturationPressure(t - 0.01)) / 0.02;
      const kelvin = t + 273.15;
      // Vapour as an ideal gas of 0.46152 kJ/(kg·K), heat 2501 − 2.381·T: both are good to some 0.5 %.
      expectNear(slope, ((2501 - 2.381 * t) * saturationPressure(t)) / (0.46152 * kelvin * kelvin), 5e-3);
    }
    expect(saturationPressure(-5)).toBeGreaterThan(0);
    expect(saturationPressure(-5)).toBeLessThan(saturationPressure(0));
  });
});
