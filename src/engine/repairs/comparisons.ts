/** Comparisons of values. */

import {
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  BooleanValueObject,
  CELL_INVERTED_INDEX_CACHE,
  type IFunctionService,
  NullValueObject,
} from '@univerjs/engine-formula';
import { amend, asArray, lifted, table } from './amend.ts';

const collator = new Intl.Collator('en', { sensitivity: 'accent' });

/** Order of the kinds: any number before any text before FALSE and TRUE. */
function rank(value: BaseValueObject): number {
  if (value.isString()) return 1;
  return value.isBoolean() ? 2 : 0;
}

/** A blank cell is 0, an empty text or FALSE, whatever it meets. */
function plain(value: BaseValueObject, other: BaseValueObject): number | string | boolean {
  if (!value.isNull()) return value.getValue() as number | string | boolean;
  if (other.isString()) return '';
  return other.isBoolean() ? false : 0;
}

/** Spreadsheet programs compare 15 digits: 0.1+0.2 and 0.3 are the same. */
const DIGITS = 15;
const rounded = (x: number): number => Number(x.toPrecision(DIGITS));

/** Numbers further apart than this, as a share of the larger, differ within their first 15 digits. */
const APART = 1e-13;

function numberOrder(a: number, b: number): number {
  const difference = a - b;
  const isNear = Math.abs(difference) <= APART * Math.max(Math.abs(a), Math.abs(b));
  return isNear && difference !== 0 ? rounded(a) - rounded(b) : difference;
}

/** Letter case aside. */
function textOrder(a: string, b: string): number {
  const [left, right] = [a.toLowerCase(), b.toLowerCase()];
  if (left === right) return 0;
  return collator.compare(left, right) || (left < right ? -1 : 1);
}

/** Below, equal or above 0 as the first value comes before, with or after the second. */
export function order(a: BaseValueObject, b: BaseValueObject): number {
  const left = plain(a, b);
  const right = plain(b, a);
  if (typeof left === 'string' && typeof right === 'string') return textOrder(left, right);
  if (typeof left === 'number' && typeof right === 'number') return numberOrder(left, right);
  if (typeof left === typeof right) return Number(left) - Number(right);
  return rank(a) - rank(b);
}

const HOLDS: Readonly<Record<string, (order: number) => boolean>> = {
  '=': (x) => x === 0,
  '<>': (x) => x !== 0,
  '<': (x) => x < 0,
  '<=': (x) => x <= 0,
  '>': (x) => x > 0,
  '>=': (x) => x >= 0,
};

/**
 * As shipped `=` and its like take `*` and `?` in a text for wildcards, do not find a blank cell equal to an empty text, and remember, by the place of a
 * column, which rows hold which value. What they remember does not tell the text "5" from the number 5, and keeps tables that a formula made
 * under the formula's own place, so that the second table of a formula is compared by the values of the first.
 */
export function repairComparisons(service: IFunctionService): void {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  CELL_INVERTED_INDEX_CACHE.set = () => undefined;
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => undefined;
  amend(service, 'COMPARE', (_, executor) => {
    let holds = HOLDS['=']!;
    (executor as BaseFunction & { setCompareType(sign: string): void }).setCompareType = (sign) => {
      holds = HOLDS[sign.trim()] ?? HOLDS['=']!;
    };
    const compared = (a: BaseValueObject, b: BaseValueObject): BaseValueObject => {
      if (a.isError()) return a;
      return b.isError() ? b : BooleanValueObject.create(holds(order(a, b)));
    };
    return (left, right) => {
      const [lefts, rights] = [asArray(left), asArray(right)];
      // The usual case, a list and one value, is worth a way of its own: lists can be long.
      if (lefts !== undefined && rights === undefined) return eachOf(lefts, (cell) => compared(cell, right));
      if (lefts === undefined && rights !== undefined) return eachOf(rights, (cell) => compared(left, cell));
      return lifted([left, right], compared);
    };
  });
}

function eachOf(array: ArrayValueObject, one: (cell: BaseValueObject) => BaseValueObject): BaseValueObject {
  const blank = NullValueObject.create();
  const rows = (array.getArrayValue() as (BaseValueObject | null)[][]).map((row) =>
    row.map((cell) => one(cell ?? blank)),
  );
  return rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0]! : table(rows);
}
