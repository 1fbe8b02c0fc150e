/** What a workbook file holds, as the rest of the product sees it. */

/** A cell's value. `null` is a blank cell. An error is the text that the file shows, such as `#N/A`. */
export type BookValue = number | string | boolean | null | { readonly error: string };

/** A formula as it stands in the file. */
export interface BookFormula {
  /**
   * The stored text without `=`, names still in their stored form (`_xldudf_…`, `_xlfn.…`): see `toEngine`.
   * A member of a shared group carries its own text, shifted from the first cell of the group.
   */
  readonly text: string;
  /** `dataTable` is a what-if table: its value can be read, its formula cannot be calculated. */
  readonly kind: 'normal' | 'array' | 'shared' | 'dataTable';
  /** The area an array formula fills, or the area of a shared group on its first cell. */
  readonly ref?: string;
  /** Number of the shared group within its sheet. */
  readonly si?: string;
  /** True for a dynamic array: its area grows and shrinks with the answer. */
  readonly dynamic: boolean;
}

/** One cell that is in the file. Blank cells are there when they carry a style. */
export interface BookCell {
  /** 1 is the first row. */
  readonly row: number;
  /** 1 is column A. */
  readonly column: number;
  readonly address: string;
  readonly value: BookValue;
  readonly formula?: BookFormula;
  /** Index of the cell's style, for `Workbook.numberFormat`. 0 is the general style. */
  readonly style: number;
}

export interface BookSheet {
  readonly name: string;
  /** Name of the part inside the file. */
  readonly path: string;
  readonly state: 'visible' | 'hidden' | 'veryHidden';
  /** Every cell of the sheet, row by row. Reads the sheet anew at each call and keeps nothing. */
  cells(): Iterable<BookCell>;
  /** One cell. Reads the sheet up to it: for many cells use `cells`. */
  cell(address: string): BookCell | undefined;
  /** Widths, frozen panes and merged cells, for drawing the sheet. */
  layout(): BookLayout;
}

export interface BookLayout {
  /** Columns `first` to `last` (1-based, inclusive). `width` is in characters of the default font. */
  readonly columns: readonly { first: number; last: number; width: number; hidden: boolean }[];
  /** Rows whose height (points) or visibility is set. */
  readonly rows: readonly { row: number; height?: number; hidden: boolean }[];
  /** Number of rows and columns that stay in view. */
  readonly frozen: { readonly rows: number; readonly columns: number };
  /** Areas of merged cells. */
  readonly merged: readonly string[];
}

/** A defined name. */
export interface BookName {
  readonly name: string;
  /** What it stands for, stored form, without `=`. */
  readonly text: string;
  /** The one sheet that knows it; absent when the whole workbook does. */
  readonly sheet?: string;
  readonly hidden: boolean;
}

/** A table with its headings. */
export interface BookTable {
  readonly name: string;
  readonly sheet: string;
  /** The whole table, headings and totals included. */
  readonly ref: string;
  readonly columns: readonly string[];
  /** 1, or 0 where the headings are switched off. */
  readonly headerRows: number;
  readonly totalsRows: number;
}

/** What one cell shall become. */
export interface CellUpdate {
  readonly value: BookValue;
  /** Left out: the formula, if any, stays as it is. `null`: the formula goes. Text: the new formula, stored form, no `=`. */
  readonly formula?: string | null;
  /** The area that the formula fills. With new formula text it makes a dynamic array; alone it moves the area of an array formula. */
  readonly arrayRef?: string;
  /** True for a value that another cell's formula spills here: its text is stored as a result, not as typed. */
  readonly spill?: boolean;
}
