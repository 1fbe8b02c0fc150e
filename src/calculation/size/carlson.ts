/**
 * Carlson's symmetric elliptic integrals by the duplication theorem, to full double precision.
 *
 * Source: B. C. Carlson, Numerical computation of real or complex elliptic integrals, Numerical Algorithms 10 (1995) 13–26; NIST Digital
 * Library of Mathematical Functions, section 19.36(i) with equations 19.36.1 and 19.36.2, and equation 19.21.10 for RG.
 */

/** Truncation error that the series may leave, relative. It enters by its sixth root, so a round power of two is enough. */
const PRECISION = Number.EPSILON / 4;

/** Second-largest argument of RG, relative to the largest, below which it changes nothing in double precision. */
const NEGLIGIBLE = Number.EPSILON ** 2;

/**
 * RF(x, y, z) = ½∫₀^∞ dt/√((t + x)(t + y)(t + z)).
 *
 * @param x first argument [1], at least 0
 * @param y second argument [1], at least 0; at most one of the three is 0
 * @param z third argument [1], at least 0
 * @returns RF [1]
 * Source: DLMF 19.36.1. Example: RF(1, 1, 1) = 1; RF(0, 1, 1) = π/2.
 */
export const carlsonRF = (x: number, y: number, z: number): number => {
  const start = x / 3 + y / 3 + z / 3;
  // Beside the mean and not times its inverse: that could leave the range of numbers, and the loop would never end.
  const near = (3 * PRECISION) ** (1 / 6);
  let spread = Math.max(Math.abs(start - x), Math.abs(start - y), Math.abs(start - z));
  let mean = start;
  let [u, v, w] = [x, y, z];
  while (spread > near * mean) {
    const [ru, rv, rw] = [Math.sqrt(u), Math.sqrt(v), Math.sqrt(w)];
    const shift = ru * rv + rv * rw + rw * ru;
    u = (u + shift) / 4;
    v = (v + shift) / 4;
    w = (w + shift) / 4;
    mean = (mean + shift) / 4;
    spread /= 4;
  }
  const dx = 1 - u / mean;
  const dy = 1 - v / mean;
  const dz = -dx - dy;
  const e2 = dx * dy - dz * dz;
  const e3 = dx * dy * dz;
  return (1 - e2 / 10 + e3 / 14 + (e2 * e2) / 24 - (3 * e2 * e3) / 44) / Math.sqrt(mean);
};

/**
 * RD(x, y, z) = (3/2)∫₀^∞ dt/(√((t + x)(t + y))·(t + z)^(3/2)).
 *
 * @param x first argument [1], at least 0
 * @param y second argument [1], at least 0; at most one of x and y is 0
 * @param z third argument [1], above 0
 * @returns RD [1]
 * Source: DLMF 19.36.2. Example: RD(1, 1, 1) = 1; RD(0, 2, 1) = 1.797210352103388.
 */
export const carlsonRD = (x: number, y: number, z: number): number => {
  const start = x / 5 + y / 5 + 0.6 * z;
  const near = (PRECISION / 4) ** (1 / 6);
  let spread = Math.max(Math.abs(start - x), Math.abs(start - y), Math.abs(start - z));
  let mean = start;
  let [u, v, w] = [x, y, z];
  let sum = 0;
  let weight = 1;
  while (spread > near * mean) {
    const [ru, rv, rw] = [Math.sqrt(u), Math.sqrt(v), Math.sqrt(w)];
    const shift = ru * rv + rv * rw + rw * ru;
    sum += weight / (rw * (w + shift));
    weight /= 4;
    u = (u + shift) / 4;
    v = (v + shift) / 4;
    w = (w + shift) / 4;
    mean = (mean + shift) / 4;
    spread /= 4;
  }
  const dx = 1 - u / mean;
  const dy = 1 - v / mean;
  const dz = -(dx + dy) / 3;
  const e2 = dx * dy - 6 * dz * dz;
  const e3 = (3 * dx * dy - 8 * dz * dz) * dz;
  const e4 = 3 * (dx * dy - dz * dz) * dz * dz;
  const e5 = dx * dy * dz * dz * dz;
  const series = 1 - (3 * e2) / 14 + e3 / 6 + (9 * e2 * e2) / 88 - (3 * e4) / 22 - (9 * e2 * e3) / 52 + (3 * e5) / 26;
  return (weight * series) / (mean * Math.sqrt(mean)) + 3 * sum;
};

/**
 * RG(x, y, z), the mean of √(x·n₁² + y·n₂² + z·n₃²) over all directions n, in any order of its arguments.
 *
 * 2RG = z·RF − ⅓(x − z)(y − z)·RD + √(xy/z) with z the middle one of the three, so that all terms are at least 0 and none cancels.
 *
 * @param x first argument [1], at least 0
 * @param y second argument [1], at least 0
 * @param z third argument [1], at least 0
 * @returns RG [1]; 0 where all are 0
 * Source: DLMF 19.16.3 and 19.21.10. Example: RG(0, 16, 16) = π; RG(0, 0, 4) = 1.
 */
export const carlsonRG = (x: number, y: number, z: number): number => {
  const most = Math.max(x, y, z);
  const least = Math.min(x, y, z);
  const middle = Math.max(Math.min(x, y), Math.min(Math.max(x, y), z));
  if (middle <= most * NEGLIGIBLE) return Math.sqrt(most) / 2;
  const second = middle / most;
  const third = least / most;
  const twice =
    second * carlsonRF(1, third, second) +
    ((1 - second) * (second - third) * carlsonRD(1, third, second)) / 3 +
    Math.sqrt(third / second);
  return (Math.sqrt(most) * twice) / 2;
};
