/** Functions of numbers and of lists. */

import {
  ArrayValueObject,
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  type IFunctionService,
  NullValueObject,
  NumberValueObject,
} from '@univerjs/engine-formula';
import { amend, asArray, errorIn, faulty, mapped, numberOf, table } from './amend.ts';

const textAsZero = (value: BaseValueObject): BaseValueObject =>
  value.isString() ? NumberValueObject.create(0) : value;

const noText = (value: BaseValueObject): BaseValueObject =>
  value.isString() || value.isBoolean() ? NullValueObject.create() : value;

const shape = (value: BaseValueObject): string => {
  const array = asArray(value);
  return array === undefined ? '1 1' : `${array.getRowCount()} ${array.getColumnCount()}`;
};

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

/** Functions that pass over the texts of a list, also those that read as a number. */
const NUMBERS_ALONE: readonly string[] = [
  ...['MEDIAN', 'GEOMEAN', 'HARMEAN', 'DEVSQ', 'SKEW', 'SKEW.P', 'KURT', 'TRIMMEAN', 'PERCENTRANK', 'PERCENTRANK.INC'],
  ...['PERCENTRANK.EXC', 'FREQUENCY', 'CORREL', 'PEARSON', 'RSQ', 'SLOPE', 'INTERCEPT', 'STEYX', 'FORECAST'],
  ...['FORECAST.LINEAR', 'COVAR', 'COVARIANCE.P', 'COVARIANCE.S', 'NPV', 'IRR', 'MIRR', 'T.TEST', 'TTEST', 'F.TEST'],
  ...['FTEST', 'Z.TEST', 'ZTEST', 'AVEDEV', 'MODE', 'MODE.SNGL', 'MODE.MULT'],
];

/**
 * As shipped AVERAGEA and many functions of statistics read the texts of a list as numbers, SUMPRODUCT takes lists of several lengths, and UNIQUE tells
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
  for (const name of NUMBERS_ALONE)
    amend(
      service,
      name,
      (shipped) =>
        (...values) =>
          shipped(...values.map((value) => (value instanceof ArrayValueObject ? mapped(value, noText) : value))),
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
  service.registerExecutors(new Unique('UNIQUE'));
}
