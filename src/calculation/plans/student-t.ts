/** Halvings of an interval of angles after which no digit changes any more [1]. Double precision has 53 bits. */
const HALVINGS = 60;

/**
 * Share of Student's t distribution between −t and t, for whole degrees of freedom: a finite sum in θ = arctan(t/√ν).
 *
 * Even ν: sin θ·(1 + 1/2·cos²θ + (1·3)/(2·4)·cos⁴θ + … to cos^(ν−2)θ). Odd ν: 2/π·(θ + sin θ·cos θ·(1 + 2/3·cos²θ + … to cos^(ν−3)θ)), 2θ/π for ν = 1.
 */
const shareWithin = (angle: number, freedom: number): number => {
  const sine = Math.sin(angle);
  const cosine = Math.cos(angle);
  const odd = freedom % 2;
  if (freedom === 1) return (2 * angle) / Math.PI;
  let term = odd ? cosine : 1;
  let sum = term;
  for (let k = 2 + odd; k < freedom; k += 2) {
    term *= ((k - 1) / k) * cosine * cosine;
    sum += term;
  }
  return odd ? (2 / Math.PI) * (angle + sine * sum) : sine * sum;
};

/**
 * The t of a two-sided interval: between −t and t lies this share of Student's distribution.
 *
 * @param share between 0 and 1, such as 0.95 [1]
 * @param freedom degrees of freedom, a whole number of 1 or more [1]
 * @returns t [1]
 * Limits: whole degrees of freedom; time grows with them. Source: M. Abramowitz and I. A. Stegun, Handbook of Mathematical Functions, 26.7.3 and 26.7.4.
 * Example: 95 % and 2 degrees of freedom, 4.302652730.
 */
export const studentT = (share: number, freedom: number): number => {
  let low = 0;
  let high = Math.PI / 2;
  for (let i = 0; i < HALVINGS; i++) {
    const middle = (low + high) / 2;
    if (shareWithin(middle, freedom) < share) low = middle;
    else high = middle;
  }
  return Math.tan((low + high) / 2) * Math.sqrt(freedom);
};
