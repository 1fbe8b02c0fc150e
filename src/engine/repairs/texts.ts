/** Functions of texts. */

import {
  type BaseValueObject,
  ErrorType,
  type IFunctionService,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import { amend, errorIn, faulty, mapped, numberOf, OneByOne, textOf } from './amend.ts';
import { looksFor } from './wildcards.ts';

/** Where a pattern starts in a text, letter case aside. */
function search(wanted: BaseValueObject, within: BaseValueObject, start?: BaseValueObject): BaseValueObject {
  const error = errorIn(start === undefined ? [wanted, within] : [wanted, within, start]);
  if (error !== undefined) return error;
  const text = textOf(within);
  const from = start === undefined ? 1 : Math.floor(numberOf(start));
  if (!(from >= 1 && from <= Math.max(1, text.length))) return faulty(ErrorType.VALUE);
  const pattern = looksFor(textOf(wanted));
  pattern.lastIndex = from - 1;
  const found = pattern.exec(text);
  return found === null ? faulty(ErrorType.VALUE) : NumberValueObject.create(found.index + 1);
}

/** What a link shows: its name, else its address. The link itself is not made, since nobody should be led away by a calculation. */
const linkText = (address: BaseValueObject, name: BaseValueObject = address): BaseValueObject => {
  const error = errorIn([address, name]);
  if (error !== undefined) return error;
  return name.isNull() ? NumberValueObject.create(0) : name;
};

const trueOrFalse = (value: BaseValueObject): BaseValueObject =>
  value.isBoolean() ? StringValueObject.create(textOf(value)) : value;

/** As shipped SEARCH knows no wildcards, HYPERLINK makes a link that can be clicked, and TEXT leaves TRUE a truth value. */
export function repairTexts(service: IFunctionService): void {
  service.registerExecutors(
    new OneByOne('SEARCH', 2, 3, search),
    new OneByOne('SEARCHB', 2, 3, search),
    new OneByOne('HYPERLINK', 1, 2, linkText),
  );
  amend(
    service,
    'TEXT',
    (shipped) =>
      (value, ...rest) =>
        shipped(mapped(value, trueOrFalse), ...rest),
  );
}
