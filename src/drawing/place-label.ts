/** Where a label can stand beside a thing, so that it lies on no other label and on as little of the lines as can be. */

/** A box: left, top, right, bottom [px]. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

type Point = readonly [x: number, y: number];

/** True where two boxes share more than an edge. */
export const overlap = (a: Box, b: Box): boolean =>
  a.left < b.right && b.left < a.right && a.top < b.bottom && b.top < a.bottom;

const holds = ({ left, top, right, bottom }: Box, [x, y]: Point): boolean =>
  x > left && x < right && y > top && y < bottom;

/** What a label must not lie on, and what it had better not lie on. */
export interface Surroundings {
  readonly taken: readonly Box[];
  /** Points along the lines of the drawing [px]. */
  readonly inked: readonly Point[];
  readonly within: Box;
}

/** A box of another label weighs as much as this many points of lines [1]. Our own choice. */
const TAKEN_WEIGHT = 1000;

/**
 * The best of a few places.
 *
 * @param places boxes that the label could take, the favourite first
 */
export const bestPlace = (places: readonly Box[], { taken, inked, within }: Surroundings): Box => {
  const cost = (box: Box): number => {
    const outside =
      box.left < within.left || box.right > within.right || box.top < within.top || box.bottom > within.bottom;
    return (
      (taken.filter((other) => overlap(box, other)).length + (outside ? 1 : 0)) * TAKEN_WEIGHT +
      inked.filter((point) => holds(box, point)).length
    );
  };
  return places.reduce((best, box) => (cost(box) < cost(best) ? box : best));
};

/** Boxes of a label's size around a thing: below, above, right, left, and half-way between. */
export const placesAround = (thing: Box, width: number, height: number, gap: number): readonly Box[] => {
  const middle = (thing.left + thing.right) / 2;
  const level = (thing.top + thing.bottom) / 2;
  const at = (left: number, top: number): Box => ({ left, top, right: left + width, bottom: top + height });
  return [
    at(middle - width / 2, thing.bottom + gap),
    at(middle - width / 2, thing.top - gap - height),
    at(thing.right + gap, level - height / 2),
    at(thing.left - gap - width, level - height / 2),
    at(thing.right + gap, thing.bottom - height),
    at(thing.left - gap - width, thing.bottom - height),
    at(thing.right + gap, thing.top),
    at(thing.left - gap - width, thing.top),
    at(thing.left, thing.bottom + gap),
    at(thing.right - width, thing.bottom + gap),
    at(thing.left, thing.top - gap - height),
    at(thing.right - width, thing.top - gap - height),
  ];
};
