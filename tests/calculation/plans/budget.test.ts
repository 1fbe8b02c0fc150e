import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { BUDGET_ITEMS, purchase, totalCost } from '../../../src/calculation/plans/budget.ts';
import { expectFault, known, NEGATIVE, SEED, settings } from '../kit.ts';

const [PLASTER] = BUDGET_ITEMS as [(typeof BUDGET_ITEMS)[number]];

test('the example: 50.15661122 kg are three bags', () => {
  const { packs, leftOver, cost } = known(purchase(50.15661122, PLASTER, settings()));
  expect([packs, cost]).toEqual([3, null]);
  // Ten digits of a difference of two numbers with ten digits.
  expect(leftOver).toBeCloseTo(17.88224428, 7);
});

describe.each(BUDGET_ITEMS.map((item) => [item.name, item] as const))('%s', (_, item) => {
  const pack = settings()[item.pack];
  test('packs hold what is needed, and one pack less does not', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 1e5, noNaN: true }), (needed) => {
        const { packs, leftOver, cost } = known(purchase(needed, item, settings({ [item.price]: 7.5 })));
        expect(Number.isInteger(packs)).toBe(true);
        // An exact multiple may be rounded by some parts in 10⁹.
        expect(packs * pack).toBeGreaterThanOrEqual(needed * (1 - 2e-9));
        expect((packs - 1) * pack).toBeLessThan(needed);
        expect(leftOver).toBe(Math.max(0, packs * pack - needed));
        expect(cost).toBe(packs * 7.5);
      }),
      { seed: SEED },
    );
  });
  test('nothing needed costs nothing, also without a price', () => {
    expect(purchase(0, item, settings())).toEqual({ packs: 0, leftOver: 0, cost: 0 });
  });
  test('no price, no cost', () => {
    expect(known(purchase(1, item, settings())).cost).toBeNull();
  });
});

test('what is no amount is refused', () => {
  for (const bad of NEGATIVE) expectFault(purchase(bad, PLASTER, settings()), 'value', 'plaster');
});

test('too much to count is an overflow', () => {
  expectFault(purchase(1e308, PLASTER, settings({ plasterPrice: 1e9 })), 'overflow');
});

test('a total without one of its costs is not known', () => {
  expect(totalCost([1, 2.5, 0])).toBe(3.5);
  expect(totalCost([1, null, 0])).toBeNull();
  expect(totalCost([])).toBe(0);
  expectFault(totalCost([1e308, 1e308]), 'overflow');
});
