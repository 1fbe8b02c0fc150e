/** A workbook as the engine takes it: cells, filled-down formulas as one, names and tables. */

import { CellValueType, type ICellData, type Injector, type IWorkbookData } from '@univerjs/core';
import { IDefinedNamesService, type IDefinedNamesServiceParam, ISuperTableService } from '@univerjs/engine-formula';
import { SCOPE_WORKBOOK_VALUE_DEFINED_NAME } from '@univerjs/sheets';
import { overArea } from './array-area.ts';
import type { Engine } from './engine.ts';
import { type Extent, extent } from './extent.ts';
import { forEngine, hasShared } from './for-engine.ts';
import { seenFrom, tokens } from './formula-text.ts';
import type { KnownTable } from './repairs/tables.ts';
import { takenNames } from './taken-names.ts';

/** What a cell holds. `null` is a blank cell. */
export type SheetValue = number | string | boolean | null | { readonly error: string };

/** An area of a sheet; rows and columns from 1, both ends included. */
export interface Area {
  readonly firstRow: number;
  readonly firstColumn: number;
  readonly lastRow: number;
  readonly lastColumn: number;
}

export interface SheetFormula {
  /** As people type it, without `=`. */
  readonly text: string;
  /** `single` fills one cell, `dynamic` as many as its answer has, `area` the area it was typed over. */
  readonly fills: 'single' | 'dynamic' | 'area';
  /** What it filled when the file was written. */
  readonly area?: Area;
  /** Cells of a sheet with the same mark hold the same formula, filled from one to the other. */
  readonly group?: string;
}

export interface SheetCell {
  readonly row: number;
  readonly column: number;
  readonly value: SheetValue;
  readonly formula?: SheetFormula;
}

export interface Sheet {
  readonly name: string;
  readonly cells: readonly SheetCell[];
}

export interface Name {
  readonly name: string;
  /** As people type it, without `=`. */
  readonly text: string;
  /** The one sheet that knows it. */
  readonly sheet?: string;
}

export interface Table {
  readonly name: string;
  readonly sheet: string;
  readonly area: Area;
  readonly columns: readonly string[];
  readonly headerRows: number;
  readonly totalsRows: number;
}

export interface Book {
  readonly sheets: readonly Sheet[];
  readonly names: readonly Name[];
  readonly tables: readonly Table[];
  /** True where days are counted from 1904. */
  readonly date1904?: boolean;
}

/** Formulas that are not calculated but keep their value: by sheet number, then by cell. */
export type Kept = ReadonlyMap<number, ReadonlyMap<string, unknown>>;

const forms = new WeakMap<SheetFormula, string>();

/** What all cells of a sheet that hold one formula, filled from one to the other, have in common. */
export function formOf(formula: SheetFormula, row: number, column: number): string {
  if (formula.group !== undefined) return formula.group;
  const known = forms.get(formula);
  if (known !== undefined) return known;
  const form = seenFrom(formula.text, row, column);
  forms.set(formula, form);
  return form;
}

/** How a cell of a sheet is named in maps. */
export const keyOf = (row: number, column: number): string => `${row},${column}`;

/** The engine's name for a sheet. */
export const sheetId = (index: number): string => `sheet${index}`;

function plainCell(value: SheetValue): ICellData | undefined {
  if (value === null) return undefined;
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (typeof value === 'string') return { v: value, t: CellValueType.STRING };
  return { v: value.error, t: CellValueType.STRING };
}

const inside = (area: Area, row: number, column: number): boolean =>
  row >= area.firstRow && row <= area.lastRow && column >= area.firstColumn && column <= area.lastColumn;

export const cellCount = (area: Area): number =>
  (area.lastRow - area.firstRow + 1) * (area.lastColumn - area.firstColumn + 1);

/** Cells whose value another cell's formula put there: it will do so again. */
function spilledCells(sheet: Sheet, kept: ReadonlyMap<string, unknown> | undefined): (cell: SheetCell) => boolean {
  const areas: Area[] = [];
  for (const { formula, row, column } of sheet.cells)
    if (formula?.area !== undefined && formula.fills !== 'single' && cellCount(formula.area) > 1)
      if (!kept?.has(keyOf(row, column))) areas.push(formula.area);
  return ({ row, column, formula }) => formula === undefined && areas.some((area) => inside(area, row, column));
}

function formulaFor({ text, fills, area }: SheetFormula): string {
  const written = forEngine(text);
  if (fills !== 'area' || area === undefined) return `=${written}`;
  return `=${overArea(written, area.lastRow - area.firstRow + 1, area.lastColumn - area.firstColumn + 1)}`;
}

/** A function of an add-in is kept as a dynamic array even where it answers one value. */
const fillsOneCell = ({ fills, area }: SheetFormula): boolean =>
  fills === 'single' || (fills === 'dynamic' && area !== undefined && cellCount(area) === 1);

/** Longest formula that is moved rather than read anew [characters]. Ours: from some hundred references on, reading is faster. */
const LONGEST_MOVED = 1000;

/** One formula filled over several cells costs the engine little more than one cell: it reads it once and moves it. */
class Groups {
  readonly #marks = new Map<string, string>();

