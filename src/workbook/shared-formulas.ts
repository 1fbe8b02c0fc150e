import type { RawCell, SheetRows } from './sheet-rows.ts';
import { translator } from './translate-formula.ts';

interface Group {
  readonly row: number;
  readonly column: number;
  readonly ref: string | undefined;
  readonly shift: (rows: number, columns: number) => string;
}

/** The shared formulas of one sheet: the first cell of a group holds the text, the others only its number. */
export class SharedFormulas {
  readonly #groups = new Map<string, Group>();
  readonly #reread: () => SheetRows;
  #isComplete = false;

  /** `reread` starts the sheet from its beginning, for members that stand before the first cell of their group. */
  constructor(reread: () => SheetRows) {
    this.#reread = reread;
  }

  /** Takes note of a cell that may be the first of a group. */
  note(cell: RawCell): void {
    const { formula, row, column } = cell;
    if (formula?.type !== 'shared' || formula.si === undefined || formula.text === '' || this.#groups.has(formula.si))
      return;
    this.#groups.set(formula.si, { row, column, ref: formula.ref, shift: translator(formula.text) });
  }

  /** The group of a cell with a shared formula. */
  group(cell: RawCell): Group | undefined {
    this.note(cell);
    const si = cell.formula?.si ?? '';
    if (!this.#groups.has(si) && !this.#isComplete) {
      this.#isComplete = true;
      for (const row of this.#reread().rows()) for (const other of row.cells) this.note(other);
    }
    return this.#groups.get(si);
  }

  /** A member's own text. Empty where the group has no first cell. */
  text(cell: RawCell): string {
    if (cell.formula?.text) {
      this.note(cell);
      return cell.formula.text;
    }
    const group = this.group(cell);
    return group ? group.shift(cell.row - group.row, cell.column - group.column) : '';
  }
}
