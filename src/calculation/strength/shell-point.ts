/**
 * Stress in a shallow spherical shell under a load on a small circle.
 *
 * σ = F·((1 + ν)·B + √(1 − ν²)·C)/s², bending and membrane, with μ = r0·(12(1 − ν²))^(1/4)/√(R·s), B = (3/π)·kei′(μ)/μ,
 * C = (√3/π)·(1 + μ·ker′(μ))/μ².
 *
 * A very small circle gives C = √3/8, the point load; a very wide one the membrane stress p·R/(2s) of a sphere under pressure.
 *
 * Limits: a thin shell, s small against R; shallow, the load's circle small against R; no edge near.
 * Source: derived with Kelvin functions; E. Reissner 1946, Stresses and small displacements of shallow spherical shells, Journal of
 * Mathematics and Physics 25 (from memory).
 * Example: μ = 1: B = 0.336488, C = 0.168374.
 */

import { kelvin } from './kelvin.ts';
import { POISSON } from './poisson.ts';

const ROOT_3 = Math.sqrt(3);

/** Bending and membrane coefficient, B and C [1]. */
export const coefficients = (mu: number): readonly [bending: number, membrane: number] => {
  const { kei, ker } = kelvin(mu);
  return [(3 / Math.PI) * kei, (ROOT_3 / Math.PI) * ker];
};

/** μ, the radius of the load's circle over the shell's own length [1]. */
export const circleRatio = (radius: number, wall: number, curvature: number): number =>
  (radius * (12 * (1 - POISSON * POISSON)) ** 0.25) / Math.sqrt(curvature) / Math.sqrt(wall);

/**
 * @param force on the circle [N]
 * @param radius of the circle, r0 [m]
 * @param wall thickness of the shell, s [m]
 * @param curvature radius of the shell, R [m]
 * @returns stress [Pa]
 */
export const shellPoint = (force: number, radius: number, wall: number, curvature: number): number => {
  const [bending, membrane] = coefficients(circleRatio(radius, wall, curvature));
  return (force * ((1 + POISSON) * bending + Math.sqrt(1 - POISSON * POISSON) * membrane)) / wall / wall;
};
