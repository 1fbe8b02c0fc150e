/** Functions that look something up. */

import { type BaseValueObject, type IFunctionService, StringValueObject } from '@univerjs/engine-formula';
import { amend, asValue, mapped, numberOf } from './amend.ts';

const WITH_WILDCARDS = 2;

/** A text whose `*` and `?` stand for themselves. */
const literal = (value: BaseValueObject): BaseValueObject =>
  value.isString() ? StringValueObject.create(String(value.getValue()).replace(/[*?]/g, '~$&')) : value;

/** As shipped XLOOKUP and XMATCH take `*` and `?` for wildcards without being asked to. */
export function repairLookups(service: IFunctionService): void {
  for (const [name, place] of [
    ['XLOOKUP', 4],
    ['XMATCH', 2],
  ] as const)
    amend(service, name, (shipped) => (wanted, ...rest) => {
      const mode = rest[place - 1];
      const isPattern = mode !== undefined && !mode.isError() && numberOf(single(mode)) === WITH_WILDCARDS;
      return shipped(isPattern ? wanted : mapped(asValue(wanted), literal), ...rest);
    });
}

const single = (value: BaseValueObject): BaseValueObject => mapped(asValue(value), (one) => one);
