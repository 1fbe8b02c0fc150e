import { type Kind, type Layout, type Placed, SLACK } from './layout.ts';

interface Shelf {
  readonly along: number;
  used: number;
}

/** One kind of piece as it is laid: its extent along and across the roll. */
interface Laid {
  readonly kind: number;
  readonly count: number;
  readonly length: number;
  readonly width: number;
}

/** All kinds with their longer sides across the roll where they fit, else along it; or the other way round. */
const laid = (kinds: readonly Kind[], roll: number, longAcross: boolean): Laid[] =>
  kinds.map(({ length, width, count }, kind) => {
    const long = Math.max(length, width);
    const short = Math.min(length, width);
    const across = longAcross && long <= roll * (1 + SLACK);
    return { kind, count, length: across ? short : long, width: across ? long : short };
  });

/** Shelves across the roll, deepest pieces first, each piece on the first shelf that has room for it. */
const shelves = (pieces: readonly Laid[], roll: number): Layout => {
  const open: Shelf[] = [];
  const placed: Placed[] = [];
  let end = 0;
  for (const { kind, count, length, width } of pieces.toSorted((a, b) => b.length - a.length)) {
    let first = 0;
    for (let i = 0; i < count; i++) {
      while (first < open.length && open[first]!.used + width > roll * (1 + SLACK)) first++;
      if (first === open.length) {
        open.push({ along: end, used: 0 });
        end += length;
      }
      const shelf = open[first]!;
      placed.push({ kind, along: shelf.along, across: shelf.used, length, width });
      shelf.used += width;
    }
  }
  return { placed, length: end };
};

/**
 * Plain plan: pieces side by side on shelves across the roll, first fit by falling depth.
 *
 * It is worked out twice, with the longer sides across the roll and along it, and the shorter plan is kept.
 *
 * @param kinds pieces to cut; each can lie on the roll
 * @param roll width of the roll [m]
 * @returns where every piece lies, and the length of roll [m]
 * Limits: no piece is wider than the roll on both sides. Source: first-fit decreasing height, E. G. Coffman Jr. et al. 1980, SIAM J. Comput. 9:808.
 * Example: six squares of 42 cm on 127 cm, two shelves, 0.84 m.
 */
export const shelfLayout = (kinds: readonly Kind[], roll: number): Layout => {
  const across = shelves(laid(kinds, roll, true), roll);
  const along = shelves(laid(kinds, roll, false), roll);
  return along.length < across.length ? along : across;
};
