/**
 * Cross-section of the lower half: the arc of the shell and its two flanges, bent along the jacket.
 *
 * Mid-line of the arc: x = A·cos u, y = B·sin u, y the depth below the seam plane, A = width/2 + padding + s/2, B = height/2 + padding + s/2, times the
 * thickness s; two flanges f × s centred on y = 0. Outer fibres at y = −s/2 and y = B + s/2.
 *
 * Limits: a thin wall, s small against the radii; one material, plane sections. A half that is not half of the specimen's height deep
 * is given as twice its depth. A box is taken as rounded too. Up to 2.5 times as wide as high that is on the safe side, by up to a fifth; a flatter one
 * is weaker than its rounded section, at 8 times as wide by almost half without flanges: its floor is far from the seam, where all the stress is.
 * Source: beam theory, section of thin walls by mid-line integrals.
 * Example: 40 × 30 cm, 13 mm: see `tests/calculation/strength/hand-calculation.md`.
 */

import { arc } from './arc.ts';

/** What of a cross-section its bending needs; y the depth below the seam plane. */
export interface Section {
  /** Area [m²]. */
  readonly area: number;
  /** First moment about the seam plane [m³]. */
  readonly first: number;
  /** Second moment about the seam plane [m⁴]. */
  readonly second: number;
  /** Depth of the upper and the lower outer fibre [m]. */
  readonly top: number;
  readonly bottom: number;
}

/**
 * @param width of the specimen, across the jacket [m]
 * @param height of the specimen [m]
 * @param wall thickness of the shell s [m]
 * @param padding its thickness [m]
 * @param flange its width f, on either side [m]
 */
export const section = (width: number, height: number, wall: number, padding: number, flange: number): Section => {
  const a = width / 2 + padding + wall / 2;
  const b = height / 2 + padding + wall / 2;
  const line = arc(a, b);
  return {
    area: wall * (line.length + 2 * flange),
    first: wall * line.first,
    second: wall * line.second + (flange * wall ** 3) / 6,
    top: -wall / 2,
    bottom: b + wall / 2,
  };
};

/** Depth of the centroid [m]. */
export const centroid = (s: Section): number => s.first / s.area;

/** Section modulus to the farther outer fibre, I/c [m³]. */
export const modulus = (s: Section): number => {
  const middle = centroid(s);
  return (s.second - s.first * middle) / Math.max(middle - s.top, s.bottom - middle);
};
