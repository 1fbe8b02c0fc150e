import { parseAddress, parseArea } from './address.ts';
import type { ValueContext } from './cell-value.ts';
import { type DynamicArrayMark, dynamicArrayMark } from './metadata.ts';
import { isType, Parts } from './parts.ts';
import { SheetPatcher, type UpdatesByRow } from './patch-sheet.ts';
import { readCell, readCells, readLayout, sheetRows } from './read-sheet.ts';
import {
  readNumberFormats,
  readSharedStrings,
  readTables,
  readWorkbookPart,
  type SheetEntry,
  type WorkbookPart,
} from './read-workbook.ts';
import { SharedFormulas } from './shared-formulas.ts';
import type { BookName, BookSheet, BookTable, CellUpdate } from './types.ts';

/** One open workbook. */
export class Workbook {
  /** Worksheets in the order of their tabs. Sheets that are charts alone are left out. */
  readonly sheets: readonly BookSheet[];
  readonly names: readonly BookName[];
  readonly tables: readonly BookTable[];
  /** True where days are counted from 1904. */
  readonly date1904: boolean;
  /** True where the file carries macros. They are kept and never run. */
  readonly macros: boolean;
  /** True where the file carries a digital signature. It stays, but holds only as long as nothing changes. */
  readonly signed: boolean;

  readonly #parts: Parts;
  readonly #workbook: WorkbookPart;
  readonly #values: ValueContext;
  #strings: string[] | undefined;
  #formats: string[] | undefined;

  /** Opens a workbook. Throws a `WorkbookError` with one plain line for anything that is none. `fileName` is for that line only. */
  static read(bytes: Uint8Array, fileName = 'This file'): Workbook {
    return new Workbook(new Parts(bytes, fileName));
  }

  private constructor(parts: Parts) {
    this.#parts = parts;
    this.#workbook = readWorkbookPart(parts);
    this.names = this.#workbook.names;
    this.date1904 = this.#workbook.date1904;
    this.tables = readTables(parts, this.#workbook.sheets);
    this.macros = this.#workbook.relationships.some((relationship) => isType(relationship, 'vbaProject'));
    this.signed = parts
      .relationships('')
      .some((relationship) => relationship.type.endsWith('/digital-signature/origin'));
    this.#values = { strings: () => this.#sharedStrings(), date1904: this.date1904 };
    this.sheets = this.#workbook.sheets.map((sheet) => this.#bookSheet(sheet));
  }

  #sharedStrings(): string[] {
    this.#strings ??= readSharedStrings(this.#parts, this.#workbook);
    return this.#strings;
  }

  #bookSheet({ name, path, state }: SheetEntry): BookSheet {
    const parts = this.#parts;
    const values = this.#values;
    return {
      name,
      path,
      state,
      cells: () => ({ [Symbol.iterator]: () => readCells(parts, path, values) }),
      cell: (address) => readCell(parts, path, address, values),
      layout: () => readLayout(parts, path),
    };
  }

  /** The sheet of that name, letter case ignored. */
  sheet(name: string): BookSheet | undefined {
    return this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }

  /** The number format of a style, such as `0.00` or `General`. */
  numberFormat(style: number): string {
    this.#formats ??= readNumberFormats(this.#parts, this.#workbook);
    return this.#formats[style] ?? 'General';
  }

  /**
   * Changes cells of one sheet and answers the addresses that really changed. An update that says what the file says already changes nothing.
   *
   * Cells that an array formula no longer fills are cleared by themselves; cells it newly fills need an update each, `spill: true`.
   * When the first cell of a shared formula gets another formula, the next member becomes the first and is among the answer.
   * Headings of tables are refused: their texts stand in the table too. Nothing is changed when an error is thrown.
   */
  patch(sheetName: string, updates: ReadonlyMap<string, CellUpdate>): string[] {
    const sheet = this.sheet(sheetName);
    if (!sheet) throw this.#parts.refuse(`has no sheet called ${sheetName}`);
    const { path } = sheet;
    const xml = this.#parts.text(path);
    let mark: DynamicArrayMark | undefined;
    const patcher = new SheetPatcher(
      xml,
      sheetRows(this.#parts, path),
      new SharedFormulas(() => sheetRows(this.#parts, path)),
      {
        ...this.#values,
        dynamicMark: () => {
          mark ??= dynamicArrayMark(this.#parts, this.#workbook);
          return mark.number;
        },
        guard: (row, column) => this.#refuseHeading(sheet.name, row, column),
        outOfOrder: () =>
          this.#parts.refuse(`has rows or cells that are not in order: ${path}. Save it anew from a spreadsheet`),
      },
    );
    const patch = patcher.patch(this.#byRow(updates));
    if (patch.changed.length === 0) return [];
    mark?.write();
    this.#parts.write(path, patch.xml);
    if (patch.formulasChanged) this.#dropCalculationChain();
    return [...patch.changed];
  }

  #byRow(updates: ReadonlyMap<string, CellUpdate>): UpdatesByRow {
    const byRow: UpdatesByRow = new Map();
    for (const [address, update] of updates) {
      const place = parseAddress(address.replaceAll('$', '').toUpperCase());
      const isArea = update.arrayRef === undefined || parseArea(update.arrayRef) !== undefined;
      if (!place || !isArea) throw this.#parts.refuse(`has no cell ${place ? update.arrayRef : address}`);
      const row = byRow.get(place.row) ?? new Map<number, CellUpdate>();
      byRow.set(place.row, row.set(place.column, update));
    }
    return byRow;
  }

  #refuseHeading(sheet: string, row: number, column: number): void {
    for (const table of this.tables) {
      const area = parseArea(table.ref);
      if (table.sheet !== sheet || table.headerRows === 0 || !area) continue;
      if (row === area.top && column >= area.left && column <= area.right) {
        const heading = table.columns[column - area.left] ?? '';
        throw this.#parts.refuse(
          `keeps “${heading}” as a heading of its table ${table.name}. Change headings in a spreadsheet`,
        );
      }
    }
  }

  /** The order of calculation, which a spreadsheet makes anew when it is missing. */
  #dropCalculationChain(): void {
    const chain = this.#parts
      .relationships(this.#workbook.path)
      .find((relationship) => isType(relationship, 'calcChain') && relationship.target !== undefined);
    if (chain) this.#parts.removePart(this.#workbook.path, chain);
  }

  /** The file as it stands now. Without any change these are the very bytes that were read. */
  bytes(): Uint8Array {
    return this.#parts.zip.bytes();
  }
}
