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

/** First feet that are worth closing in on, and cuts of the golden section around one of them. */
const CHOSEN = 2;
const CUTS = 20;

/** Places whose first edge alone leaves less than this are not worth a look [share of the best margin so far]. */
const WORTH = 0.9;

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

  /** Second feet at the least distance from the first. */
  const secondsOf = (first: Point): readonly Point[] => {
    const spare = (at: number): number => distance(first, curve.at(at)) - enough;
    const found: Point[] = [];
    let before = distance(first, places[PLACES - 1]!) - apart;
    for (let i = 0; i < PLACES; i++) {
      const at = i * STEP;
      const now = distance(first, places[i]!) - apart;
      // From the side that is far enough to the root, so that the feet are not too close.
      if (before < 0 && now >= 0) found.push(curve.at(at - root((way) => spare(at - way), 0, STEP)));
      if (before >= 0 && now < 0) found.push(curve.at(at - STEP + root((way) => spare(at - STEP + way), 0, STEP)));
      before = now;
    }
    return found;
  };

  /** The third foot that leaves most margin. */
  const thirdOf = (first: Point, second: Point): Point => {
    const worse = (p: Point): number => Math.min(edge(second, p), edge(p, first));
    let most = -Infinity;
    let place = 0;
    for (let i = 0; i < PLACES; i++) {
      const margin = worse(places[i]!);
      if (margin > most) {
        most = margin;
        place = i;
      }
    }
    // From the second foot to the first one edge comes nearer to the balance point and the other goes away: where both are as far, or
    // as near to that place as the distances to both feet allow.
    const isEarly = (at: number): number => {
      const p = curve.at(at);
      const behind = distance(second, p);
      const ahead = distance(p, first);
      const nearer = cross(second, p, balance) / behind - cross(p, first, balance) / ahead;
      return Math.max(enough - behind, Math.min(nearer, ahead - enough));
    };
    const from = (isEarly(place * STEP) >= 0 ? place : place - 1) * STEP;
    const third = curve.at(from + root((way) => isEarly(from + way), 0, STEP));
    return worse(third) >= most ? third : places[place]!;
  };

  /** The best triangle with the first foot at an angle; none where no first edge leaves more than `atLeast`. */
  const withFirstAt = (angle: number, atLeast: number): Found | undefined => {
    const first = curve.at(angle);
    let best: Found | undefined;
    for (const second of secondsOf(first)) {
      if (!(edge(first, second) > atLeast)) continue;
      const third = thirdOf(first, second);
      const margin = Math.min(edge(first, second), edge(second, third), edge(third, first));
      if (!(best && best.margin >= margin)) best = { feet: [first, second, third], margin, angle };
    }
    return best;
  };

  /** The best near an angle. */
  const near = (angle: number): Found | undefined =>
    withFirstAt(
      largest((at) => withFirstAt(at, -Infinity)?.margin ?? -Infinity, angle, STEP, CUTS),
      -Infinity,
    );

  let worth = -Infinity;
  const rough = places.map((_, i) => {
    const found = withFirstAt(i * STEP, worth);
    if (found && found.margin > 0) worth = Math.max(worth, WORTH * found.margin);
    return found;
  });
  // Near the edge only a foot close to the balance point helps, which the ring may miss: that place comes on top.
  const close = (at: number): number => -distance(curve.at(at), balance);
  const closest = places.reduce((best, _, i) => (close(i * STEP) > close(best * STEP) ? i : best), 0) * STEP;
  const nearest = largest(close, closest, STEP, CUTS);
  let best = withFirstAt(nearest, -Infinity);
  for (const start of [...peaks(rough).slice(0, CHOSEN), ...(best ? [best] : [])])
    for (const found of [start, near(start.angle)]) if (found && !(best && best.margin >= found.margin)) best = found;
  return best && best.margin > tooClose / 2 ? best : undefined;
};
