/**
 * A second way to the best three feet that shares nothing with the product: the outline from its support function as a ring of points, and all triangles of
 * these points.
 */

export interface Case {
  readonly length: number;
  readonly width: number;
  readonly box: boolean;
  /** How far the centres of feet are outside of the specimen's outline; inside where below 0. */
  readonly offset: number;
  readonly apart: number;
  readonly balance: readonly [number, number];
}

/** Directions in which the outline is held by a straight edge. A multiple of 4, so that the sides of a box are among them. */
const EDGES = 720;
/** Points of the ring. A multiple of 24. */
const POINTS = 240;

/** Directions square to the sides, closer where a slender outline bends little. */
const normalsOf = ({ length, width }: Case): readonly (readonly [number, number])[] =>
  Array.from({ length: EDGES }, (_, i) => {
    const angle = (2 * Math.PI * i) / EDGES;
    const [x, y] = [Math.cos(angle) * width, Math.sin(angle) * length];
    return [x / Math.hypot(x, y), y / Math.hypot(x, y)];
  });

/** How far the outline reaches in a direction: the support function of the body, moved out by the offset. */
const reach = ({ length, width, box, offset }: Case, [x, y]: readonly [number, number]): number =>
  (box
    ? (length / 2) * Math.abs(x) + (width / 2) * Math.abs(y)
    : Math.sqrt(((length / 2) * x) ** 2 + ((width / 2) * y) ** 2)) + offset;

/** How far a point is outside; at most 0 inside. */
export const beyond = (one: Case, [x, y]: readonly [number, number]): number =>
  Math.max(...normalsOf(one).map((n) => n[0] * x + n[1] * y - reach(one, n)));

/** Largest margin of three points of the outline that are far enough apart; below 0 where none holds the balance point. */
export const bruteForce = (one: Case): number => {
  const normals = normalsOf(one);
  const reaches = normals.map((n) => reach(one, n));
  if (reaches.some((r) => !(r > 0))) return -Infinity;
  const x = new Float64Array(POINTS);
  const y = new Float64Array(POINTS);
  for (let i = 0; i < POINTS; i++) {
    const angle = (2 * Math.PI * i) / POINTS;
    const toX = Math.cos(angle) * one.length;
    const toY = Math.sin(angle) * one.width;
    let way = Infinity;
    for (let j = 0; j < EDGES; j++) {
      const speed = normals[j]![0] * toX + normals[j]![1] * toY;
      if (speed > 0) way = Math.min(way, reaches[j]! / speed);
    }
    x[i] = toX * way;
    y[i] = toY * way;
  }
  const [px, py] = one.balance;
  const edge = new Float64Array(POINTS * POINTS).fill(-Infinity);
  for (let i = 0; i < POINTS; i++)
    for (let j = 0; j < POINTS; j++) {
      const dx = x[j]! - x[i]!;
      const dy = y[j]! - y[i]!;
      const side = Math.sqrt(dx * dx + dy * dy);
      if (side >= one.apart && side > 0) edge[i * POINTS + j] = (dx * (py - y[i]!) - dy * (px - x[i]!)) / side;
    }
  let best = -Infinity;
  for (let i = 0; i < POINTS; i++)
    for (let j = i + 1; j < POINTS; j++) {
      const first = edge[i * POINTS + j]!;
      if (!(first > best)) continue;
      for (let k = j + 1; k < POINTS; k++) {
        const second = edge[j * POINTS + k]!;
        if (!(second > best)) continue;
        const least = Math.min(first, second, edge[k * POINTS + i]!);
        if (least > best) best = least;
      }
    }
  return best;
};
