/** Random pieces for the packing tests, and the rules of a plan checked by plain comparison, independent of how plans are made. */

import { expect } from 'vitest';
import type { Kind, Layout } from '../../../../src/calculation/cloth/packing/layout.ts';

/** Width of the roll in these tests [m]. */
export const ROLL = 1.27;

/** Places come from sums of some hundred lengths, each rounded [m]. */
export const PLACE_ROUNDING = 1e-8;

/** Numbers from 0 to 1 by the middle-square Weyl sequence: another generator than the one under test. */
export const numbersFrom = (seed: number): (() => number) => {
  let [x, w] = [0n, 0n];
  const step = (BigInt(seed) * 2n + 0xb5ad4eceda1ce2a9n) | 1n;
  return () => {
    w = BigInt.asUintN(64, w + step);
    x = BigInt.asUintN(64, x * x + w);
    x = BigInt.asUintN(64, (x >> 32n) | (x << 32n));
    return Number(x >> 32n) / 2 ** 32;
  };
};

/** One piece of each of n sizes between two ends [m]. */
export const randomPieces = (n: number, seed: number, least = 0.05, most = 0.42): Kind[] => {
  const next = numbersFrom(seed);
  const side = () => least + (most - least) * next();
  return Array.from({ length: n }, () => ({ length: side(), width: side(), count: 1 }));
};

/** Length that the pieces would take without any gap [m]. */
export const areaBound = (kinds: readonly Kind[], roll: number): number =>
  kinds.reduce((sum, { length, width, count }) => sum + length * width * count, 0) / roll;

/** Asserts that a plan has every piece once, in its size, inside of the roll, on no other piece. */
export const expectPlan = ({ placed, length }: Layout, kinds: readonly Kind[], roll: number): void => {
  const left = kinds.map(({ count }) => count);
  let wrongSize = 0;
  let outside = 0;
  for (const { kind, along, across, length: long, width } of placed) {
    left[kind]!--;
    const { length: one, width: other } = kinds[kind]!;
    if (!((long === one && width === other) || (long === other && width === one))) wrongSize++;
    if (!(along >= 0 && across >= -PLACE_ROUNDING)) outside++;
    if (!(across + width <= roll + PLACE_ROUNDING && along + long <= length + PLACE_ROUNDING)) outside++;
  }
  expect(wrongSize, 'pieces of a size that is not asked for').toBe(0);
  expect(outside, 'pieces that stick out of the roll').toBe(0);
  expect(left, 'every piece is placed once').toEqual(kinds.map(() => 0));
  let overlaps = 0;
  const sorted = placed.toSorted((a, b) => a.along - b.along);
  for (const [i, a] of sorted.entries())
    for (let j = i + 1; j < sorted.length; j++) {
      const b = sorted[j]!;
      if (b.along > a.along + a.length - PLACE_ROUNDING) break;
      const along = Math.min(a.along + a.length, b.along + b.length) - b.along;
      const across = Math.min(a.across + a.width, b.across + b.width) - Math.max(a.across, b.across);
      if (along > PLACE_ROUNDING && across > PLACE_ROUNDING) overlaps++;
    }
  expect(overlaps, 'pieces that lie on another').toBe(0);
  const furthest = placed.reduce((most, { along, length: long }) => Math.max(most, along + long), 0);
  expect(Math.abs(furthest - length)).toBeLessThanOrEqual(PLACE_ROUNDING);
  expect(length).toBeGreaterThanOrEqual(areaBound(kinds, roll) - PLACE_ROUNDING);
};

/** Lists that a shop would cut: few kinds, many pieces. */
export const SHOP_LISTS: readonly (readonly Kind[])[] = [
  [{ length: 0.42, width: 0.42, count: 6 }],
  [
    { length: 0.42, width: 0.42, count: 36 },
    { length: 0.42, width: 0.1016, count: 20 },
    { length: 0.15, width: 0.15, count: 36 },
    { length: 0.1, width: 0.1, count: 30 },
  ],
  [
    { length: 0.5, width: 0.5, count: 17 },
    { length: 0.5, width: 0.1016, count: 24 },
    { length: 0.09, width: 0.09, count: 0 },
  ],
  [{ length: ROLL, width: 0.3, count: 3 }],
  [{ length: 3, width: 0.2, count: 5 }],
];
