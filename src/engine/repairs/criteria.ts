/** COUNTIF and its family: criteria such as `">5"`, `"pl*"` or `"<>"`. */

import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  type FunctionVariantType,
  type IFunctionService,
  NullValueObject,
  NumberValueObject,
  RangeReferenceObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import { LAST_COLUMN, LAST_ROW } from '../formula-text.ts';
import { faulty, isReference, lifted, numberOf } from './amend.ts';
import { order } from './comparisons.ts';
import { hasWildcards, isWhole } from './wildcards.ts';

type Cell = BaseValueObject | null | undefined;

/** Whether a cell meets a criterion, and what the cell may be found by: cells that are equal to something need not all be looked at. */
interface Criterion {
  readonly holds: (cell: Cell) => boolean;
  readonly key?: string;
}

const isBlank = (cell: Cell): boolean => cell === null || cell === undefined || cell.isNull();

const READS_AS_NUMBER = /^\s*[-+]?(?:\d+\.?\d*|\.\d+)(?:e[-+]?\d+)?\s*$/i;

/** Numbers, and texts that read as one, by their number; other texts letter case aside; TRUE and error values as they are. */
function keyOf(cell: Cell): string {
  if (isBlank(cell)) return '';
  const value = cell!.getValue();
  if (cell!.isError()) return `e${value}`;
  if (typeof value === 'boolean') return `b${value}`;
  if (typeof value === 'number') return `n${value}`;
  const text = String(value);
  return READS_AS_NUMBER.test(text) ? `n${Number(text)}` : `t${text.toLowerCase()}`;
}

const equals = (key: string): Criterion => ({ key, holds: (cell) => keyOf(cell) === key });
const not = ({ holds }: Criterion): Criterion => ({ holds: (cell) => !holds(cell) });
const NEVER: Criterion = { holds: () => false };

const SIGN = /^(?:<=|>=|<>|<|>|=)/;

const ERROR = /^#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!)$/i;

/** What a text stands for behind the sign of a criterion. */
function equalTo(text: string): Criterion {
  if (/^(?:true|false)$/i.test(text)) return equals(`b${text.toLowerCase()}`);
  if (ERROR.test(text)) return equals(`e${text.toUpperCase()}`);
  const number = numberOf(StringValueObject.create(text));
  if (!Number.isNaN(number)) return equals(`n${number}`);
  if (!hasWildcards(text)) return equals(`t${text.toLowerCase()}`);
  const pattern = isWhole(text);
  return { holds: (cell) => !isBlank(cell) && cell!.isString() && pattern.test(String(cell!.getValue())) };
}

function ordered(sign: string, text: string): Criterion {
  if (text === '') return NEVER;
  const number = numberOf(StringValueObject.create(text));
  const isNumber = !Number.isNaN(number);
  const limit = isNumber ? NumberValueObject.create(number) : StringValueObject.create(text);
  const meets = (x: number): boolean =>
    sign.startsWith('<') ? x < 0 || (x === 0 && sign === '<=') : x > 0 || (x === 0 && sign === '>=');
  return {
    holds: (cell) => !isBlank(cell) && (isNumber ? cell!.isNumber() : cell!.isString()) && meets(order(cell!, limit)),
  };
}

function criterion(value: BaseValueObject): Criterion {
  if (value.isNull()) return equals('n0');
  if (!value.isString()) return equals(keyOf(value));
  const text = String(value.getValue());
  const [sign = ''] = SIGN.exec(text) ?? [];
  const rest = text.slice(sign.length);
  if (sign === '' && rest === '') return { holds: (cell) => isBlank(cell) || keyOf(cell) === 't' };
  if (sign === '' || sign === '=') return rest === '' ? { holds: isBlank } : equalTo(rest);
  if (sign === '<>') return not(rest === '' ? { holds: isBlank } : equalTo(rest));
  return ordered(sign, rest);
}

/** The cells of a reference, one after another, and where each key is found in them. */
class Cells {
  readonly list: readonly Cell[];
  #uses = 0;
  #places: Map<string, number[]> | undefined;

  constructor(array: ArrayValueObject) {
    this.list = array.getArrayValue().flat() as Cell[];
  }

