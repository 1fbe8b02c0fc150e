/** Rectangles on a roll of cloth: what is to be cut, and where it lies. */

/** Rectangular pieces of one size. They may be turned by a quarter. */
export interface Kind {
  /** Longer or shorter side, as the list has it [m]. */
  readonly length: number;
  /** The other side [m]. */
  readonly width: number;
  /** How many of them [1]. */
  readonly count: number;
}

/** One piece on the roll: a corner, and its extent along and across the roll. */
export interface Placed {
  /** Which of the kinds it is, counted from 0. */
  readonly kind: number;
  /** Distance of its nearer end from the start of the roll [m]. */
  readonly along: number;
  /** Distance of its nearer side from the left edge of the roll [m]. */
  readonly across: number;
  /** Extent along the roll [m]. */
  readonly length: number;
  /** Extent across the roll [m]. */
  readonly width: number;
}

/** All pieces on the roll, and how much of it they take [m]. */
export interface Layout {
  readonly placed: readonly Placed[];
  readonly length: number;
}

/** Share of the roll width below which a difference is rounding, so that pieces of a third of the roll lie three across [1]. */
export const SLACK = 1e-9;

/** True where a piece of a kind can lie on a roll at all, turned or not. */
export const fitsRoll = ({ length, width }: Kind, roll: number): boolean => Math.min(length, width) <= roll;
