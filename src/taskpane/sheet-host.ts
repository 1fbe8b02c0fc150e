/**
 * What the pane needs of a spreadsheet, and nothing else. Two implementations: the desktop and web spreadsheet, and the workbench's grid.
 *
 * Every promise may be rejected with a `SheetProblem`, whose message is shown to people as it stands. Any other rejection is a bug of the
 * implementation; the pane then shows a plain sentence of its own.
 */
import type { Cell, Rows } from '../functions/calling/cell.ts';

/** What a host may be unable to do. The pane asks, and hides or explains what is not there; it never asks which host it is. */
export type Ability = 'insertFormula' | 'putPicture' | 'recalculate';

/** The cell that is selected; of several selected cells the active one. */
export interface ActiveCell {
  /** Name of its sheet, as on the tab and without quotation marks. */
  readonly sheet: string;
  /** Its place within the sheet, such as `G7`: no sheet, no dollar signs. */
  readonly address: string;
  /**
   * Its formula in the form in which files keep formulas: with `=`, English names, commas between arguments and decimal points. Empty where the cell
   * holds a plain value or nothing. In a cell that another cell's formula spills into: that formula.
   */
  readonly formula: string;
  /** What stands in it now: a number, text, TRUE or FALSE, an error (its reason may be empty), or null where it is blank. */
  readonly value: Cell;
  /** Where this cell lies in what its formula spills, from 0. Both 0 for a formula that fills one cell. */
  readonly spillRow: number;
  readonly spillColumn: number;
}

/** A drawing to be laid over the sheet beside the active cell. */
export interface Picture {
  /** The whole SVG document as text. */
  readonly svg: string;
  /** A short name for lists of objects. */
  readonly name: string;
  /** What it shows, in words, for people who cannot see it. */
  readonly description: string;
}

/** Something that people can be told about: it cannot be done here or now. */
export class SheetProblem extends Error {
  override readonly name = 'SheetProblem';
}

/** Most cells that `read` hands over at once. What is larger is refused with a `SheetProblem`. */
export const MOST_CELLS_READ = 200_000;

export interface SheetHost {
  /** Whether it can do something. The answer does not change while the pane is open. */
  can(ability: Ability): boolean;

  /** The active cell. Undefined where no cell is selected, such as when a drawing is. */
  selection(): Promise<ActiveCell | undefined>;

  /**
   * Calls `listener` after another cell was selected, and after a cell was typed into or calculated: the active cell may then be another, or
   * show something else. It may be called more often than needed, never with anything. Answers a function that ends the calls.
   */
  onChange(listener: () => void): Promise<() => void>;

  /**
   * Values of a reference as it stands in a formula of the sheet `sheet`: `B2`, `$B$2:C9`, `'Shop settings'!A1:B9`, `B:B`, a defined name such as
   * `Shop`, or a spilled table such as `F2#`. Whole columns and rows end at the last cell in use. Blank cells are null, errors `CellError` (the reason
   * may be empty). At least one row of one cell; all rows of one length.
   */
  read(reference: string, sheet: string): Promise<Rows>;

  /** Writes a formula, in the form in which files keep them and with its `=`, into the active cell, over what stands there. */
  insertFormula(formula: string): Promise<void>;

  /** Lays a drawing over the sheet at the active cell. */
  putPicture(picture: Picture): Promise<void>;

  /** Calculates every formula of the workbook again. */
  recalculate(): Promise<void>;
}
