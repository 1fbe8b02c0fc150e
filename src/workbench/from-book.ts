/** A workbook file as the grid shows it. */

import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IColumnData,
  type IRange,
  type IRowData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from '@univerjs/core';
import { type Book, bookData, type Kept, keyOf, type SheetValue, sheetId, type Table } from '../engine/book.ts';
import { reach } from '../engine/formula-text.ts';
import { areaOf } from '../engine/workbook-book.ts';
import type { Workbook } from '../workbook/index.ts';
import type { BookLook } from '../workbook/look.ts';
import type { SheetLook } from '../workbook/sheet-look.ts';
import { cellStyle } from './cell-style.ts';
import { conditionalFormats, validation } from './rules.ts';
import { tableStyle } from './table-style.ts';

/** Empty rows and columns after the last one in use, for typing and for tables that spill. */
const SPARE_ROWS = 500;
const SPARE_COLUMNS = 12;
const LEAST_COLUMNS = 26;

/** Pixels of a point, and of a character of the usual font at the usual size. */
const POINT = 4 / 3;
const CHARACTER = 7;
/** Width and height where a file sets none: characters and points. */
const COLUMN_WIDTH = 9.14;
const ROW_HEIGHT = 15;
/** Height of a line of text, as a share of the size of its letters. */
const LINE = 1.35;

const pixelsOf = (characters: number): number => Math.round(characters * CHARACTER);

type Cells = Record<number, Record<number, ICellData>>;

/** The cell of the grid's data, made if it is not there. */
function cellAt(cells: Cells, row: number, column: number): ICellData {
  cells[row - 1] ??= {};
  const line = cells[row - 1]!;
  line[column - 1] ??= {};
  return line[column - 1]!;
}

/** The value a formula had when the file was written, to look at until it is calculated. */
function before(value: SheetValue): ICellData {
  if (value === null) return {};
  if (typeof value === 'number') return { v: value, t: CellValueType.NUMBER };
  if (typeof value === 'boolean') return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  return { v: typeof value === 'string' ? value : value.error, t: CellValueType.STRING };
}

class SheetBuilder {
  readonly #sheet: Workbook['sheets'][number];
  readonly #look: SheetLook;
  readonly #tables: readonly Table[];
  readonly #styles: Map<string, IStyleData>;
  readonly #base: Partial<IWorksheetData>;
  readonly #book: Book['sheets'][number];

  constructor(
    sheet: Workbook['sheets'][number],
    book: Book['sheets'][number],
    look: SheetLook,
    tables: readonly Table[],
    styles: Map<string, IStyleData>,
    base: Partial<IWorksheetData>,
  ) {
    this.#sheet = sheet;
    this.#book = book;
    this.#look = look;
    this.#tables = tables;
    this.#styles = styles;
    this.#base = base;
  }

