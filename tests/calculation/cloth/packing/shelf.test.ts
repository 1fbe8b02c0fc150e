import { describe, expect, it } from 'vitest';
import { shelfLayout } from '../../../../src/calculation/cloth/packing/shelf.ts';
import { expectPlan, ROLL, randomPieces, SHOP_LISTS } from './random-pieces.ts';

describe('shelfLayout', () => {
  it('lays squares three across the roll', () => {
    const layout = shelfLayout([{ length: 0.42, width: 0.42, count: 6 }], ROLL);
    expect(layout.length).toBe(0.84);
    expect(layout.placed.map(({ along, across }) => [along, across])).toEqual([
      [0, 0],
      [0, 0.42],
      [0, 0.84],
      [0.42, 0],
      [0.42, 0.42],
      [0.42, 0.84],
    ]);
  });

  it('lays pieces of an exact third of the roll three across, whatever the rounding', () => {
    for (const roll of [1.27, 1.143, 0.9144, 1.5]) {
      const third = roll / 3;
      expect(shelfLayout([{ length: third, width: third, count: 3 }], roll).length).toBe(third);
    }
  });

  it('turns strips whichever way is shorter', () => {
    // Across the roll two strips of 0.6 m take two shelves of 0.1 m in three; along it six lie side by side in 0.6 m.
    expect(shelfLayout([{ length: 0.6, width: 0.1, count: 6 }], 1.27).length).toBeCloseTo(0.3, 12);
    expect(shelfLayout([{ length: 1.0, width: 0.4, count: 3 }], 1.27).length).toBe(1);
    expect(shelfLayout([{ length: 0.4, width: 1.0, count: 3 }], 1.27).length).toBe(1);
  });

  it('keeps the rules of a plan on shop lists and on random pieces', () => {
    for (const kinds of SHOP_LISTS) expectPlan(shelfLayout(kinds, ROLL), kinds, ROLL);
    for (let seed = 1; seed <= 60; seed++) {
      const kinds = randomPieces(1 + (seed % 40), seed);
      expectPlan(shelfLayout(kinds, ROLL), kinds, ROLL);
    }
  });
});
