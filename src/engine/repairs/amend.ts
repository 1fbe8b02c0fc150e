/** How a shipped function is put right: by itself where little is wrong with it, else by another in its place. */

import {
  ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  ErrorValueObject,
  type FunctionVariantType,
  type IFunctionService,
  NullValueObject,
} from '@univerjs/engine-formula';

export type Calculate = (...values: BaseValueObject[]) => BaseValueObject;

/** Functions that were put right already: once is enough. */
const amended = new WeakSet<BaseFunction>();

/** Lays a change around a shipped function, which the engine goes on calling. A function that the engine does not have is left out. */
export function amend(
  service: IFunctionService,
  name: string,
  change: (shipped: Calculate, executor: BaseFunction) => Calculate,
): void {
  const executor = service.getExecutor(name);
  if (executor === undefined || executor === null || amended.has(executor)) return;
  const shipped = executor.calculate.bind(executor) as Calculate;
  executor.calculate = change(shipped, executor) as BaseFunction['calculate'];
  amended.add(executor);
}

/** A function of ours in place of a shipped one, calculated for one value of each argument at a time. */
export class OneByOne extends BaseFunction {
  override minParams: number;
  override maxParams: number;
  readonly #one: Calculate;

  constructor(name: string, least: number, most: number, one: Calculate) {
    super(name);
    this.minParams = least;
    this.maxParams = most;
    this.#one = one;
  }

  override calculate(...values: BaseValueObject[]): BaseValueObject {
    return lifted(values, this.#one);
  }
}

export const isReference = (value: FunctionVariantType): value is BaseReferenceObject => value.isReferenceObject();

export const asArray = (value: BaseValueObject): ArrayValueObject | undefined =>
  value.isArray() ? (value as ArrayValueObject) : undefined;

/** Values of a table at a place; a single row or column stands for all, and beyond the end there is nothing. */
function at(value: BaseValueObject, row: number, column: number): BaseValueObject | undefined {
  const array = asArray(value);
  if (array === undefined) return value;
  const [rows, columns] = [array.getRowCount(), array.getColumnCount()];
  if ((rows > 1 && row >= rows) || (columns > 1 && column >= columns)) return undefined;
  return array.get(rows === 1 ? 0 : row, columns === 1 ? 0 : column) ?? NullValueObject.create();
}

export const table = (rows: BaseValueObject[][]): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: rows,
    rowCount: rows.length,
    columnCount: rows[0]?.length ?? 0,
    unitId: '',
    sheetId: '',
    row: -1,
    column: -1,
  });

/** A function of single values over tables: the answer is as large as the largest, with #N/A where one of them has no value. */
export function lifted(values: readonly BaseValueObject[], one: Calculate): BaseValueObject {
  const arrays = values.flatMap((value) => asArray(value) ?? []);
  if (arrays.length === 0) return one(...values);
  const rows = Math.max(...arrays.map((array) => array.getRowCount()));
  const columns = Math.max(...arrays.map((array) => array.getColumnCount()));
  const answers = Array.from({ length: rows }, (_, row) =>
    Array.from({ length: columns }, (__, column) => {
      const singles: BaseValueObject[] = [];
      for (const value of values) {
        const single = at(value, row, column);
        if (single === undefined) return ErrorValueObject.create(ErrorType.NA);
        singles.push(single);
      }
      return one(...singles);
    }),
  );
  return rows === 1 && columns === 1 ? answers[0]![0]! : table(answers);
}

/** The same table with each value changed. */
export const mapped = (value: BaseValueObject, one: Calculate): BaseValueObject => lifted([value], one);

/** A value, or the values of the cells that a reference points at. */
export const asValue = (value: BaseValueObject): BaseValueObject =>
  isReference(value as FunctionVariantType) ? (value as unknown as BaseReferenceObject).toArrayValueObject() : value;

/** The first of the values that is an error. */
export const errorIn = (values: readonly BaseValueObject[]): BaseValueObject | undefined =>
  values.find((value) => value.isError());

export const faulty = (code: ErrorType): BaseValueObject => ErrorValueObject.create(code);

/** Digits that spreadsheet programs show of a number, and the longest number that they write without an exponent [characters]. */
const DIGITS = 15;
const LONGEST_NUMBER = 21;

/** A number as text, as `&` writes it: 15 digits, an exponent only where it would be long. */
export function numberText(x: number): string {
  const [mantissa = '', exponent] = String(Number(x.toPrecision(DIGITS))).split('e');
  if (exponent === undefined) return mantissa;
  const places = Number(exponent);
  const sign = x < 0 ? '-' : '';
  const digits = mantissa.replace(/[-.]/g, '');
  if (places < 0 && digits.length - places < LONGEST_NUMBER) return `${sign}0.${'0'.repeat(-places - 1)}${digits}`;
  return `${mantissa}E${places < 0 ? '-' : '+'}${String(Math.abs(places)).padStart(2, '0')}`;
}

/** A value as text, as `&` writes it. */
export function textOf(value: BaseValueObject): string {
  if (value.isNull()) return '';
  if (value.isBoolean()) return value.getValue() ? 'TRUE' : 'FALSE';
  return value.isNumber() ? numberText(Number(value.getValue())) : String(value.getValue());
}

/** A value as a number, texts that read as one too. NaN where it is none. */
export function numberOf(value: BaseValueObject): number {
  if (value.isNull()) return 0;
  if (value.isString()) {
    const read = value.convertToNumberObjectValue();
    return read.isError() ? Number.NaN : Number(read.getValue());
  }
  return Number(value.getValue());
}
