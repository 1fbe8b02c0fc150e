/** Functions that look something up. */

import {
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  ErrorType,
  type IFunctionService,
  NullValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import { amend, asValue, faulty, mapped, numberOf } from './amend.ts';
import { hasWildcards } from './wildcards.ts';

const WITH_WILDCARDS = 2;

/** A text whose `*` and `?` stand for themselves. */
const literal = (value: BaseValueObject): BaseValueObject =>
  value.isString() ? StringValueObject.create(String(value.getValue()).replace(/[*?]/g, '~$&')) : value;

/** The first and the last place of a value in a row or column. */
type Places = readonly [first: number, last: number];

/** What a value is found by. Letter case does not count. Nothing for a blank cell or an error. */
function keyOf(value: BaseValueObject): string | undefined {
  if (value.isNull() || value.isError()) return undefined;
  const plain = value.getValue();
  if (typeof plain === 'string') return `t${plain.toLowerCase()}`;
  return typeof plain === 'number' ? `n${plain}` : `b${plain}`;
}

/** Arrays of cells are shared by the formulas of one pass and never change: each is read once, however many formulas look into it. */
const placesOfArrays = new WeakMap<ArrayValueObject, Map<string, Places>>();

function placesIn(array: ArrayValueObject): Map<string, Places> {
  const known = placesOfArrays.get(array);
  if (known !== undefined) return known;
  const places = new Map<string, Places>();
  for (const [i, cell] of (array.getArrayValue().flat() as (BaseValueObject | null)[]).entries()) {
    const key = cell ? keyOf(cell) : undefined;
    if (key !== undefined) places.set(key, [places.get(key)?.[0] ?? i, i]);
  }
  placesOfArrays.set(array, places);
  return places;
}

/** What the engine's functions have in common to look for a value that is equal. */
interface Looking {
  equalSearch(
    value: BaseValueObject,
    where: ArrayValueObject,
    results: ArrayValueObject,
    first?: boolean,
  ): BaseValueObject;
}

/** Looks by way of an index. A pattern, where the function knows any, is left to the function. */
function indexed(executor: BaseFunction, hasPatterns: boolean): void {
  const looking = executor as unknown as Looking;
  const shipped = looking.equalSearch.bind(executor);
  looking.equalSearch = (value, where, results, first = true) => {
    const text = value.isString() ? String(value.getValue()) : '';
    if (value.isNull() || (hasPatterns && hasWildcards(text))) return shipped(value, where, results, first);
    const wanted = value.isString() ? StringValueObject.create(text.replace(/~([*?])/g, '$1')) : value;
    const key = keyOf(wanted);
    const places = key === undefined ? undefined : placesIn(where).get(key);
    if (places === undefined) return faulty(ErrorType.NA);
    const at = first ? places[0] : places[1];
    const isRow = where.getRowCount() === 1;
    return (isRow ? results.get(0, at) : results.get(at, 0)) ?? NullValueObject.create();
  };
}

const single = (value: BaseValueObject): BaseValueObject => mapped(asValue(value), (one) => one);

/**
 * As shipped XLOOKUP and XMATCH take `*` and `?` for wildcards without being asked to. Without what comparisons remember, which is not to be relied on,
 * a look-up would go through all cells each time: here it has an index.
 */
export function repairLookups(service: IFunctionService): void {
  for (const [name, place] of [
    ['XLOOKUP', 4],
    ['XMATCH', 2],
  ] as const)
    amend(service, name, (shipped, executor) => {
      if (name === 'XLOOKUP') indexed(executor, false);
      return (wanted, ...rest) => {
        const mode = rest[place - 1];
        const isPattern = mode !== undefined && !mode.isError() && numberOf(single(mode)) === WITH_WILDCARDS;
        return shipped(isPattern ? wanted : mapped(asValue(wanted), literal), ...rest);
      };
    });
  for (const name of ['VLOOKUP', 'HLOOKUP'])
    amend(service, name, (shipped, executor) => {
      indexed(executor, true);
      return shipped;
    });
}
