/** One open workbook: the file, the grid's contents, and what people changed since. */

import { CellValueType, type ICellData } from '@univerjs/core';
import { type Book, keyOf, type SheetCell, sheetId } from '../engine/book.ts';
import { bookReasons } from '../engine/book-reasons.ts';
import type { Knows } from '../engine/not-checked.ts';
import { addressOf, areaOf, workbookBook } from '../engine/workbook-book.ts';
import { Contents } from './content.ts';
import type { DraftCell } from './draft.ts';
import { type GridBook, gridBook } from './from-book.ts';
import type { Grid } from './grid.ts';
import type { OpenFile } from './open-file.ts';
import type { FileHandle } from './save.ts';
import { typedText } from './to-book.ts';

/** Formulas that are not calculated here, by sheet number, then by cell, with the reason. */
type KeptReasons = ReadonlyMap<number, ReadonlyMap<string, string>>;

export interface Session {
  readonly file: OpenFile;
  readonly id: string;
  readonly book: Book;
  readonly kept: KeptReasons;
  readonly contents: Contents;
  readonly notDrawn: readonly string[];
  /** Addresses of changed cells by sheet number. */
  readonly touched: Map<number, Set<string>>;
  handle?: FileHandle;
  changed?: number;
}

/** The workbook for the engine with the cells of a draft in place of the file's. */
function withDraft(book: Book, cells: readonly DraftCell[]): Book {
  if (cells.length === 0) return book;
  return {
    ...book,
    sheets: book.sheets.map((sheet, index) => {
      const own = new Map(sheet.cells.map((cell) => [keyOf(cell.row, cell.column), cell]));
      for (const { sheet: number, address, value, formula } of cells) {
        if (number !== index) continue;
        const { firstRow: row, firstColumn: column } = areaOf(address);
        const cell: SheetCell = {
          row,
          column,
          value,
          ...(formula === undefined ? {} : { formula: { text: formula, fills: 'single' } }),
        };
        if (value === null && formula === undefined) own.delete(keyOf(row, column));
        else own.set(keyOf(row, column), cell);
      }
      return { ...sheet, cells: [...own.values()] };
    }),
  };
}

/** A typed value lies over what a formula would spill there, so it is put in by force. */
function forceValues({ data }: GridBook, cells: readonly DraftCell[]): void {
  for (const { sheet, address, value, formula } of cells) {
    if (formula !== undefined || value === null) continue;
    const { firstRow, firstColumn } = areaOf(address);
    const rows = data.sheets[sheetId(sheet)]?.cellData as Record<number, Record<number, ICellData>> | undefined;
    if (!rows) continue;
    rows[firstRow - 1] ??= {};
    const line = rows[firstRow - 1]!;
    const t =
      typeof value === 'number'
        ? CellValueType.NUMBER
        : typeof value === 'boolean'
          ? CellValueType.BOOLEAN
          : CellValueType.STRING;
    const { s } = line[firstColumn - 1] ?? {};
    line[firstColumn - 1] = { v: typeof value === 'boolean' ? Number(value) : value, t, ...(s ? { s } : {}) };
  }
}

/** Workbooks of one page need names of their own. */
let opened = 0;

/** Shows a file in the grid, with the changes of a draft. */
export function openSession(grid: Grid, file: OpenFile, knows: Knows, draft: readonly DraftCell[] = []): Session {
  opened += 1;
  const id = `book${opened}`;
  const book = withDraft(workbookBook(file.workbook), draft);
  const kept = bookReasons(book, knows);
  const shown = gridBook(file.workbook, file.look, book, kept, id, file.name);
  forceValues(shown, draft);
  grid.show(shown.data, book);
  const touched = new Map<number, Set<string>>();
  for (const { sheet, address } of draft) touched.set(sheet, (touched.get(sheet) ?? new Set()).add(address));
  return { file, id, book, kept, contents: new Contents(grid.injector, id), notDrawn: shown.notDrawn, touched };
}

/** The number of a sheet from the grid's name for it. */
export const sheetNumberOf = (id: string): number => Number(id.replace(/\D/g, ''));

/** Marks cells as changed, counted from 0. */
export function touch(session: Session, id: string, cells: readonly (readonly [number, number])[]): void {
  const sheet = sheetNumberOf(id);
  const addresses = session.touched.get(sheet) ?? new Set();
  for (const [row, column] of cells) addresses.add(addressOf(row + 1, column + 1));
  session.touched.set(sheet, addresses);
}

export const isChanged = ({ touched }: Session): boolean => [...touched.values()].some((cells) => cells.size > 0);

/** The changed cells as a draft keeps them. */
export function draftCells({ contents, touched }: Session): DraftCell[] {
  return [...touched].flatMap(([sheet, addresses]) =>
    [...addresses].flatMap((address): DraftCell[] => {
      const { firstRow, firstColumn } = areaOf(address);
      const now = contents.at(sheet, firstRow, firstColumn);
      if (now.spilledFrom !== undefined) return [{ sheet, address, value: null }];
      if (now.formula !== '') return [{ sheet, address, value: null, formula: typedText(now.formula) }];
      const { value } = now;
      return [{ sheet, address, value: typeof value === 'object' && value !== null ? value.error : value }];
    }),
  );
}
