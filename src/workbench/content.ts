/** What stands in the cells of the grid now. */

import {
  CellValueType,
  type Workbook as GridWorkbook,
  type ICellData,
  type Injector,
  type IRange,
  IUniverInstanceService,
  type Nullable,
  UniverInstanceType,
} from '@univerjs/core';
import { FormulaDataModel } from '@univerjs/engine-formula';
import { type SheetValue, sheetId } from '../engine/book.ts';
import { reasonOf } from '../engine/values.ts';

/** Error values as cells show them. */
export const ERROR_VALUE =
  /^#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!|BUSY!|GETTING_DATA|ERROR!|CYCLE!|CONNECT!|BLOCKED!)$/;

export interface Content {
  readonly value: SheetValue;
  /** With `=`; empty without one. */
  readonly formula: string;
  /** Why an error value stands there, where that is known. */
  readonly reason?: string;
  /** First cell of the formula that spilled here, and how far from it; left out where the cell has its own content. */
  readonly spilledFrom?: { readonly row: number; readonly column: number };
}

/** Rich text typed over several lines as plain text. */
const plainText = (cell: ICellData): string | undefined =>
  cell.p?.body?.dataStream.replace(/\r\n$/, '').replaceAll('\r', '\n');

/** A cell's value as files know it. `calculated`: an error text is an error only where a formula gave it. */
export function cellValue(cell: Nullable<ICellData>, calculated: boolean): SheetValue {
  if (!cell) return null;
  const rich = plainText(cell);
  if (rich !== undefined) return rich === '' ? null : rich;
  const { v, t } = cell;
  if (v === null || v === undefined || (v === '' && !calculated)) return calculated ? 0 : null;
  if (t === CellValueType.BOOLEAN || typeof v === 'boolean') return v === 1 || v === true || v === 'TRUE';
  if (t === CellValueType.STRING || t === CellValueType.FORCE_STRING) {
    const text = String(v);
    return calculated && ERROR_VALUE.test(text) ? { error: text } : text;
  }
  if (typeof v === 'string' && calculated && ERROR_VALUE.test(v)) return { error: v };
  if (t === CellValueType.NUMBER && typeof v === 'string' && v.trim() !== '' && !Number.isNaN(Number(v)))
    return Number(v);
  return v;
}

/** The cells of the workbook in the grid; rows and columns count from 1, sheets from 0. */
export class Contents {
  readonly #unit: string;
  readonly #book: GridWorkbook;
  readonly #formulas: FormulaDataModel;

  constructor(injector: Injector, unit: string) {
    const book = injector.get(IUniverInstanceService).getUnit<GridWorkbook>(unit, UniverInstanceType.UNIVER_SHEET);
    if (!book) throw new Error(`no workbook ${unit} is open`);
    this.#unit = unit;
    this.#book = book;
    this.#formulas = injector.get(FormulaDataModel);
  }

  get sheetCount(): number {
    return this.#book.getSheets().length;
  }

  sheetName(sheet: number): string {
    return this.#book.getSheetBySheetId(sheetId(sheet))?.getName() ?? '';
  }

  /** Number of the sheet of that name, letter case ignored; -1 if there is none. */
  sheetNumber(name: string): number {
    const wanted = name.toLowerCase();
    for (let i = 0; i < this.sheetCount; i += 1) if (this.sheetName(i).toLowerCase() === wanted) return i;
    return -1;
  }

  /** Last row and column that hold anything, spilled cells included; 0 where there is nothing. */
  extent(sheet: number): { rows: number; columns: number } {
    let rows = 0;
    let columns = 0;
    const reach = (row: number, column: number): void => {
      rows = Math.max(rows, row + 1);
      columns = Math.max(columns, column + 1);
    };
    this.#matrix(sheet)?.forValue((row, column, cell) => {
      if (cell && (cell.f || cell.si || cell.p || (cell.v !== undefined && cell.v !== null && cell.v !== '')))
        reach(row, column);
      return undefined;
    });
    for (const { range } of this.spills(sheet)) reach(range.endRow, range.endColumn);
    return { rows, columns };
  }

  #matrix(sheet: number) {
    return this.#book.getSheetBySheetId(sheetId(sheet))?.getCellMatrix();
  }

  /** Areas of formulas that fill several cells, ends counted from 0. */
  spills(sheet: number): { row: number; column: number; range: IRange }[] {
    const areas = this.#formulas.getArrayFormulaRange()[this.#unit]?.[sheetId(sheet)] ?? {};
    return Object.entries(areas).flatMap(([row, line]) =>
      Object.entries((line ?? {}) as Record<string, IRange>).flatMap(([column, range]) => {
        const own = this.#matrix(sheet)?.getValue(Number(row), Number(column));
        const isOne = range.startRow === range.endRow && range.startColumn === range.endColumn;
        return isOne || own?.v === '#SPILL!' ? [] : [{ row: Number(row), column: Number(column), range }];
      }),
    );
  }

  formula(sheet: number, row: number, column: number): string {
    return this.#formulas.getFormulaStringByCell(row - 1, column - 1, sheetId(sheet), this.#unit) ?? '';
  }

  /** What a formula put into a cell that is not its own. */
  spilled(sheet: number, row: number, column: number): Nullable<ICellData> {
    const cells = this.#formulas.getArrayFormulaCellData()[this.#unit]?.[sheetId(sheet)] as
      | Record<number, Record<number, Nullable<ICellData>>>
      | undefined;
    return cells?.[row - 1]?.[column - 1];
  }

  raw(sheet: number, row: number, column: number): Nullable<ICellData> {
    return this.#matrix(sheet)?.getValue(row - 1, column - 1);
  }

  at(sheet: number, row: number, column: number): Content {
    const formula = this.formula(sheet, row, column);
    const own = this.raw(sheet, row, column);
    if (formula !== '') return content(own, formula);
    const isBlank = !own || (!own.p && (own.v === undefined || own.v === null || own.v === ''));
    if (!isBlank) return content(own, '');
    const from = this.spills(sheet).find(
      ({ range }) =>
        row - 1 >= range.startRow &&
        row - 1 <= range.endRow &&
        column - 1 >= range.startColumn &&
        column - 1 <= range.endColumn,
    );
    if (from === undefined) return { value: null, formula: '' };
    const cell = this.spilled(sheet, row, column);
    const reason = reasonOf(cell);
    return {
      value: cellValue(cell, true),
      formula: this.formula(sheet, from.row + 1, from.column + 1),
      spilledFrom: { row: from.row + 1, column: from.column + 1 },
      ...(reason === undefined ? {} : { reason }),
    };
  }
}

const SPILL_REASON = 'the cells that the answer would fill are not empty';

function content(cell: Nullable<ICellData>, formula: string): Content {
  const reason = reasonOf(cell) ?? (formula !== '' && cell?.v === '#SPILL!' ? SPILL_REASON : undefined);
  return { value: cellValue(cell, formula !== ''), formula, ...(reason === undefined ? {} : { reason }) };
}
