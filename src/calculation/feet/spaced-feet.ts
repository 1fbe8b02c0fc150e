/**
 * The triangle with the largest margin of those with two feet at just the least distance from each other.
 *
 * Needed only where the best triangle of all has two feet closer than that: a balance point near the edge, or large feet. One foot goes once around, the
 * second is at the least distance from it, the third where it leaves most margin.
 */

import { largest } from './largest.ts';
import { type Outline, ring } from './outline.ts';
import { cross, distance, type Point } from './points.ts';
import { root } from './root.ts';
import type { Placed } from './three-feet.ts';

/** Places of a foot to look at. A multiple of 24, so that ends of axes and corners of a box are among them. */
const PLACES = 72;

/** Angle from one of them to the next [rad]. */
const STEP = (2 * Math.PI) / PLACES;

/** Cuts of the golden section around the best third foot: while the first foot is looked for, and in the end. */
const FINE_CUTS = 14;
const LAST_CUTS = 32;

/** First feet that are worth closing in on, and cuts of the golden section around one of them. */
const CHOSEN = 3;
const CUTS = 20;

/** A first foot that leaves less than this is not worth closing in on [share of the best margin so far]. */
const WORTH = 0.9;

/** A balance point so close to the outline is near its edge [places of the ring]. */
const EDGE = 4;

/** Relative excess of the two feet over the least distance, so that rounding does not bring them too close. */
const SLACK = 1e-9;

interface Found extends Placed {
  /** Where the first foot is, as an angle around the outline [rad]. */
  readonly angle: number;
}

/** Those that are at least as good as both of their neighbours in a ring, the best first. */
const peaks = (around: readonly (Found | undefined)[]): readonly Found[] => {
  const marginAt = (i: number): number => around.at(i % around.length)?.margin ?? -Infinity;
  return around
    .filter((one, i): one is Found => !!one && one.margin >= Math.max(marginAt(i - 1), marginAt(i + 1)))
    .sort((a, b) => b.margin - a.margin);
};

/**
 * @param curve where the centres of the feet may be
 * @param balance balance point
 * @param apart least distance of two feet [m]
 * @returns the best triangle, or undefined where no three feet are that far apart with two just so
 */
export const spacedFeet = (curve: Outline, balance: Point, apart: number): Placed | undefined => {
  const places = ring(curve, PLACES);
  const enough = apart * (1 + SLACK);
  const tooClose = -4 * (curve.halfLength + curve.halfWidth) - distance([0, 0], balance);
  /** Distance of the balance point to an edge; below every such distance, and the lower the closer, where its feet stand too close. */
  const edge = (a: Point, b: Point): number => {
    const side = distance(a, b);
    return side >= apart ? cross(a, b, balance) / side : tooClose + side - apart;
  };

  /**
   * Second feet at the least distance from the first.
   *
   * @param isAny also those with the balance point to the right of their edge
   */
  const secondsOf = (first: Point, isAny: boolean): readonly Point[] => {
    const spare = (at: number): number => distance(first, curve.at(at)) - enough;
    const isFar = ([x, y]: Point): boolean => (x - first[0]) ** 2 + (y - first[1]) ** 2 >= apart * apart;
    const isLeft = (p: Point): boolean => cross(first, p, balance) > 0;
    const found: Point[] = [];
    let before = places[PLACES - 1]!;
    let wasFar = isFar(before);
    for (let i = 0; i < PLACES; i++) {
      const now = places[i]!;
      const nowFar = isFar(now);
      if (nowFar !== wasFar && (isAny || isLeft(before) || isLeft(now))) {
        // From the side that is far enough to the root, so that the feet are not too close.
        const far = (nowFar ? i : i - 1) * STEP;
        const way = nowFar ? -1 : 1;
        found.push(curve.at(far + way * root((angle) => spare(far + way * angle), 0, STEP)));
      }
      before = now;
      wasFar = nowFar;
    }
    return found;
  };

  /** The third foot that leaves most margin, or one that leaves enough. */
  const thirdOf = (first: Point, second: Point, cuts: number, goal: number): Point => {
    const worse = (p: Point): number => Math.min(edge(second, p), edge(p, first));
    let most = -Infinity;
    let place = 0;
    for (let i = 0; i < PLACES && most < goal; i++) {
      const p = places[i]!;
      const margin = edge(second, p) > most ? worse(p) : -Infinity;
      if (margin > most) {
        most = margin;
        place = i;
      }
    }
    if (most >= goal) return places[place]!;
    const third = curve.at(largest((at) => worse(curve.at(at)), place * STEP, STEP, cuts));
    return worse(third) >= most ? third : places[place]!;
  };

  /**
   * A triangle with the first foot at an angle and the largest margin; none where no first edge leaves more than `atLeast`.
   *
   * @param isLast with the third foot at its very best, even where it does not matter for the margin
   */
  const withFirstAt = (angle: number, atLeast: number, isLast = false): Found | undefined => {
    const first = curve.at(angle);
    let best: Found | undefined;
    for (const second of secondsOf(first, atLeast < 0)) {
      const behind = edge(first, second);
      if (!(behind > Math.max(atLeast, best?.margin ?? -Infinity))) continue;
      const third = isLast ? thirdOf(first, second, LAST_CUTS, Infinity) : thirdOf(first, second, FINE_CUTS, behind);
      const margin = Math.min(behind, edge(second, third), edge(third, first));
      if (!(best && best.margin >= margin)) best = { feet: [first, second, third], margin, angle };
    }
    return best;
  };

  /** The best near a good triangle. */
  const near = ({ angle, margin }: Found): Found | undefined => {
    const atLeast = margin > 0 ? 0 : -Infinity;
    // The golden section only asks which of two is larger, and one of them is the largest so far.
    let most = atLeast;
    const at = (first: number): number => {
      const found = withFirstAt(first, most)?.margin ?? -Infinity;
      most = Math.max(most, found);
      return found;
    };
    return withFirstAt(largest(at, angle, STEP, CUTS), atLeast, true);
  };

  let worth = -Infinity;
  const rough = places.map((_, i) => {
    const found = withFirstAt(i * STEP, worth);
    if (found && found.margin > 0) worth = Math.max(worth, WORTH * found.margin);
    return found;
  });
  const starts = peaks(rough)
    .slice(0, CHOSEN)
    .filter((one) => !(one.margin < worth));
  // Near the edge only a foot close to the balance point helps, which the ring may miss: that place comes on top.
  const away = (at: number): number => -distance(curve.at(at), balance);
  const closest = places.reduce((best, _, i) => (away(i * STEP) > away(best * STEP) ? i : best), 0) * STEP;
  if (-away(closest) < EDGE * STEP * curve.halfLength) {
    const nearest = withFirstAt(largest(away, closest, STEP, CUTS), -Infinity, true);
    if (nearest) starts.push(nearest);
  }
  let best: Found | undefined;
  for (const start of starts)
    for (const found of [start, near(start)]) if (found && !(best && best.margin >= found.margin)) best = found;
  return best && best.margin > tooClose / 2 ? best : undefined;
};
