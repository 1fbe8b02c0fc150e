/**
 * Pieces packed under a skyline: the front up to which the roll is taken, as steps across it.
 *
 * The lowest step is filled first, with the piece that suits it best; a step too narrow for every piece that is left is given up and levelled
 * with its lower neighbour. What suits best is judged by a few rules, then by the same rules with a little seeded noise, and the shortest of
 * all plans is kept: greedy rules err, and they rarely err twice in the same place.
 *
 * Source: best-fit packing, E. K. Burke, G. Kendall and G. Whitwell 2004, Oper. Res. 52:655.
 */
import { type Kind, type Layout, type Placed, SLACK } from './layout.ts';

/** Candidates looked at in one search, which bounds its time [1]. Our own choice: some three milliseconds. */
export const SEARCH_EFFORT = 60_000;

/** Tries in one search at most, for small lists [1]. Our own choice: more gain nothing. */
export const MOST_TRIES = 400;

/** Weight of a piece that fills the step or ends level with a neighbour, against its size [1]. Our own choice, by trial. */
const LEVEL_BONUS = 0.3;

/** Weight of how much of the step a piece fills, against its size [1]. Our own choice, by trial. */
const FILL_WEIGHT = 0.3;

/** Largest noise, as a share of the largest piece's size [1]. Our own choice, by trial. */
const MOST_NOISE = 0.8;

/** A step: how far the roll is taken there, and how wide it is. */
interface Step {
  along: number;
  across: number;
  width: number;
}

/** Numbers between 0 and 1 that look random and are the same each time (a linear congruence of 32 bits, Numerical Recipes). */
const seeded = (): (() => number) => {
  let state = 20060401;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
};

/** Joins the step at an index with the one after it where both are level. */
const join = (steps: Step[], at: number, slack: number): void => {
  const [one, next] = [steps[at], steps[at + 1]];
  if (!one || !next || !(Math.abs(one.along - next.along) <= slack)) return;
  one.width += next.width;
  steps.splice(at + 1, 1);
};

const lowest = (steps: readonly Step[]): number => {
  let at = 0;
  for (let i = 1; i < steps.length; i++) if (steps[i]!.along < steps[at]!.along) at = i;
  return at;
};

/**
 * One plan.
 *
 * @param sizes how much each kind is to be preferred; without sizes the widest piece is
 * @param limit length at which the plan is given up, since a better one is known [m]
 */
const attempt = (
  kinds: readonly Kind[],
  roll: number,
  sizes: readonly number[] | undefined,
  limit: number,
): Layout | undefined => {
  const slack = roll * SLACK;
  const left = kinds.map(({ count }) => count);
  let remaining = left.reduce((sum, count) => sum + count, 0);
  const steps: Step[] = [{ along: 0, across: 0, width: roll }];
  const placed: Placed[] = [];
  let end = 0;
  while (remaining > 0) {
    const at = lowest(steps);
    const step = steps[at]!;
    const before = (steps[at - 1]?.along ?? Infinity) - step.along;
    const after = (steps[at + 1]?.along ?? Infinity) - step.along;
    let best = -1;
    let bestScore = -Infinity;
    let length = 0;
    let width = 0;
    for (let i = 0; i < kinds.length; i++) {
      if (left[i] === 0) continue;
      const kind = kinds[i]!;
      for (let turned = 0; turned < (kind.length === kind.width ? 1 : 2); turned++) {
        const across = turned ? kind.length : kind.width;
        const along = turned ? kind.width : kind.length;
        if (across > step.width + slack) continue;
        const fills = step.width - across <= slack ? 1 : 0;
        const level = Math.abs(along - before) <= slack || Math.abs(along - after) <= slack ? 1 : 0;
        const score =
          sizes === undefined
            ? 4 * fills + 2 * level + across / step.width
            : sizes[i]! + LEVEL_BONUS * (fills + level) + (FILL_WEIGHT * across) / step.width;
        if (score > bestScore) {
          bestScore = score;
          best = i;
          length = along;
          width = across;
        }
      }
    }
    if (best < 0) {
      step.along += Math.min(before, after);
      join(steps, at, slack);
      join(steps, at - 1, slack);
      continue;
    }
    left[best]!--;
    remaining--;
    end = Math.max(end, step.along + length);
    if (end >= limit) return undefined;
    const rest = step.width - width;
    // Against the higher neighbour; beyond the edges of the roll all is taken.
    const atStart = before >= after;
    const across = atStart || rest <= slack ? step.across : step.across + rest;
    placed.push({ kind: best, along: step.along, across, length, width });
    if (rest <= slack) {
      step.along += length;
      join(steps, at, slack);
      join(steps, at - 1, slack);
    } else if (atStart) {
      steps.splice(at, 0, { along: step.along + length, across: step.across, width });
      step.across += width;
      step.width = rest;
      join(steps, at - 1, slack);
    } else {
      steps.splice(at + 1, 0, { along: step.along + length, across, width });
      step.width = rest;
      join(steps, at + 1, slack);
    }
  }
  return { placed, length: end };
};

/**
 * Shortest plan that the search finds.
 *
 * @param kinds pieces to cut; each can lie on the roll
 * @param roll width of the roll [m]
 * @returns where every piece lies, and the length of roll [m]; the same for the same pieces
 * Limits: no piece is wider than the roll on both sides; near to the shortest plan, not proved to be it. Example: six squares of 42 cm on 127 cm, 0.84 m.
 */
export const skylineLayout = (kinds: readonly Kind[], roll: number): Layout => {
  const pieces = kinds.reduce((sum, { count }) => sum + count, 0);
  const largest = Math.max(...kinds.map(({ length, width }) => Math.max(length, width)));
  const orders = [
    kinds.map(({ length, width }) => Math.max(length, width) / largest),
    kinds.map(({ length, width }) => (length + width) / (2 * largest)),
    kinds.map(({ length, width }) => (length * width) / (largest * largest)),
  ];
  let best: Layout = attempt(kinds, roll, undefined, Infinity) ?? { placed: [], length: 0 };
  for (const sizes of orders) best = attempt(kinds, roll, sizes, best.length) ?? best;
  const random = seeded();
  const tries = Math.min(MOST_TRIES, Math.floor(SEARCH_EFFORT / (pieces * kinds.length)));
  for (let i = 0; i < tries; i++) {
    const noise = MOST_NOISE * random();
    const sizes = orders[i % orders.length]!.map((size) => size + noise * (random() - 0.5));
    best = attempt(kinds, roll, sizes, best.length) ?? best;
  }
  return best;
};
