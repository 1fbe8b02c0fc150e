/**
 * The triangle with the largest margin of those with two feet at just the least distance from each other.
 *
 * Needed only where the best triangle of all has two feet closer than that: a balance point near the edge, or large feet. One foot goes once around, the
 * second is at the least distance from it, the third where it leaves most margin.
 */

import { largest } from './largest.ts';
import { type Outline, pointAt, ring } from './outline.ts';
import { cross, distance, type Feet, type Point } from './points.ts';
import { root } from './root.ts';
import type { Placed } from './three-feet.ts';

/** Places of a foot to look at. A multiple of 24, so that ends of axes and corners of a box are among them. */
const PLACES = 72;

/** Angle from one of them to the next [rad]. */
const STEP = (2 * Math.PI) / PLACES;

/** Cuts of the golden section around the best third foot, while places are looked at and in the end, and around the best first one. */
const ROUGH_CUTS = 6;
const FINE_CUTS = 14;
const LAST_CUTS = 32;
const CUTS = 22;

/** Places of the first foot that are worth closing in on, and those that may become one [share of the best margin so far]. */
const CHOSEN = 2;
const WORTH = 0.9;

/** Relative excess of the two feet over the least distance, so that rounding does not bring them too close. */
const SLACK = 1e-9;

interface Found extends Placed {
  /** Where the first foot is, as an angle around the outline [rad]. */
  readonly angle: number;
}

/**
 * @param curve where the centres of the feet may be
 * @param balance balance point
 * @param apart least distance of two feet [m]
 * @returns the best triangle, or undefined where no three feet are that far apart with two just so
 */
export const spacedFeet = (curve: Outline, balance: Point, apart: number): Placed | undefined => {
  const places = ring(curve, PLACES);
  const tooClose = -4 * (curve.halfLength + curve.halfWidth) - distance([0, 0], balance);
  /** Distance of the balance point to an edge; below every such distance, and the lower the closer, where its feet stand too close. */
  const edge = (a: Point, b: Point): number => {
    const side = distance(a, b);
    return side >= apart ? cross(a, b, balance) / side : tooClose + side - apart;
  };
  const score = ([a, b, c]: Feet): number => Math.min(edge(a, b), edge(b, c), edge(c, a));

  /** Angles at which a second foot is at the least distance from the first. */
  const seconds = (first: Point): readonly number[] => {
    const spare = (at: number): number => distance(first, pointAt(curve, at)) - apart * (1 + SLACK);
    const found: number[] = [];
    let before = distance(first, places[PLACES - 1]!) - apart;
    for (let i = 0; i < PLACES; i++) {
      const at = i * STEP;
      const now = distance(first, places[i]!) - apart;
      // From the side that is far enough to the root, so that the feet are not too close.
      if (before < 0 && now >= 0) found.push(at - root((way) => spare(at - way), 0, STEP));
      if (before >= 0 && now < 0) found.push(at - STEP + root((way) => spare(at - STEP + way), 0, STEP));
      before = now;
    }
    return found;
  };

  const withFirstAt = (angle: number, cuts: number, atLeast: number): Found | undefined => {
    const first = pointAt(curve, angle);
    let best: Found | undefined;
    for (const at of seconds(first)) {
      const second = pointAt(curve, at);
      if (!(edge(first, second) > atLeast)) continue;
      const with3 = (third: Point): number => Math.min(edge(second, third), edge(third, first));
      let most = -Infinity;
      let place = 0;
      for (let i = 0; i < PLACES; i++) {
        const margin = with3(places[i]!);
        if (margin > most) {
          most = margin;
          place = i;
        }
      }
      const near = largest((turn) => with3(pointAt(curve, turn)), place * STEP, STEP, cuts);
      const third = pointAt(curve, near);
      const feet: Feet = [first, second, with3(third) >= most ? third : places[place]!];
      const margin = score(feet);
      if (margin > tooClose / 2 && !(best && best.margin >= margin)) best = { feet, margin, angle };
    }
    return best;
  };

  // Near the edge only a foot close to the balance point helps, which the ring may miss: that place comes on top.
  const nearest = withFirstAt(
    Math.atan2(balance[1] / curve.halfWidth, balance[0] / curve.halfLength),
    LAST_CUTS,
    tooClose / 2,
  );
  const rough: Found[] = [];
  let worth = tooClose / 2;
  for (let i = 0; i < PLACES; i++) {
    const found = withFirstAt(i * STEP, ROUGH_CUTS, worth);
    if (!found) continue;
    rough.push(found);
    worth = Math.max(worth, WORTH * found.margin);
  }
  const starts = rough.sort((a, b) => b.margin - a.margin).slice(0, CHOSEN);
  let best: Found | undefined;
  for (const start of nearest ? [...starts, nearest] : starts) {
    const at = (angle: number): number => withFirstAt(angle, FINE_CUTS, tooClose / 2)?.margin ?? tooClose;
    const angle = largest(at, start.angle, STEP, CUTS);
    for (const found of [start, withFirstAt(angle, LAST_CUTS, tooClose / 2)])
      if (found && !(best && best.margin >= found.margin)) best = found;
  }
  return best;
};
