/** Texts as conditions. */

import { type BaseValueObject, BooleanValueObject, ErrorType, type IFunctionService } from '@univerjs/engine-formula';
import { amend, faulty, mapped } from './amend.ts';

/** A text is a condition only where it reads TRUE or FALSE. Other kinds of values stay as they are. */
function condition(value: BaseValueObject): BaseValueObject {
  if (!value.isString()) return value;
  const text = String(value.getValue()).toUpperCase();
  if (text === 'TRUE') return BooleanValueObject.create(true);
  return text === 'FALSE' ? BooleanValueObject.create(false) : faulty(ErrorType.VALUE);
}

const conditions = (value: BaseValueObject): BaseValueObject =>
  value.isArray() || value.isString() ? mapped(value, condition) : value;

/** Texts in cells do not count here; a typed one has to be a condition. */
const typedCondition = (value: BaseValueObject): BaseValueObject => (value.isArray() ? value : condition(value));

/** As shipped any text is true as the condition of IF, and passed over by AND, OR and XOR; NOT does not read TRUE. */
export function repairConditions(service: IFunctionService): void {
  amend(
    service,
    'IF',
    (shipped) =>
      (test, ...rest) =>
        shipped(conditions(test), ...rest),
  );
  amend(
    service,
    'IFS',
    (shipped) =>
      (...values) =>
        shipped(...values.map((v, i) => (i % 2 === 0 ? conditions(v) : v))),
  );
  amend(service, 'NOT', (shipped) => (value) => shipped(conditions(value)));
  for (const name of ['AND', 'OR', 'XOR'])
    amend(
      service,
      name,
      (shipped) =>
        (...values) =>
          shipped(...values.map(typedCondition)),
    );
}
