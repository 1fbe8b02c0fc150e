import { ABSOLUTE_ZERO } from '../constants.ts';

/** Critical temperature of water [K]. IAPWS. */
export const CRITICAL_TEMPERATURE = 647.096;

/** Critical pressure of water [kPa]. IAPWS. */
export const CRITICAL_PRESSURE = 22064;

/** Coefficient of τ [1]. Wagner and Pruß 1993. */
export const SATURATION_A1 = -7.85951783;

/** Coefficient of τ^1.5 [1]. Wagner and Pruß 1993. */
export const SATURATION_A2 = 1.84408259;

/** Coefficient of τ³ [1]. Wagner and Pruß 1993. */
export const SATURATION_A3 = -11.7866497;

/** Coefficient of τ^3.5 [1]. Wagner and Pruß 1993. */
export const SATURATION_A4 = 22.6807411;

/** Coefficient of τ⁴ [1]. Wagner and Pruß 1993. */
export const SATURATION_A5 = -15.9618719;

/** Coefficient of τ^7.5 [1]. Wagner and Pruß 1993. */
export const SATURATION_A6 = 1.80122502;

/**
 * Pressure of water vapour that is saturated over liquid water.
 *
 * ln(p/pc) = (Tc/T)·(a1·τ + a2·τ^1.5 + a3·τ³ + a4·τ^3.5 + a5·τ⁴ + a6·τ^7.5), τ = 1 − T/Tc.
 *
 * @param temperature of the water [°C]
 * @returns pressure [kPa]
 * Limits: 0.01 to 373.946 °C; carried on to a few degrees below freezing, where it stands for supercooled water.
 * Source: W. Wagner and A. Pruß, J. Phys. Chem. Ref. Data 22 (1993) 783, equation 1; IAPWS SR1-86(1992).
 * Example: 20 °C, 2.339 kPa.
 */
export const saturationPressure = (temperature: number): number => {
  const kelvin = temperature - ABSOLUTE_ZERO;
  const tau = 1 - kelvin / CRITICAL_TEMPERATURE;
  const root = Math.sqrt(tau);
  const sum =
    SATURATION_A1 * tau +
    SATURATION_A2 * tau * root +
    SATURATION_A3 * tau ** 3 +
    SATURATION_A4 * tau ** 3 * root +
    SATURATION_A5 * tau ** 4 +
    SATURATION_A6 * tau ** 7 * root;
  return CRITICAL_PRESSURE * Math.exp((CRITICAL_TEMPERATURE / kelvin) * sum);
};