  /** Places that meet a criterion. A list that is asked again and again gets an index. */
  places({ key, holds }: Criterion): readonly number[] {
    this.#uses += 1;
    if (key !== undefined && this.#uses > 2) return this.#index().get(key) ?? [];
    const found: number[] = [];
    for (const [i, cell] of this.list.entries()) if (holds(cell)) found.push(i);
    return found;
  }

  #index(): Map<string, number[]> {
    if (this.#places !== undefined) return this.#places;
    this.#places = new Map();
    for (const [i, cell] of this.list.entries()) {
      const key = keyOf(cell);
      const known = this.#places.get(key);
      if (known === undefined) this.#places.set(key, [i]);
      else known.push(i);
    }
    return this.#places;
  }
}

/** Arrays of cells are shared by the formulas of one pass and never change. */
const cellsOfArrays = new WeakMap<ArrayValueObject, Cells>();

function cellsOf(reference: BaseReferenceObject): Cells {
  const array = reference.toArrayValueObject();
  const known = cellsOfArrays.get(array);
  if (known !== undefined) return known;
  const cells = new Cells(array);
  cellsOfArrays.set(array, cells);
  return cells;
}

/** Blank cells of a whole column or row that lie beyond the engine's sheet. */
function cellsBeyond(reference: BaseReferenceObject): number {
  const [rows, columns] = sizeOf(reference);
  if (reference.isColumn()) return (LAST_ROW - rows) * columns;
  return reference.isRow() ? (LAST_COLUMN - columns) * rows : 0;
}

interface Pair {
  readonly range: BaseReferenceObject;
  readonly criterion: Criterion;
}

/** Places of the cells that meet all criteria. */
function placesOf(pairs: readonly Pair[]): readonly number[] {
  let [{ range, criterion: first }, ...rest] = pairs as [Pair, ...Pair[]];
  // The criterion that can be looked up comes first, the others look at what is left.
  const quick = rest.findIndex((pair) => pair.criterion.key !== undefined);
  if (first.key === undefined && quick >= 0) {
    const pair = rest[quick]!;
    rest = [...rest.slice(0, quick), { range, criterion: first }, ...rest.slice(quick + 1)];
    ({ range, criterion: first } = pair);
  }
  let places = cellsOf(range).places(first);
  for (const pair of rest) {
    const { list } = cellsOf(pair.range);
    places = places.filter((i) => pair.criterion.holds(list[i]));
  }
  return places;
}

/** Rows and columns of a reference. The engine counts no rows of a whole column, but knows where it ends here. */
function sizeOf(reference: BaseReferenceObject): readonly [rows: number, columns: number] {
  const { startRow, endRow, startColumn, endColumn } = reference.getRangePosition();
  return [endRow - startRow + 1, endColumn - startColumn + 1];
}

function sameShape(a: BaseReferenceObject, b: BaseReferenceObject): boolean {
  const [rows, columns] = sizeOf(a);
  const [otherRows, otherColumns] = sizeOf(b);
  return rows === otherRows && columns === otherColumns;
}

type Summary = (numbers: readonly number[]) => BaseValueObject;

const number = (x: number): BaseValueObject => NumberValueObject.create(x);
const total = (numbers: readonly number[]): number => numbers.reduce((sum, x) => sum + x, 0);
const SUM: Summary = (numbers) => number(total(numbers));
const MEAN: Summary = (numbers) =>
  numbers.length === 0 ? faulty(ErrorType.DIV_BY_ZERO) : number(total(numbers) / numbers.length);
const MOST: Summary = (numbers) => number(numbers.reduce((a, b) => Math.max(a, b), numbers[0] ?? 0));
const LEAST: Summary = (numbers) => number(numbers.reduce((a, b) => Math.min(a, b), numbers[0] ?? 0));

/** The numbers among some cells, or the first error. */
function summarised(target: BaseReferenceObject, places: readonly number[], summary: Summary): BaseValueObject {
  const { list } = cellsOf(target);
  const numbers: number[] = [];
  for (const i of places) {
    const cell = list[i];
    if (isBlank(cell)) continue;
    if (cell!.isError()) return cell!;
    if (cell!.isNumber()) numbers.push(Number(cell!.getValue()));
  }
  return summary(numbers);
}

/** A range of the size of another, from the first cell of its own on. */
function ofSize(target: BaseReferenceObject, range: BaseReferenceObject): BaseReferenceObject {
  if (sameShape(target, range)) return target;
  const { startRow, startColumn } = target.getRangePosition();
  const [rows, columns] = sizeOf(range);
  const resized = new RangeReferenceObject(
    {
      startRow,
      startColumn,
      endRow: startRow + rows - 1,
      endColumn: startColumn + columns - 1,
    },
    target.getSheetId(),
    target.getUnitId(),
  );
  resized.setUnitData(target.getUnitData());
  resized.setUnitStylesData(target.getUnitStylesData());
  resized.setRuntimeData(target.getRuntimeData());
  resized.setArrayFormulaCellData(target.getArrayFormulaCellData());
  resized.setArrayFormulaRange(target.getArrayFormulaRange());
  resized.setRuntimeArrayFormulaCellData(target.getRuntimeArrayFormulaCellData());
  resized.setRuntimeArrayFormulaRange(target.getRuntimeArrayFormulaRange());
  resized.setRuntimeFeatureCellData(target.getRuntimeFeatureCellData());
  return resized;
}

/** A criterion may be a table of criteria: then so is the answer. */
const criterionValue = (value: FunctionVariantType): BaseValueObject =>
  isReference(value) ? value.toArrayValueObject() : (value as BaseValueObject);

abstract class ByCriteria extends BaseFunction {
  override needsReferenceObject = true;

