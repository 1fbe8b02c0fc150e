/**
 * The outline of a jacket seen from above, and the part of it in which the centres of feet may be.
 *
 * Both are parallel curves of the specimen's outline, an ellipse or (box and cylinder) a rectangle: at the padding thickness for the padded
 * outline, and half a foot size inside of that for the centres of feet.
 *
 * A point of the parallel curve of an ellipse: (a·cos u + δ·b·cos u/N, b·sin u + δ·a·sin u/N), N = √(a²·sin²u + b²·cos²u), δ above 0 outside. Farther
 * inside than the sharpest bend, b²/a, the two sides of the curve meet in a corner on the long axis, at
 * x = √((a² − b²)·(1 − δ²/b²)). Inside of a rectangle the curve is a rectangle, outside one with rounded corners.
 *
 * Source: geometry; support function of a parallel body.
 */

import type { Settings } from '../settings.ts';
import { longerFirst } from '../size/longer-first.ts';
import { footSize } from './foot.ts';
import { lengthOf, type Point } from './points.ts';

/** A convex closed curve around the origin, alike on both sides of both axes. */
export interface Outline {
  /** Half of its size along x [m]. */
  readonly halfLength: number;
  /** Half of its size along y [m]. */
  readonly halfWidth: number;
  /**
   * Where the ray from a point inside or on the curve leaves it.
   *
   * @param e direction of the ray, of length 1
   */
  readonly exit: (from: Point, e: Point) => Point;
  /**
   * Point of the curve that goes around once, counterclockwise from the positive x axis, as the angle goes from 0 to 2π.
   *
   * The angle only names the place: a quarter of a turn is a quarter of the curve, but within it the point is not in its direction.
   */
  readonly at: (angle: number) => Point;
}

/** Steps after which a ray that only grazes the curve is taken as it is. */
const MOST_STEPS = 60;

/** A step so short that the next one would be below rounding, since the error is squared each time [rad]. */
const LAST_STEP = 1e-6;

/** Where all outlines have their middle. */
const CENTRE: Point = [0, 0];

const clamp = (x: number, least: number, most: number): number => Math.min(Math.max(x, least), most);

/** Parallel curve of an ellipse with semi-axes a ≥ b at the offset δ. */
const besideEllipse = (a: number, b: number, delta: number): Outline | undefined => {
  const halfWidth = b + delta;
  if (!(halfWidth > 0)) return undefined;
  const cornered = delta * a < -b * b;
  const halfLength = cornered ? Math.sqrt((a - b) * (a + b) * (1 - (delta / b) ** 2)) : a + delta;
  /** cos u and sin u of the corner on the long axis. */
  const leastSine = cornered
    ? Math.sqrt(((delta * a) / b - b) * ((delta * a) / b + b)) / Math.sqrt((a - b) * (a + b))
    : 0;
  const mostCosine = Math.sqrt(1 - leastSine * leastSine);
  if (!(halfLength > 0)) return undefined;

  const exit = (from: Point, e: Point): Point => {
    const x = from[0];
    const ex = e[0];
    let y = from[1];
    let ey = e[1];
    // With corners the curve is two arcs; the ray is mirrored so that it leaves through the upper one. Which arc that is follows from
    // the sides of the ray on which the corners are.
    let below = false;
    if (cornered) {
      const plus = -ex * y - ey * (halfLength - x);
      const minus = -ex * y - ey * (-halfLength - x);
      below = plus <= 0 && minus >= 0 ? false : plus >= 0 && minus <= 0 ? true : plus > 0 === ex > 0;
      if (below) {
        y = -y;
        ey = -ey;
      }
    }
    const offset = ex * y - ey * x;
    // Start where the ray leaves the ellipse with the same ends.
    const scaledX = x / (a + delta);
    const scaledY = y / halfWidth;
    const scaledEx = ex / (a + delta);
    const scaledEy = ey / halfWidth;
    const square = scaledEx * scaledEx + scaledEy * scaledEy;
    const half = scaledX * scaledEx + scaledY * scaledEy;
    const rest = scaledX * scaledX + scaledY * scaledY - 1;
    const way = (Math.sqrt(Math.max(0, half * half - square * rest)) - half) / square;
    let cosine = scaledX + way * scaledEx;
    let sine = scaledY + way * scaledEy;
    const first = 1 / Math.sqrt(cosine * cosine + sine * sine);
    cosine *= first;
    sine *= first;
    // The root lies between the two points at which the curve runs along the ray; they close in on it.
    const widest = 1 / Math.sqrt(a * a * ey * ey + b * b * ex * ex);
    let leftCosine = -ey * a * widest;
    let leftSine = ex * b * widest;
    let rightCosine = -leftCosine;
    let rightSine = -leftSine;
    if (!(rightCosine * sine - rightSine * cosine > 0)) {
      cosine = -rightSine;
      sine = rightCosine;
    }
    let before = Infinity;
    for (let step = 0; step < MOST_STEPS; step++) {
      if (cornered && sine < leastSine) {
        sine = leastSine;
        cosine = cosine < 0 ? -mostCosine : mostCosine;
      }
      const perN = 1 / Math.sqrt(a * a * sine * sine + b * b * cosine * cosine);
      const pushed = delta * perN;
      const beside = ex * sine * (b + pushed * a) - ey * cosine * (a + pushed * b) - offset;
      if (beside > 0) {
        leftCosine = cosine;
        leftSine = sine;
      } else {
        rightCosine = cosine;
        rightSine = sine;
      }
      const turn = -beside / ((1 + pushed * perN * perN * a * b) * (ex * b * cosine + ey * a * sine));
      const turned = cosine - sine * turn;
      const turnedSine = sine + cosine * turn;
      // Newton's step where it stays between the two points and comes nearer fast enough, else the middle between them.
      const isGood =
        Math.abs(beside) <= before / 2 &&
        rightCosine * turnedSine - rightSine * turned >= 0 &&
        turned * leftSine - turnedSine * leftCosine >= 0;
      const isLast = Math.abs(turn) < LAST_STEP;
      before = Math.abs(beside);
      cosine = isGood || isLast ? turned : leftCosine + rightCosine;
      sine = isGood || isLast ? turnedSine : leftSine + rightSine;
      const unit = 1 / Math.sqrt(cosine * cosine + sine * sine);
      cosine *= unit;
      sine *= unit;
      if (isLast) break;
    }
    if (cornered && sine < leastSine) {
      sine = leastSine;
      cosine = cosine < 0 ? -mostCosine : mostCosine;
    }
    const n = Math.sqrt(a * a * sine * sine + b * b * cosine * cosine);
    const up = sine * (b + (delta * a) / n);
    return [cosine * (a + (delta * b) / n), below ? -up : up];
  };

  /** u of the corner, and how much of u is left between the two corners. */
  const leastAngle = Math.asin(leastSine);
  const share = 1 - (2 * leastAngle) / Math.PI;

  const at = (angle: number): Point => {
    // The lower half is the upper one turned around the middle.
    const turns = Math.floor(angle / Math.PI);
    const side = turns % 2 === 0 ? 1 : -1;
    const u = leastAngle + share * (angle - turns * Math.PI);
    const cosine = Math.cos(u);
    const sine = Math.sin(u);
    const perN = delta / Math.sqrt(a * a * sine * sine + b * b * cosine * cosine);
    return [side * cosine * (a + b * perN), side * sine * (b + a * perN)];
  };
  return { halfLength, halfWidth, exit, at };
};

