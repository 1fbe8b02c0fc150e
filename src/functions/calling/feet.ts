/** Arguments that the functions of the three feet share. */
import { type Feet, MIDDLE, type Point } from '../../calculation/feet/points.ts';
import { type ArgumentKind, grid, optional } from './arguments.ts';

const asFeet = (kind: ArgumentKind<number[][]>) => kind as unknown as ArgumentKind<Feet>;

export const FEET = asFeet(grid(3, 2, 'length', 'x and y of the three feet'));
export const BALANCE = grid(1, 2, 'length', 'x and y of the balance point') as unknown as ArgumentKind<
  readonly [Point]
>;
export const BALANCE_OR_MIDDLE = optional(BALANCE);

/** The balance point of a call: the middle where it is left out. */
export const balanceOf = (given: readonly [Point] | undefined): Point => given?.[0] ?? MIDDLE;

export const FEET_REMARK = 'The origin is the middle of the jacket seen from above, x along the length, y across.';
export const PLANNING_LIMIT = {
  text: 'an estimate for planning: put the jacket on its feet and try before it is stored',
};