  /** The answer for each table of criteria, or #VALUE! where the ranges are none or of several shapes. */
  protected answer(
    values: readonly FunctionVariantType[],
    one: (pairs: readonly Pair[]) => BaseValueObject,
    shape?: BaseReferenceObject,
  ): BaseValueObject {
    const ranges = values.filter((_, i) => i % 2 === 0);
    if (values.length % 2 !== 0 || !ranges.every(isReference)) return faulty(ErrorType.VALUE);
    const first = shape ?? ranges[0]!;
    if (!ranges.every((range) => sameShape(range, first))) return faulty(ErrorType.VALUE);
    const criteria = values.filter((_, i) => i % 2 === 1).map(criterionValue);
    return lifted(criteria, (...singles) =>
      one(singles.map((single, i) => ({ range: ranges[i]!, criterion: criterion(single) }))),
    );
  }
}

/** COUNTIF and COUNTIFS. */
class CountBy extends ByCriteria {
  override minParams = 2;
  override maxParams: number;

  constructor(name: string, most: number) {
    super(name);
    this.maxParams = most;
  }

  override calculate(...values: FunctionVariantType[]): BaseValueObject {
    return this.answer(values, (pairs) => {
      const beyond = cellsBeyond(pairs[0]!.range);
      const blanks = beyond > 0 && pairs.every((pair) => pair.criterion.holds(NullValueObject.create())) ? beyond : 0;
      return number(placesOf(pairs).length + blanks);
    });
  }
}

/** SUMIF and AVERAGEIF: the range to add up comes last, may be left out, and is of the size of the first. */
class SummaryBy extends ByCriteria {
  override minParams = 2;
  override maxParams = 3;
  readonly #summary: Summary;

  constructor(name: string, summary: Summary) {
    super(name);
    this.#summary = summary;
  }

  override calculate(...[range, wanted, target = range]: FunctionVariantType[]): BaseValueObject {
    if (range === undefined || wanted === undefined || target === undefined || !isReference(range))
      return faulty(ErrorType.VALUE);
    const cells = isReference(target) ? ofSize(target, range) : undefined;
    if (cells === undefined) return faulty(ErrorType.VALUE);
    return this.answer([range, wanted], (pairs) => summarised(cells, placesOf(pairs), this.#summary));
  }
}

/** SUMIFS, AVERAGEIFS, MAXIFS and MINIFS: the range to add up comes first. */
class SummaryByAll extends ByCriteria {
  override minParams = 3;
  override maxParams = 255;
  readonly #summary: Summary;

  constructor(name: string, summary: Summary) {
    super(name);
    this.#summary = summary;
  }

  override calculate(...[target, ...values]: FunctionVariantType[]): BaseValueObject {
    if (target === undefined || !isReference(target)) return faulty(ErrorType.VALUE);
    return this.answer(values, (pairs) => summarised(target, placesOf(pairs), this.#summary), target);
  }
}

/**
 * As shipped `"<>"` passes over a cell with an empty text, `"="` counts it and `"*"` does not, `~~` is not understood, MAXIFS of nothing answers an
 * empty text, and every call goes through all cells, also where thousands of formulas look through the same column.
 */
export function repairCriteria(service: IFunctionService): void {
  service.registerExecutors(
    new CountBy('COUNTIF', 2),
    new CountBy('COUNTIFS', 254),
    new SummaryBy('SUMIF', SUM),
    new SummaryBy('AVERAGEIF', MEAN),
    new SummaryByAll('SUMIFS', SUM),
    new SummaryByAll('AVERAGEIFS', MEAN),
    new SummaryByAll('MAXIFS', MOST),
    new SummaryByAll('MINIFS', LEAST),
  );
}
