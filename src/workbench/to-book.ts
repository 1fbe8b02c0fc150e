/** What has changed in the grid, as changes of the file's cells. */

import { forEngine } from '../engine/for-engine.ts';
import { bare } from '../engine/formula-text.ts';
import { addressOf, areaOf, FUNCTION_NAMES, isSame, refOf } from '../engine/workbook-book.ts';
import { type BookCell, type CellUpdate, toEngine, toStored, type Workbook } from '../workbook/index.ts';
import type { Contents } from './content.ts';

/** Addresses of cells that people typed into, by the number of their sheet. */
export type Touched = ReadonlyMap<number, ReadonlySet<string>>;

/** Formulas that are shown but not calculated, by sheet number, then by `row,column`. */
type Kept = ReadonlyMap<number, ReadonlyMap<string, unknown>>;

const OURS = new RegExp(
  `(?:^|[^\\p{L}\\p{N}_.])(?:${FUNCTION_NAMES.map((name) => name.replace('.', '\\.')).join('|')})\\(`,
  'iu',
);
/** What an array formula of the older kind looks like inside the grid. */
const OVER_AREA = /^_JACKET_AREA\((.*),\d+,\d+\)$/s;

/** A formula of the grid as people would type it, without `=`. */
export const typedText = (formula: string): string => {
  const text = bare(formula);
  return OVER_AREA.exec(text)?.[1] ?? text;
};

/** The formula of a cell of the file in the same form. */
const textInFile = (cell: BookCell | undefined): string | undefined =>
  cell?.formula === undefined || cell.formula.kind === 'dataTable'
    ? undefined
    : forEngine(toEngine(cell.formula.text, FUNCTION_NAMES));

class SheetChanges {
  readonly updates = new Map<string, CellUpdate>();
  readonly #contents: Contents;
  readonly #sheet: number;
  readonly #file = new Map<string, BookCell>();
  readonly #spills = new Map<string, string>();

  constructor(contents: Contents, sheet: number, cells: Iterable<BookCell>) {
    this.#contents = contents;
    this.#sheet = sheet;
    for (const cell of cells) this.#file.set(cell.address, cell);
    for (const { row, column, range } of contents.spills(sheet))
      this.#spills.set(
        addressOf(row + 1, column + 1),
        refOf(row + 1, column + 1, range.endRow - range.startRow + 1, range.endColumn - range.startColumn + 1),
      );
  }

  run(touched: ReadonlySet<string>, kept: ReadonlyMap<string, unknown> | undefined): void {
    for (const address of touched) this.#typed(address, kept);
    for (const [address, cell] of this.#file)
      if (cell.formula && !touched.has(address) && !kept?.has(`${cell.row},${cell.column}`))
        this.#recalculated(address, cell);
    for (const [address, ref] of this.#spills) this.#spilled(address, ref);
  }

  /** A cell that was typed into, pasted over, cleared or brought back. */
  #typed(address: string, kept: ReadonlyMap<string, unknown> | undefined): void {
    const { firstRow: row, firstColumn: column } = areaOf(address);
    const now = this.#contents.at(this.#sheet, row, column);
    const cell = this.#file.get(address);
    if (now.spilledFrom !== undefined) return;
    if (now.formula === '') {
      if (kept?.has(`${row},${column}`) && isSame(now.value, cell?.value ?? null)) return;
      this.updates.set(address, { value: now.value, formula: null });
      return;
    }
    const text = typedText(now.formula);
    if (cell?.formula !== undefined && textInFile(cell) === text) {
      this.#recalculated(address, cell);
      return;
    }
    // Hosts keep every call of ours as a dynamic array, also one with a single answer.
    const ref = this.#spills.get(address) ?? (OURS.test(text) ? address : undefined);
    this.updates.set(address, {
      value: now.value,
      formula: toStored(text, FUNCTION_NAMES),
      ...(ref === undefined ? {} : { arrayRef: ref }),
    });
  }

  /** A formula that is the same: only its answer, and how far that reaches, may be others. */
  #recalculated(address: string, cell: BookCell): void {
    if (cell.formula?.kind === 'dataTable') return;
    const { value } = this.#contents.at(this.#sheet, cell.row, cell.column);
    const ref = this.#spills.get(address) ?? address;
    const moved =
      cell.formula?.kind === 'array' && cell.formula.dynamic && cell.formula.ref?.replaceAll('$', '') !== ref;
    if (!moved && isSame(value, cell.value)) return;
    this.updates.set(address, moved ? { value, arrayRef: ref } : { value });
  }

  #spilled(first: string, ref: string): void {
    const { firstRow, firstColumn, lastRow, lastColumn } = areaOf(ref);
    for (let row = firstRow; row <= lastRow; row += 1)
      for (let column = firstColumn; column <= lastColumn; column += 1) {
        const address = addressOf(row, column);
        if (address === first) continue;
        const { value } = this.#contents.at(this.#sheet, row, column);
        if (!isSame(value, this.#file.get(address)?.value ?? null)) this.updates.set(address, { value, spill: true });
      }
  }
}

/**
 * Writes what has changed in the grid into the workbook.
 *
 * @param workbook the file, read anew
 * @returns the number of cells that really changed
 */
export function patchFromGrid(workbook: Workbook, contents: Contents, touched: Touched, kept: Kept): number {
  let changed = 0;
  for (const [index, sheet] of workbook.sheets.entries()) {
    const changes = new SheetChanges(contents, index, sheet.cells());
    changes.run(touched.get(index) ?? new Set(), kept.get(index));
    if (changes.updates.size > 0) changed += workbook.patch(sheet.name, changes.updates).length;
  }
  return changed;
}