/** Parallel curve of a rectangle with half sizes a and b at the offset δ. */
const besideRectangle = (a: number, b: number, delta: number): Outline | undefined => {
  const halfLength = a + delta;
  const halfWidth = b + delta;
  if (!(halfLength > 0 && halfWidth > 0)) return undefined;
  const radius = Math.max(0, delta);

  const exit = (from: Point, e: Point): Point => {
    const x = from[0];
    const y = from[1];
    const ex = e[0];
    const ey = e[1];
    const wayX = ex === 0 ? Infinity : (Math.sign(ex) * halfLength - x) / ex;
    const wayY = ey === 0 ? Infinity : (Math.sign(ey) * halfWidth - y) / ey;
    let way = Math.max(0, Math.min(wayX, wayY));
    let outX = x + way * ex;
    let outY = y + way * ey;
    if (radius > 0 && Math.abs(outX) > a && Math.abs(outY) > b) {
      const besideX = x - Math.sign(outX) * a;
      const besideY = y - Math.sign(outY) * b;
      const half = besideX * ex + besideY * ey;
      const rest = besideX * besideX + besideY * besideY - radius * radius;
      way = Math.max(0, Math.sqrt(Math.max(0, half * half - rest)) - half);
      outX = x + way * ex;
      outY = y + way * ey;
    }
    return [clamp(outX, -halfLength, halfLength), clamp(outY, -halfWidth, halfWidth)];
  };

  const at = (angle: number): Point => {
    const x = halfLength * Math.cos(angle);
    const y = halfWidth * Math.sin(angle);
    const length = lengthOf(x, y);
    return exit(CENTRE, [x / length, y / length]);
  };
  return { halfLength, halfWidth, exit, at };
};

/**
 * Parallel curve of a specimen's outline.
 *
 * @param length along the jacket [m]
 * @param width across it [m]
 * @param offset how far outside of the specimen's outline, inside where below 0 [m]
 * @returns the curve, or undefined where nothing is left
 */
export const parallelCurve = (
  length: number,
  width: number,
  offset: number,
  settings: Settings,
): Outline | undefined => {
  const [along, across] = longerFirst(length, width, settings);
  const beside = settings.shape === 'ellipsoid' ? besideEllipse : besideRectangle;
  return beside(along / 2, across / 2, offset);
};

/** The padded outline: the specimen's outline and the padding around it. */
export const outline = (length: number, width: number, settings: Settings): Outline | undefined =>
  parallelCurve(length, width, settings.paddingThickness, settings);

/** Where the centres of feet may be: half a foot size inside of the padded outline. Undefined where a foot has no room. */
export const footOutline = (length: number, width: number, settings: Settings): Outline | undefined =>
  parallelCurve(length, width, settings.paddingThickness - footSize(settings, length, width) / 2, settings);

/**
 * Points around an outline at equal steps of the angle of `at`, from the end of the positive x axis.
 *
 * @param count a multiple of 4; a quarter is worked out, the rest are its mirror images
 */
export const ring = (curve: Outline, count: number): readonly Point[] => {
  const quarter = count / 4;
  const points: Point[] = Array.from({ length: quarter + 1 }, (_, i) => curve.at((2 * Math.PI * i) / count));
  points[0] = [curve.halfLength, 0];
  points[quarter] = [0, curve.halfWidth];
  for (let i = quarter - 1; i >= 0; i--) points.push([-points[i]![0], points[i]![1]]);
  for (let i = 2 * quarter - 1; i > 0; i--) points.push([points[i]![0], -points[i]![1]]);
  return points;
};

/** True where a point is inside of an outline, not on it. */
export const isInside = (curve: Outline, [x, y]: Point): boolean => {
  const length = lengthOf(x, y);
  if (!(length > 0)) return length === 0;
  const [outX, outY] = curve.exit(CENTRE, [x / length, y / length]);
  return length < lengthOf(outX, outY);
};
