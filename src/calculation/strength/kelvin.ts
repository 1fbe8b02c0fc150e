/**
 * The two Kelvin functions that a shallow shell under a load on a circle needs, in the forms in which nothing cancels: kei′(x)/x and (1 + x·ker′(x))/x².
 *
 * Up to x = 4 the ascending series. Above, ker′ x + i·kei′ x = −e^(iπ/4)·K₁(x·e^(iπ/4)) with K₁(z) = ∫₀^∞ e^(−z·cosh t)·cosh t dt by the
 * trapezoidal rule, which for such an integrand gains digits faster than any power of the step.
 *
 * Limits: x above 0. Relative error about 1e-12.
 * Source: NIST Digital Library of Mathematical Functions, 10.61, 10.65 (series) and 10.32.9 (integral).
 * Example: x = 1: kei′ = 0.3523699136, ker′ = −0.6946038911.
 */

/** From here on by the integral: the series loses digits as its terms outgrow its sum [1]. */
const SERIES_UP_TO = 4;

/** Term of the series, relative to the first, that changes nothing any more [1]. */
const LAST_TERM = 1e-20;

/** Step of the trapezoidal rule [1]. */
const STEP = 0.0625;

/** Exponent at which the integrand has died away below rounding [1]. */
const NEGLIGIBLE = 45;

/** Euler's constant [1]. DLMF 5.2.3. */
export const EULER = 0.5772156649015329;

/** kei′(x)/x and (1 + x·ker′(x))/x². */
export interface Kelvin {
  readonly kei: number;
  readonly ker: number;
}

/**
 * With y = x²/4 and cₙ = yⁿ/n!²: ber = c₀ − c₂ + c₄ − …, bei = c₁ − c₃ + …;
 * ker = −ln(x/2)·ber + π/4·bei + Σ±ψ(n + 1)cₙ over even n, kei = −ln(x/2)·bei − π/4·ber + the same over odd n.
 * x times the derivative of cₙ is 2n·cₙ. All terms are taken over x², so that a small x loses nothing.
 */
const bySeries = (x: number): Kelvin => {
  const y = (x * x) / 4;
  const log = Math.log(x / 2);
  let term = 0.25;
  let psi = 1 - EULER;
  let kei = 0;
  let ker = 0;
  let sign = 1;
  for (let n = 1; term > LAST_TERM; n++) {
    // What stands with ln(x/2) and ψ is alike in both; π/4 takes the other function's derivative.
    const own = sign * term * (2 * n * (psi - log) - 1);
    const other = (Math.PI / 4) * sign * term * 2 * n;
    if (n % 2 === 1) {
      kei += own;
      ker += other;
      sign = -sign;
    } else {
      ker += own;
      kei -= other;
    }
    term *= y / ((n + 1) * (n + 1));
    psi += 1 / (n + 1);
  }
  return { kei, ker };
};

const byIntegral = (x: number): Kelvin => {
  const fall = x * Math.SQRT1_2;
  let real = 0;
  let imaginary = 0;
  for (let i = 0; ; i++) {
    const cosh = Math.cosh(i * STEP);
    const exponent = fall * (cosh - 1);
    if (!(exponent <= NEGLIGIBLE)) break;
    const weight = (i === 0 ? 0.5 : 1) * cosh * Math.exp(-exponent);
    real += weight * Math.cos(fall * cosh);
    imaginary -= weight * Math.sin(fall * cosh);
  }
  // −e^(iπ/4)·K₁, with the factor e^(−x/√2) that was kept out of the sum.
  const scale = STEP * Math.exp(-fall) * Math.SQRT1_2;
  return { kei: (-scale * (real + imaginary)) / x, ker: (1 / x - scale * (real - imaginary)) / x };
};

/** @param x above 0 [1] */
export const kelvin = (x: number): Kelvin => (x <= SERIES_UP_TO ? bySeries(x) : byIntegral(x));
