import { COMBINED_WATER, DIHYDRATE_DENSITY } from '../constants.ts';
import { dryDensity } from '../mixing/slurry.ts';

/** Minimum flexural yield of glass-reinforced gypsum [Pa]: 1200 psi exactly. Published minimum, tested to ASTM C947. */
export const MINIMUM_YIELD = 8273708.752;

/** Exponent of the porosity fit σ = σ0·exp(−bP). Derived: fit to four published strengths of gypsum plasters and cements. */
export const POROSITY_EXPONENT = 5.23;

/** Water ratio of the mix whose minimum yield is published [kg/kg]. Published consistency of gypsum cement. */
export const REFERENCE_RATIO = 0.38;

/** Porosity of a set and dried cast, 1 − dry density/density of dihydrate. */
export const porosity = (ratio: number): number => 1 - dryDensity(ratio) / DIHYDRATE_DENSITY;

/**
 * Flexural strength of a shell, weaker for wetter mixes.
 *
 * σ = σmin·min(1, exp(−5.23·(P(r) − P(0.38)))), P the porosity of the dry cast.
 *
 * @param ratio water ratio [kg/kg], above 0.18618
 * @returns strength [Pa]; never above the published minimum
 * Source: published minimum yield of glass-reinforced gypsum; form of the fit: Ryshkewitch 1953, J. Am. Ceram. Soc. 36:65.
 */
export const glassReinforcedStrength = (ratio: number): number =>
  ratio > COMBINED_WATER
    ? MINIMUM_YIELD * Math.min(1, Math.exp(-POROSITY_EXPONENT * (porosity(ratio) - porosity(REFERENCE_RATIO))))
    : MINIMUM_YIELD;
