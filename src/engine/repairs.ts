/** What the engine does wrong as shipped (version 0.25.1) and can be put right from outside. */

import { CellValueType, type ICellData, type Injector } from '@univerjs/core';
import {
  ArrayValueObject,
  BaseFunction,
  BaseReferenceObject,
  type BaseValueObject,
  CELL_INVERTED_INDEX_CACHE,
  ErrorType,
  ErrorValueObject,
  IFunctionService,
  NullValueObject,
  NumberValueObject,
} from '@univerjs/engine-formula';

/**
 * SORT as shipped sorts the array it is given, which it shares with every other formula that reads the same cells: with `=SORT(A1:A3,1,-1)`
 * anywhere, `=A1:A3*2` comes out in the wrong order. Here it sorts a copy.
 */
class Sort extends BaseFunction {
  override minParams = 1;
  override maxParams = 4;
  readonly #shipped: BaseFunction;

  constructor(shipped: BaseFunction) {
    super('SORT');
    this.#shipped = shipped;
  }

  override calculate(array: BaseValueObject, ...rest: BaseValueObject[]): BaseValueObject {
    this.#shipped.setRefInfo(this.unitId ?? '', this.subUnitId ?? '', this.row, this.column);
    const own = array.isArray() ? copied(array as ArrayValueObject) : array;
    return this.#shipped.calculate(own, ...rest) as BaseValueObject;
  }
}

const copied = (array: ArrayValueObject): ArrayValueObject =>
  ArrayValueObject.create({
    calculateValueList: [...array.getArrayValue()],
    rowCount: array.getRowCount(),
    columnCount: array.getColumnCount(),
    unitId: array.getUnitId(),
    sheetId: array.getSheetId(),
    row: array.getCurrentRow(),
    column: array.getCurrentColumn(),
  });

/** Serial number of 1 January 1970, day 1 being 1 January 1900 and the 29 February 1900 that never was counted. */
const UNIX_EPOCH = 25_569;
const LAST_SERIAL_BEFORE_THE_GAP = 60;
const MILLISECONDS_OF_A_DAY = 86_400_000;

/** The same day so many months later, or the last day of that month where it has fewer days. */
export function monthsLater(serial: number, months: number): number {
  const day = Math.floor(serial);
  const unixDay = (day < LAST_SERIAL_BEFORE_THE_GAP ? day + 1 : day) - UNIX_EPOCH;
  const date = new Date(unixDay * MILLISECONDS_OF_A_DAY);
  const year = date.getUTCFullYear();
  const month = date.getUTCMonth() + months;
  const lastDay = new Date(Date.UTC(year, month + 1, 0)).getUTCDate();
  const target = Date.UTC(year, month, Math.min(date.getUTCDate(), lastDay));
  const result = target / MILLISECONDS_OF_A_DAY + UNIX_EPOCH;
  return result <= LAST_SERIAL_BEFORE_THE_GAP ? result - 1 : result;
}

/** EDATE as shipped runs over the end of a short month: one month after 31 January is 3 March. */
class Edate extends BaseFunction {
  override minParams = 2;
  override maxParams = 2;

  override calculate(start: BaseValueObject, months: BaseValueObject): BaseValueObject {
    if (!start.isArray() && !months.isArray()) return later(start, months);
    const shape = (start.isArray() ? start : months) as ArrayValueObject;
    const pick = (value: BaseValueObject, row: number, column: number): BaseValueObject => {
      if (!value.isArray()) return value;
      const array = value as ArrayValueObject;
      const cell = array.get(array.getRowCount() === 1 ? 0 : row, array.getColumnCount() === 1 ? 0 : column);
      return cell ?? NullValueObject.create();
    };
    return shape.mapValue((_, row, column) => later(pick(start, row, column), pick(months, row, column)));
  }
}

function later(start: BaseValueObject, months: BaseValueObject): BaseValueObject {
  if (start.isError()) return start;
  if (months.isError()) return months;
  if (start.isString() || start.isBoolean() || months.isString() || months.isBoolean())
    return ErrorValueObject.create(ErrorType.VALUE);
  const serial = Number(start.getValue());
  if (!(serial >= 0)) return ErrorValueObject.create(ErrorType.NUM);
  const result = monthsLater(serial, Math.trunc(Number(months.getValue())));
  return result >= 0 ? NumberValueObject.create(result) : ErrorValueObject.create(ErrorType.NUM);
}

/** An empty text, in a form that the engine does not take for a blank cell. */
const EMPTY_TEXT: ICellData = { v: '', t: CellValueType.STRING, f: '=""' };

let emptyTextsAreRepaired = false;

/**
 * A cell whose formula answers `""` is taken for a blank one as shipped: `=A1*2` is 0 and ISBLANK is TRUE, where a spreadsheet program says
 * #VALUE! and FALSE. Our functions answer `""` on blank rows, so it matters here.
 */
function repairEmptyTexts(): void {
  if (emptyTextsAreRepaired) return;
  emptyTextsAreRepaired = true;
  const shipped = BaseReferenceObject.prototype.getCellData;
  BaseReferenceObject.prototype.getCellData = function getCellData(row, column) {
    const cell = shipped.call(this, row, column);
    return cell?.v === '' && cell.t === CellValueType.STRING ? EMPTY_TEXT : cell;
  };
}

/**
 * Comparisons remember, as shipped, which rows of a column hold which value, and take the answer from there the next time. What they remember
 * does not tell the text "5" from the number 5, nor an empty text from a blank or 0, and keeps tables that a formula made under the formula's
 * own place, so that the second table of a formula is compared by the values of the first. Here each comparison looks at the values.
 */
function repairComparisons(): void {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
  CELL_INVERTED_INDEX_CACHE.set = () => undefined;
  CELL_INVERTED_INDEX_CACHE.setContinueBuildingCache = () => undefined;
}

/** Puts the repaired functions in place of the shipped ones. Call it after the first workbook was created, which restores those. */
export function repair(injector: Injector): void {
  const service = injector.get(IFunctionService);
  const sort = service.getExecutor('SORT');
  if (sort !== undefined && sort !== null && !(sort instanceof Sort)) service.registerExecutors(new Sort(sort));
  service.registerExecutors(new Edate('EDATE'));
  repairEmptyTexts();
  repairComparisons();
}
