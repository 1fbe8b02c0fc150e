import type { Kind, Layout } from './layout.ts';
import { shelfLayout } from './shelf.ts';
import { skylineLayout } from './skyline.ts';

/** Gain in length from which the skyline plan is worth its less tidy cuts, as a share of the shelf plan [1]. Rounding only. */
const WORTH = 1e-9;

/**
 * Pieces on the roll: the shorter of the shelf and the skyline plan, the shelf plan where they are alike, since it is easier to cut.
 *
 * @param kinds pieces to cut; each can lie on the roll
 * @param roll width of the roll [m]
 * @returns where every piece lies, and the length of roll [m]
 * Limits: as for the two plans. Example: six squares of 42 cm on 127 cm, 0.84 m.
 */
export const pack = (kinds: readonly Kind[], roll: number): Layout => {
  const shelf = shelfLayout(kinds, roll);
  return skylineLayout(kinds, roll, shelf.length * (1 - WORTH)) ?? shelf;
};
