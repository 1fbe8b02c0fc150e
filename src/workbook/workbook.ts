import type { BookName, BookSheet, BookTable, CellUpdate } from './types.ts';

/** One open workbook. */
export class Workbook {
  readonly sheets: readonly BookSheet[] = [];
  readonly names: readonly BookName[] = [];
  readonly tables: readonly BookTable[] = [];
  /** True where days are counted from 1904. */
  readonly date1904: boolean = false;
  /** True where the file carries macros. They are kept and never run. */
  readonly macros: boolean = false;

  /** Opens a workbook. Throws a `WorkbookError` with one plain line for anything that is none. `fileName` is for that line only. */
  static read(bytes: Uint8Array, fileName = 'This file'): Workbook {
    throw new Error(`not written yet: ${bytes.length} ${fileName}`);
  }

  /** The sheet of that name, letter case ignored. */
  sheet(name: string): BookSheet | undefined {
    return this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }

  /** The number format of a style, such as `0.00` or `General`. */
  numberFormat(style: number): string {
    throw new Error(`not written yet: ${style}`);
  }

  /**
   * Changes cells of one sheet and answers the addresses that really changed. An update that says what the file says already changes nothing.
   *
   * Cells that an array formula no longer fills are cleared by themselves; cells it newly fills need an update each, `spill: true`.
   */
  patch(sheetName: string, updates: ReadonlyMap<string, CellUpdate>): string[] {
    throw new Error(`not written yet: ${sheetName} ${updates.size}`);
  }

  /** The file as it stands now. Without any change these are the very bytes that were read. */
  bytes(): Uint8Array {
    throw new Error('not written yet');
  }
}