  /** The cell of a formula: in full where it is met first, and a mark of the same formula elsewhere. */
  cell(formula: SheetFormula, row: number, column: number): ICellData {
    if (!fillsOneCell(formula)) return { f: formulaFor(formula) };
    // Moving a formula takes as long as the square of its references.
    if (formula.text.length > LONGEST_MOVED) return { f: formulaFor(formula) };
    // A table's own row, and what references share, is looked up from the cell itself, which a moved formula does not do.
    if (formula.text.includes('[') || hasShared(formula.text)) return { f: formulaFor(formula) };
    const form = formOf(formula, row, column);
    const known = this.#marks.get(form);
    if (known !== undefined) return { si: known };
    const mark = `g${this.#marks.size}`;
    this.#marks.set(form, mark);
    return { f: formulaFor(formula), si: mark };
  }
}

function sheetCells(
  sheet: Sheet,
  kept: ReadonlyMap<string, unknown> | undefined,
): Record<number, Record<number, ICellData>> {
  const rows: Record<number, Record<number, ICellData>> = {};
  const groups = new Groups();
  const isSpilled = spilledCells(sheet, kept);
  for (const cell of sheet.cells) {
    const { row, column, formula, value } = cell;
    if (isSpilled(cell)) continue;
    const calculated = formula !== undefined && !kept?.has(keyOf(row, column));
    const data = calculated ? groups.cell(formula, row, column) : plainCell(value);
    if (data === undefined) continue;
    rows[row - 1] ??= {};
    rows[row - 1]![column - 1] = data;
  }
  return rows;
}

/** All sheets are as large as the largest, since a formula may point at any of them. What is not calculated reaches nowhere. */
function bookExtent(book: Book, kept: Kept): Extent {
  let lastRow = 0;
  let lastColumn = 0;
  const texts = new Set(book.names.map(({ text }) => text));
  for (const [index, { cells }] of book.sheets.entries())
    for (const { row, column, formula } of cells) {
      lastRow = Math.max(lastRow, row);
      lastColumn = Math.max(lastColumn, column);
      if (formula !== undefined && !kept.get(index)?.has(keyOf(row, column))) texts.add(formula.text);
    }
  return extent(texts, lastRow, lastColumn);
}

/** A workbook as data of the engine. */
export function bookData(book: Book, id: string, kept: Kept): Partial<IWorkbookData> & { id: string } {
  const size = bookExtent(book, kept);
  const sheets = book.sheets.map((sheet, index) => ({
    id: sheetId(index),
    name: sheet.name,
    ...size,
    cellData: sheetCells(sheet, kept.get(index)),
  }));
  return {
    id,
    sheetOrder: sheets.map((sheet) => sheet.id),
    sheets: Object.fromEntries(sheets.map((sheet) => [sheet.id, sheet])),
  };
}

const isOnePiece = (formula: string): boolean => tokens(formula).length === 1;

/** A name stands for its text, so one that calculates needs brackets around it. */
const nameText = (text: string): string => {
  const written = forEngine(text);
  return isOnePiece(written) ? written : `(${written})`;
};

/** Opens a workbook in the engine, with its names and tables. */
export function openBook(engine: Engine, book: Book, id: string, kept: Kept): void {
  engine.open(bookData(book, id, kept));
  registerNamesAndTables(engine.injector, book, id);
}

/** Makes the names and tables of a workbook known to an engine. Call it after the engine's first workbook was created. */
export function registerNamesAndTables(injector: Injector, book: Book, id: string): void {
  const ids = new Map(book.sheets.map((sheet, index) => [sheet.name, sheetId(index)]));
  const names = injector.get(IDefinedNamesService);
  const taken = takenNames(book);
  // All in one go: registered one by one, each name would take as long as all before it.
  const registered: Record<string, IDefinedNamesServiceParam> = {};
  for (const [index, { name, text, sheet }] of book.names.entries()) {
    if (taken.has(name.toLowerCase())) continue;
    registered[`name${index}`] = {
      id: `name${index}`,
      name,
      formulaOrRefString: nameText(text),
      localSheetId: (sheet === undefined ? undefined : ids.get(sheet)) ?? SCOPE_WORKBOOK_VALUE_DEFINED_NAME,
    };
  }
  names.registerDefinedNames(id, registered);
  const tables = injector.get(ISuperTableService);
  for (const { name, sheet, area, columns, headerRows, totalsRows } of book.tables) {
    const sheetOfTable = ids.get(sheet);
    if (sheetOfTable === undefined) continue;
    const first = area.firstRow - 1 + headerRows;
    const last = area.lastRow - 1 - totalsRows;
    // The engine takes the first row for the headings and all others for data.
    const known: KnownTable = {
      sheetId: sheetOfTable,
      titleMap: new Map(columns.map((column, index) => [column.trim(), index])),
      range: {
        startRow: area.firstRow - 1 - (1 - headerRows),
        endRow: area.lastRow - 1 - totalsRows,
        startColumn: area.firstColumn - 1,
        endColumn: area.lastColumn - 1,
      },
      rows: {
        headers: headerRows > 0 ? area.firstRow - 1 : undefined,
        first,
        last,
        totals: totalsRows > 0 ? area.lastRow - 1 : undefined,
      },
    };
    tables.registerTable(id, name, known);
  }
}
