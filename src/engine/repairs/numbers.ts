/** Functions of numbers and of lists. */

import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  type IFunctionService,
  NumberValueObject,
} from '@univerjs/engine-formula';
import { amend, asArray, errorIn, faulty, mapped, numberOf, OneByOne, table } from './amend.ts';

const textAsZero = (value: BaseValueObject): BaseValueObject =>
  value.isString() ? NumberValueObject.create(0) : value;

const shape = (value: BaseValueObject): string => {
  const array = asArray(value);
  return array === undefined ? '1 1' : `${array.getRowCount()} ${array.getColumnCount()}`;
};

/** The payments of a loan at a rate: 0 at the right rate. */
function balance(rate: number, periods: number, payment: number, present: number, future: number, early: number) {
  if (Math.abs(rate) < 1e-12) return present + payment * periods + future;
  const growth = (1 + rate) ** periods;
  return present * growth + (payment * (1 + rate * early) * (growth - 1)) / rate + future;
}

const MOST_STEPS = 200;

/** Halves an interval in which the sign changes, from the guess outwards. */
function rateOf(of: (rate: number) => number, guess: number): number | undefined {
  for (let width = 0.01; width < 1e4; width *= 1.6) {
    let [low, high] = [Math.max(-0.999_999, guess - width), guess + width];
    let atLow = of(low);
    if (!(atLow * of(high) <= 0)) continue;
    for (let step = 0; step < MOST_STEPS && high - low > 1e-16 * Math.abs(high); step += 1) {
      const middle = (low + high) / 2;
      const value = of(middle);
      if (value === 0) return middle;
      if (atLow * value < 0) high = middle;
      else {
        low = middle;
        atLow = value;
      }
    }
    return (low + high) / 2;
  }
  return undefined;
}

const DEFAULT_GUESS = 0.1;

function rate(...values: BaseValueObject[]): BaseValueObject {
  const error = errorIn(values);
  if (error !== undefined) return error;
  const [periods = 0, payment = 0, present = 0, future = 0, type = 0, guess = DEFAULT_GUESS] = values.map(numberOf);
  if ([periods, payment, present, future, type, guess].some(Number.isNaN)) return faulty(ErrorType.VALUE);
  if (!(periods > 0)) return faulty(ErrorType.NUM);
  const early = type === 0 ? 0 : 1;
  const found = rateOf((x) => balance(x, periods, payment, present, future, early), guess);
  return found === undefined ? faulty(ErrorType.NUM) : NumberValueObject.create(found);
}

const keyOf = (value: BaseValueObject | null | undefined): string => {
  if (value === null || value === undefined || value.isNull()) return '';
  return `${value.isNumber()} ${value.isBoolean()} ${String(value.getValue()).toLowerCase()}`;
};

const flag = (value: BaseValueObject | undefined): boolean | undefined => {
  if (value === undefined || value.isNull()) return false;
  const number = numberOf(asArray(value)?.get(0, 0) ?? value);
  return Number.isNaN(number) ? undefined : number !== 0;
};

function unique(array: BaseValueObject, byColumn?: BaseValueObject, once?: BaseValueObject): BaseValueObject {
  const given = asArray(array);
  const [columns, single] = [flag(byColumn), flag(once)];
  const error = errorIn([array, ...[byColumn, once].filter((value) => value !== undefined)]);
  if (error !== undefined) return error;
  if (columns === undefined || single === undefined) return faulty(ErrorType.VALUE);
  if (given === undefined) return array;
  const rows = given.getArrayValue() as BaseValueObject[][];
  const turned = (cells: readonly BaseValueObject[][]): BaseValueObject[][] =>
    cells[0]!.map((_, i) => cells.map((row) => row[i]!));
  const lines = columns ? turned(rows) : rows;
  const byKey = new Map<string, { line: BaseValueObject[]; count: number }>();
  for (const line of lines) {
    const key = line.map(keyOf).join('\n');
    const known = byKey.get(key);
    if (known === undefined) byKey.set(key, { line, count: 1 });
    else known.count += 1;
  }
  const kept = [...byKey.values()].filter(({ count }) => !single || count === 1).map(({ line }) => [...line]);
  if (kept.length === 0) return faulty(ErrorType.CALC);
  return table(columns ? turned(kept) : kept);
}

class Unique extends BaseFunction {
  override minParams = 1;
  override maxParams = 3;

  override calculate(array: BaseValueObject, byColumn?: BaseValueObject, once?: BaseValueObject): BaseValueObject {
    return unique(array, byColumn, once);
  }
}

/**
 * As shipped AVERAGEA reads the texts of a list as numbers, SUMPRODUCT takes lists of several lengths, RATE does not find most rates, and UNIQUE tells
 * letter case apart.
 */
export function repairNumbers(service: IFunctionService): void {
  amend(
    service,
    'AVERAGEA',
    (shipped) =>
      (...values) =>
        shipped(...values.map((value) => (value instanceof ArrayValueObject ? mapped(value, textAsZero) : value))),
  );
  amend(
    service,
    'SUMPRODUCT',
    (shipped) =>
      (...values) =>
        errorIn(values) === undefined && new Set(values.map(shape)).size > 1
          ? faulty(ErrorType.VALUE)
          : shipped(...values),
  );
  service.registerExecutors(new OneByOne('RATE', 3, 6, rate), new Unique('UNIQUE'));
}
