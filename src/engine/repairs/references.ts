/** References: to other sheets, to spills, to the cell in the formula's own row, to whole columns. */

import { CellValueType, type ICellData, type IRange } from '@univerjs/core';
import {
  type ArrayValueObject,
  BaseFunction,
  BaseReferenceObject,
  type BaseValueObject,
  ErrorType,
  type FunctionVariantType,
  type IFunctionService,
  NumberValueObject,
  RangeReferenceObject,
} from '@univerjs/engine-formula';
import { LAST_COLUMN, LAST_ROW } from '../formula-text.ts';
import { faulty, isReference } from './amend.ts';

/** An empty text, in a form that the engine does not take for a blank cell. */
const EMPTY_TEXT: ICellData = { v: '', t: CellValueType.STRING, f: '=""' };

let areRepaired = false;

/** Sheets by their name in small letters, for each list of sheets that the engine holds. */
const sheetsOf = new WeakMap<object, Map<string, string>>();

function sheetIdOf(names: Readonly<Record<string, string>> | null | undefined, name: string): string | undefined {
  if (names === null || names === undefined) return undefined;
  const known = names[name];
  if (known !== undefined) return known;
  let lower = sheetsOf.get(names);
  if (lower === undefined || lower.size !== Object.keys(names).length) {
    lower = new Map(Object.entries(names).map(([sheet, id]) => [sheet.toLowerCase(), id]));
    sheetsOf.set(names, lower);
  }
  return lower.get(name.toLowerCase());
}

/**
 * As shipped a cell whose formula answers `""` is taken for a blank one (`=A1*2` is 0 and ISBLANK is TRUE, where a spreadsheet program says #VALUE! and
 * FALSE), a sheet is known by the very letters of its name, and INDEX and OFFSET of a table on another sheet point at the formula's own sheet. One
 * repair is for all engines of a process.
 */
function repairReferenceObjects(): void {
  if (areRepaired) return;
  areRepaired = true;
  const { prototype } = BaseReferenceObject;
  const { getCellData } = prototype;
  prototype.getCellData = function cellData(row, column) {
    const cell = getCellData.call(this, row, column);
    return cell?.v === '' && cell.t === CellValueType.STRING ? EMPTY_TEXT : cell;
  };
  prototype.setForcedSheetId = function forcedSheetId(sheets) {
    const names = sheets[this.getUnitId()] as Readonly<Record<string, string>> | undefined;
    const name = this.getForcedSheetName();
    if (name === '' && Object.values(names ?? {}).includes(this.getForcedSheetId() ?? '')) return;
    // Declared as a text, but nothing stands for the formula's own sheet.
    this.setForcedSheetIdDirect(sheetIdOf(names, name ?? '') as string);
  };
}

/** The same sheet's cells in another range. */
function rangeLike(reference: BaseReferenceObject, range: IRange): BaseReferenceObject {
  const other = new RangeReferenceObject(range, reference.getSheetId(), reference.getUnitId());
  other.setDefaultUnitId(reference.getDefaultUnitId());
  other.setDefaultSheetId(reference.getDefaultSheetId());
  other.setUnitData(reference.getUnitData());
  other.setUnitStylesData(reference.getUnitStylesData());
  other.setRuntimeData(reference.getRuntimeData());
  other.setArrayFormulaCellData(reference.getArrayFormulaCellData());
  other.setArrayFormulaRange(reference.getArrayFormulaRange());
  other.setRuntimeArrayFormulaCellData(reference.getRuntimeArrayFormulaCellData());
  other.setRuntimeArrayFormulaRange(reference.getRuntimeArrayFormulaRange());
  other.setRuntimeFeatureCellData(reference.getRuntimeFeatureCellData());
  return other;
}

/** `A1#`, stored as ANCHORARRAY(A1): all cells that the formula of a cell fills. */
class AnchorArray extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;

  override calculate(anchor: FunctionVariantType): BaseValueObject {
    if (!isReference(anchor)) return anchor.isError() ? (anchor as BaseValueObject) : faulty(ErrorType.REF);
    const { startRow, startColumn, endRow, endColumn } = anchor.getRangePosition();
    if (startRow !== endRow || startColumn !== endColumn) return faulty(ErrorType.REF);
    const unit = anchor.getUnitId();
    const sheet = anchor.getSheetId();
    const area =
      anchor.getRuntimeArrayFormulaRange()?.[unit]?.[sheet]?.[startRow]?.[startColumn] ??
      anchor.getArrayFormulaRange()?.[unit]?.[sheet]?.[startRow]?.[startColumn];
    // Declared as a value, but the engine takes a reference as well.
    if (area !== undefined && area !== null) return rangeLike(anchor, area) as unknown as BaseValueObject;
    return faulty(ErrorType.REF);
  }
}

/** `@A1:A9`, stored as SINGLE(A1:A9): the one cell in the formula's own row or column; of a table the first value. */
class Single extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;

  override calculate(value: FunctionVariantType): BaseValueObject {
    if (!isReference(value)) {
      const single = value as BaseValueObject;
      return single.isArray() ? ((single as ArrayValueObject).get(0, 0) ?? faulty(ErrorType.VALUE)) : single;
    }
    const { startRow, startColumn, endRow, endColumn } = value.getRangePosition();
    const inside = (at: number, first: number, last: number): number | undefined => {
      if (first === last) return first;
      return at >= first && at <= last ? at : undefined;
    };
    const row = inside(this.row, startRow, endRow);
    const column = inside(this.column, startColumn, endColumn);
    if (row === undefined || column === undefined) return faulty(ErrorType.VALUE);
    const cell = { startRow: row, endRow: row, startColumn: column, endColumn: column };
    return rangeLike(value, cell) as unknown as BaseValueObject;
  }
}

/** ROWS and COLUMNS: a whole column has all rows of a sheet, however many of them the engine keeps. */
class Size extends BaseFunction {
  override minParams = 1;
  override maxParams = 1;
  override needsReferenceObject = true;
  readonly #rows: boolean;

  constructor(name: string, rows: boolean) {
    super(name);
    this.#rows = rows;
  }

  override calculate(value: FunctionVariantType): BaseValueObject {
    if (value.isError()) return value as BaseValueObject;
    const of = value as BaseReferenceObject | ArrayValueObject;
    if (isReference(value) && this.#rows && value.isColumn()) return NumberValueObject.create(LAST_ROW);
    if (isReference(value) && !this.#rows && value.isRow()) return NumberValueObject.create(LAST_COLUMN);
    if (!isReference(value) && !(value as BaseValueObject).isArray()) return NumberValueObject.create(1);
    return NumberValueObject.create(this.#rows ? of.getRowCount() : of.getColumnCount());
  }
}

export function repairReferences(service: IFunctionService): void {
  repairReferenceObjects();
  service.registerExecutors(
    new AnchorArray('ANCHORARRAY'),
    new Single('SINGLE'),
    new Size('ROWS', true),
    new Size('COLUMNS', false),
  );
}