  build(): Partial<IWorksheetData> {
    const layout = this.#sheet.layout();
    const cells = this.#cells();
    const { rows, columns } = this.#extent(layout.merged);
    const { frozen } = layout;
    return {
      ...this.#base,
      cellData: cells,
      rowCount: rows,
      columnCount: columns,
      hidden: this.#sheet.state === 'visible' ? BooleanNumber.FALSE : BooleanNumber.TRUE,
      showGridlines: this.#look.gridLines ? BooleanNumber.TRUE : BooleanNumber.FALSE,
      rightToLeft: this.#look.rightToLeft ? BooleanNumber.TRUE : BooleanNumber.FALSE,
      defaultRowHeight: Math.round((this.#look.rowHeight ?? ROW_HEIGHT) * POINT),
      defaultColumnWidth: pixelsOf(this.#look.columnWidth ?? COLUMN_WIDTH),
      rowData: this.#rows(cells, layout.rows),
      columnData: this.#columns(layout.columns, columns),
      mergeData: layout.merged.flatMap((text): IRange[] => {
        const area = areaOf(text);
        if (area === undefined) return [];
        const { firstRow, firstColumn, lastRow, lastColumn } = area;
        return [
          { startRow: firstRow - 1, startColumn: firstColumn - 1, endRow: lastRow - 1, endColumn: lastColumn - 1 },
        ];
      }),
      freeze: {
        xSplit: frozen.columns,
        ySplit: frozen.rows,
        startColumn: frozen.columns > 0 ? frozen.columns : -1,
        startRow: frozen.rows > 0 ? frozen.rows : -1,
      },
    };
  }

  /** Rows as high as the file says, and where it says nothing as high as their largest letters need. */
  #rows(
    cells: Cells,
    rows: ReturnType<Workbook['sheets'][number]['layout']>['rows'],
  ): Record<number, Partial<IRowData>> {
    const data: Record<number, Partial<IRowData>> = {};
    const usual = (this.#look.rowHeight ?? ROW_HEIGHT) * POINT;
    for (const [row, line] of Object.entries(cells)) {
      const size = Math.max(0, ...Object.values(line).map((cell) => this.#fontSize(cell)));
      const needed = Math.ceil(size * LINE * POINT);
      if (needed > usual) data[Number(row)] = { h: needed, ia: BooleanNumber.FALSE };
    }
    for (const { row, height, hidden } of rows)
      data[row - 1] = {
        ...data[row - 1],
        ...(height === undefined ? {} : { h: Math.round(height * POINT), ia: BooleanNumber.FALSE }),
        hd: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE,
      };
    return data;
  }

  #fontSize({ s }: ICellData): number {
    return (typeof s === 'string' ? this.#styles.get(s)?.fs : undefined) ?? 0;
  }

  #columns(
    widths: ReturnType<Workbook['sheets'][number]['layout']>['columns'],
    count: number,
  ): Record<number, Partial<IColumnData>> {
    const data: Record<number, Partial<IColumnData>> = {};
    for (const { first, last, width, hidden } of widths)
      for (let column = first; column <= Math.min(last, count); column += 1)
        data[column - 1] = { w: pixelsOf(width), hd: hidden ? BooleanNumber.TRUE : BooleanNumber.FALSE };
    for (const { first, last, style } of this.#look.columnStyles)
      for (let column = first; column <= Math.min(last, count); column += 1)
        data[column - 1] = { ...data[column - 1], s: `s${style}` };
    return data;
  }

  /** The grid must reach as far as any formula points, and leave room to type. */
  #extent(merged: readonly string[]): { rows: number; columns: number } {
    let row = 0;
    let column = 0;
    const texts = new Set<string>();
    for (const cell of this.#book.cells) {
      row = Math.max(row, cell.row);
      column = Math.max(column, cell.column);
      if (cell.formula !== undefined) texts.add(cell.formula.text);
    }
    for (const text of merged) {
      const area = areaOf(text);
      row = Math.max(row, area?.lastRow ?? 0);
      column = Math.max(column, area?.lastColumn ?? 0);
    }
    for (const text of texts) {
      const end = reach(text);
      row = Math.max(row, end.row);
      column = Math.max(column, end.column);
    }
    return { rows: row + SPARE_ROWS, columns: Math.max(LEAST_COLUMNS, column + SPARE_COLUMNS) };
  }

  #cells(): Cells {
    const cells = (this.#base.cellData ?? {}) as Cells;
    const values = new Map(this.#book.cells.map((cell) => [keyOf(cell.row, cell.column), cell]));
    for (const { row, column, style } of this.#sheet.cells()) {
      const cell = cellAt(cells, row, column);
      cell.s = `s${style}`;
      const known = values.get(keyOf(row, column));
      if ((cell.f !== undefined || cell.si !== undefined) && known) Object.assign(cell, before(known.value));
    }
    for (const table of this.#tables) this.#lookOfTable(table, cells);
    return cells;
  }

  #lookOfTable(table: Table, cells: Cells): void {
    const { area } = table;
    const ref = [...this.#look.tableStyles.keys()].find((text) => {
      const of = areaOf(text);
      return of?.firstRow === area.firstRow && of.firstColumn === area.firstColumn;
    });
    const look = ref === undefined ? undefined : this.#look.tableStyles.get(ref);
    if (look?.style === undefined) return;
    for (let row = area.firstRow; row <= area.lastRow; row += 1) {
      const added = tableStyle(table, look.stripes, row);
      if (added === undefined) continue;
      for (let column = area.firstColumn; column <= area.lastColumn; column += 1) {
        const cell = cellAt(cells, row, column);
        cell.s = this.#merged(typeof cell.s === 'string' ? cell.s : undefined, added);
      }
    }
  }

  /** Name of the style that lays the file's own look over what the table adds. */
  #merged(own: string | undefined, added: IStyleData): string {
    const name = `${own ?? ''}+${JSON.stringify(added)}`;
    if (!this.#styles.has(name)) {
      const style = own === undefined ? {} : this.#styles.get(own);
      this.#styles.set(name, { ...added, ...style, ...(added.bl ? { bl: added.bl } : {}) });
    }
    return name;
  }
}

export interface GridBook {
  readonly data: IWorkbookData;
  /** What the file holds and keeps, but the grid does not draw: in words. */
  readonly notDrawn: readonly string[];
}

/**
 * The workbook with all its looks as data of the grid.
 *
 * @param book the same workbook for the engine, with the edits of a draft in it
 * @param kept formulas that are not calculated
 */
export function gridBook(
  workbook: Workbook,
  look: BookLook,
  book: Book,
  kept: Kept,
  id: string,
  name: string,
): GridBook {
  const base = bookData(book, id, kept);
  const styles = new Map(look.styles.cells.map((one, index) => [`s${index}`, cellStyle(one)]));
  const notDrawn = new Set<string>();
  const validations: Record<string, unknown[]> = {};
  const formats: Record<string, unknown[]> = {};
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  for (const [index, sheet] of workbook.sheets.entries()) {
    const key = sheetId(index);
    const sheetLook = look.sheets[index]!;
    const tables = book.tables.filter((table) => table.sheet === sheet.name);
    const built = new SheetBuilder(sheet, book.sheets[index]!, sheetLook, tables, styles, base.sheets?.[key] ?? {});
    sheets[key] = built.build();
    const rules = sheetLook.validations.map((rule, n) => validation(rule, `${key}-${n}`));
    validations[key] = rules.filter((rule) => rule !== undefined);
    const conditional = conditionalFormats(sheetLook.conditionalRules, look.styles.overlays, key);
    formats[key] = conditional.drawn;
    if (conditional.notDrawn > 0) notDrawn.add('some conditional formats');
    for (const what of sheetLook.notDrawn) notDrawn.add(what);
  }
  if (workbook.macros) notDrawn.add('macros');
  const general = styles.get('s0') ?? {};
  return {
    data: {
      id,
      name,
      appVersion: '0.25.1',
      locale: LocaleType.EN_US,
      sheetOrder: base.sheetOrder ?? [],
      sheets,
      styles: Object.fromEntries(styles),
      defaultStyle: general,
      resources: [
        { name: 'SHEET_DATA_VALIDATION_PLUGIN', data: JSON.stringify(validations) },
        { name: 'SHEET_CONDITIONAL_FORMATTING_PLUGIN', data: JSON.stringify(formats) },
      ],
    },
    notDrawn: [...notDrawn],
  };
}
