/**
 * The triangle with the largest margin whose feet keep a least distance from each other.
 *
 * Needed only where the best triangle of all has two feet closer than that: a balance point near the edge, or large feet. All triangles of
 * a coarse ring of points are looked at, then the best is closed in on with ever shorter steps.
 */

import { type Outline, pointAt, ring } from './outline.ts';
import { cross, distance, type Point } from './points.ts';
import type { Placed } from './three-feet.ts';

/** Points of the coarse ring. A multiple of 24, so that triangles with equal sides, ends of axes and corners of a box are in it. */
const RING = 120;

/** Places of each foot in a round of closing in: this many on either side. */
const REACH = 2;

/** Rounds, and what each leaves of the step before. */
const ROUNDS = 40;
const SHRINK = 0.7;

/** Relative slack of the least distance, so that feet exactly that far apart are. */
const SLACK = 1e-12;

/**
 * @param curve where the centres of the feet may be
 * @param balance balance point
 * @param apart least distance of two feet [m]
 * @returns the best triangle, or undefined where no three feet are that far apart
 */
export const spacedFeet = (curve: Outline, balance: Point, apart: number): Placed | undefined => {
  const tooClose = -4 * (curve.halfLength + curve.halfWidth) - distance([0, 0], balance);
  /** Margin of an edge; below every margin, and the lower the closer, where its feet stand too close. */
  const edge = (a: Point, b: Point): number => {
    const side = distance(a, b);
    return side >= apart * (1 - SLACK) ? cross(a, b, balance) / side : tooClose + side - apart;
  };

  const step = (2 * Math.PI) / RING;
  const points = ring(curve, RING);
  let angles: readonly [number, number, number] = [0, step, 2 * step];
  let best = -Infinity;
  for (let i = 0; i < RING; i++) {
    for (let j = i + 1; j < RING; j++) {
      const first = edge(points[i]!, points[j]!);
      if (!(first > best)) continue;
      for (let k = j + 1; k < RING; k++) {
        const second = edge(points[j]!, points[k]!);
        if (!(second > best)) continue;
        const score = Math.min(first, second, edge(points[k]!, points[i]!));
        if (score > best) {
          best = score;
          angles = [i * step, j * step, k * step];
        }
      }
    }
  }

  let reach = step / REACH;
  for (let round = 0; round < ROUNDS; round++) {
    const around = (angle: number) =>
      Array.from({ length: 2 * REACH + 1 }, (_, i) => {
        const moved = angle + (i - REACH) * reach;
        return { moved, point: pointAt(curve, moved) };
      });
    const [ones, twos, threes] = [around(angles[0]), around(angles[1]), around(angles[2])];
    for (const a of ones)
      for (const b of twos) {
        const first = edge(a.point, b.point);
        if (!(first > best)) continue;
        for (const c of threes) {
          const score = Math.min(first, edge(b.point, c.point), edge(c.point, a.point));
          if (score > best) {
            best = score;
            angles = [a.moved, b.moved, c.moved];
          }
        }
      }
    reach *= SHRINK;
  }
  // Compared with half of the penalty: margins are never that low, feet too close always lower.
  if (!(best > tooClose / 2)) return undefined;
  return { feet: [pointAt(curve, angles[0]), pointAt(curve, angles[1]), pointAt(curve, angles[2])], margin: best };
};
