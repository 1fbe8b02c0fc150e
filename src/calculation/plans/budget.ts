import { finite, isAtLeastZero, isFault, mustNotBeNegative, type Quantity, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { wholeUp } from '../whole-up.ts';

type PackKey = 'plasterPack' | 'clothPack' | 'feltPack' | 'foamPack' | 'sealerPack' | 'boltPack';
type PriceKey = 'plasterPrice' | 'clothPrice' | 'feltPrice' | 'foamPrice' | 'sealerPrice' | 'boltPrice';

/** Something that is bought in packs. */
export interface BudgetItem {
  readonly name: string;
  readonly quantity: Quantity;
  readonly pack: PackKey;
  readonly price: PriceKey;
}

/** What is bought, in the order in which it is listed. */
export const BUDGET_ITEMS: readonly BudgetItem[] = [
  { name: 'plaster', quantity: 'mass', pack: 'plasterPack', price: 'plasterPrice' },
  { name: 'cloth', quantity: 'clothLength', pack: 'clothPack', price: 'clothPrice' },
  { name: 'felt sheets', quantity: 'count', pack: 'feltPack', price: 'feltPrice' },
  { name: 'foam sheets', quantity: 'count', pack: 'foamPack', price: 'foamPrice' },
  { name: 'sealer', quantity: 'liquidVolume', pack: 'sealerPack', price: 'sealerPrice' },
  { name: 'bolts', quantity: 'count', pack: 'boltPack', price: 'boltPrice' },
];

/** What of one item to buy. */
export interface Purchase {
  /** Whole packs [1]. */
  readonly packs: number;
  /** What stays of them, in the unit of the item. */
  readonly leftOver: number;
  /** null where there is something to buy and no price is known. */
  readonly cost: number | null;
}

/**
 * Packs to buy of one item: ⌈needed/pack⌉, what they leave over, and what they cost.
 *
 * @param needed in SI, 0 or more
 * @param item which of the things that are bought
 * @param settings size and price of its pack
 * @returns packs, left over and cost; nothing needed costs 0, whether its price is known or not
 * Limits: needed of 0 or more. Source: arithmetic; sizes of packs are assumptions. Example: 50.157 kg of plaster, 3 packs.
 */
export const purchase = (needed: number, item: BudgetItem, settings: Settings): Result<Purchase> => {
  if (!isAtLeastZero(needed)) return mustNotBeNegative(item.name);
  const pack = settings[item.pack];
  const price = settings[item.price];
  const packs = finite(wholeUp(needed / pack));
  if (isFault(packs)) return packs;
  const leftOver = finite(Math.max(0, packs * pack - needed));
  if (isFault(leftOver)) return leftOver;
  const cost = packs === 0 ? 0 : price === null ? null : finite(packs * price);
  return isFault(cost) ? cost : { packs, leftOver, cost };
};

/**
 * Sum of costs: null where one of them is not known, since a sum without it would be too low.
 *
 * @param costs of the items; null where not known
 */
export const totalCost = (costs: readonly (number | null)[]): Result<number> | null => {
  let sum = 0;
  for (const cost of costs) {
    if (cost === null) return null;
    sum += cost;
  }
  return finite(sum);
};
