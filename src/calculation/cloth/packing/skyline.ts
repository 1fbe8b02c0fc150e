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

/** Candidates looked at in one search, which bounds its time [1]. Our own choice: a millisecond or two. */
export const SEARCH_EFFORT = 100_000;

/** Tries in one search at most, for small lists [1]. Our own choice: more gain nothing. */
export const MOST_TRIES = 400;

/** Weight of a piece that fills the step or ends level with a neighbour, against its size [1]. Our own choice, by trial. */
const LEVEL_BONUS = 0.3;

/** Weight of how much of the step a piece fills, against its size [1]. Our own choice, by trial. */
const FILL_WEIGHT = 0.3;

/** The same two where the widest piece is preferred: filling comes before level, level before width [1]. Our own choice. */
const WIDEST_FILLS = 4;
const WIDEST_LEVEL = 2;

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

/** One way to lay a piece of a kind. */
interface Way {
  readonly kind: number;
  readonly along: number;
  readonly across: number;
}

/** All ways, narrowest first. */
const waysOf = (kinds: readonly Kind[]): Way[] =>
  kinds
    .flatMap(({ length, width }, kind) => {
      const way = { kind, along: length, across: width };
      return length === width ? [way] : [way, { kind, along: width, across: length }];
    })
    .sort((a, b) => a.across - b.across);

/**
 * The way that suits a step best, or undefined where none fits.
 *
 * @param before how far the neighbour before the step stands out from it, and `after` the one after it [m]
 */
const bestWay = (
  ways: readonly Way[],
  left: readonly number[],
  width: number,
  before: number,
  after: number,
  sizes: readonly number[] | undefined,
  slack: number,
): Way | undefined => {
  let best: Way | undefined;
  let bestScore = -Infinity;
  for (const way of ways) {
    if (way.across > width + slack) break;
    if (left[way.kind] === 0) continue;
    const fills = width - way.across <= slack ? 1 : 0;
    const level = Math.abs(way.along - before) <= slack || Math.abs(way.along - after) <= slack ? 1 : 0;
    const share = way.across / width;
    const score = sizes
      ? sizes[way.kind]! + LEVEL_BONUS * (fills + level) + FILL_WEIGHT * share
      : WIDEST_FILLS * fills + WIDEST_LEVEL * level + share;
    if (score > bestScore) {
      bestScore = score;
      best = way;
    }
  }
  return best;
};

/**
 * One plan, or undefined where it would be as long as the limit.
 *
 * @param sizes how much each kind is to be preferred; without sizes the widest piece is
 * @param limit length at which the plan is given up, since a better one is known [m]
 */
const attempt = (
  kinds: readonly Kind[],
  ways: readonly Way[],
  roll: number,
  sizes: readonly number[] | undefined,
  limit: number,
): Layout | undefined => {
  const slack = roll * SLACK;
  const left = kinds.map(({ count }) => count);
  let remaining = piecesOf(kinds);
  const steps: Step[] = [{ along: 0, across: 0, width: roll }];
  const placed: Placed[] = [];
  let end = 0;
  while (remaining > 0) {
    const at = lowest(steps);
    const step = steps[at]!;
    const before = at > 0 ? steps[at - 1]!.along - step.along : Infinity;
    const after = at < steps.length - 1 ? steps[at + 1]!.along - step.along : Infinity;
    const way = bestWay(ways, left, step.width, before, after, sizes, slack);
    if (!way) {
      if (steps.length === 1) return undefined;
      step.along += Math.min(before, after);
      join(steps, at, slack);
      join(steps, at - 1, slack);
      continue;
    }
    left[way.kind]!--;
    remaining--;
    const top = step.along + way.along;
    end = Math.max(end, top);
    if (!(end < limit)) return undefined;
    const rest = step.width - way.across;
    // Against the higher neighbour; beyond the edges of the roll all is taken.
    const first = before >= after || rest <= slack;
    const across = first ? step.across : step.across + rest;
    placed.push({ kind: way.kind, along: step.along, across, length: way.along, width: way.across });
    if (rest <= slack) step.along = top;
    else {
      steps.splice(first ? at : at + 1, 0, { along: top, across, width: way.across });
      if (first) step.across += way.across;
      step.width = rest;
    }
    join(steps, at + 1, slack);
    join(steps, at, slack);
    join(steps, at - 1, slack);
  }
  return { placed, length: end };
};

const piecesOf = (kinds: readonly Kind[]): number => kinds.reduce((sum, { count }) => sum + count, 0);

/**
 * Shortest plan that the search finds.
 *
 * @param kinds pieces to cut
 * @param roll width of the roll [m]
 * @param limit length that the plan must be below, such as that of a plan that is known [m]
 * @returns where every piece lies, and the length of roll [m], the same for the same pieces; undefined where no plan below the limit is found
 * Limits: near to the shortest plan, not proved to be it; none where a piece is wider than the roll. Example: six squares of 42 cm on 127 cm, 0.84 m.
 */
export const skylineLayout = (kinds: readonly Kind[], roll: number, limit = Infinity): Layout | undefined => {
  const ways = waysOf(kinds);
  const largest = kinds.reduce((most, { length, width }) => Math.max(most, length, width), 0);
  // Shares of the largest first, so that no product of extreme sizes overflows.
  const shares = kinds.map(({ length, width }) => [length / largest, width / largest] as const);
  const orders = [
    shares.map(([length, width]) => Math.max(length, width)),
    shares.map(([length, width]) => (length + width) / 2),
    shares.map(([length, width]) => length * width),
  ];
  let best: Layout | undefined;
  const look = (sizes: readonly number[] | undefined): void => {
    best = attempt(kinds, ways, roll, sizes, best?.length ?? limit) ?? best;
  };
  look(undefined);
  for (const sizes of orders) look(sizes);
  const random = seeded();
  const tries = Math.min(MOST_TRIES, Math.floor(SEARCH_EFFORT / (piecesOf(kinds) * ways.length)));
  for (let i = 0; i < tries; i++) {
    const noise = MOST_NOISE * random();
    look(orders[i % orders.length]!.map((size) => size + noise * (random() - 0.5)));
  }
  return best;
};
