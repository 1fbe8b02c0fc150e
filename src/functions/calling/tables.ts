/** Tables that a calculation answers: their cells in the units in force. */
import { type Amount, Fault, type Quantity } from '../../calculation/result.ts';
import { CellError, type OutCell } from './cell.ts';
import { errorOf } from './reasons.ts';
import { fromSi, type UnitSystem, unitName } from './units.ts';

/** Stands for the name of a quantity's unit in whatever system is in force. */
export class UnitOf {
  readonly quantity: Quantity;
  constructor(quantity: Quantity) {
    this.quantity = quantity;
  }
}

export const unitOf = (quantity: Quantity): UnitOf => new UnitOf(quantity);

/** A cell of a table in the making: a number or word as it is, an amount in SI, a unit's name, a reason, an error, or a blank. */
export type TableCell = number | string | boolean | null | Amount | UnitOf | Fault | CellError;

const TOO_LARGE = 'the result is too large to be a number';

const numberCell = (x: number): OutCell => (x > -Infinity && x < Infinity ? x : new CellError('#NUM!', TOO_LARGE));

/**
 * Cells of a table for the host.
 *
 * @param rows the table in SI
 * @param system units to show it in
 * @param plain quantity of plain numbers, for tables of one quantity
 */
export const tableCells = (
  rows: readonly (readonly TableCell[])[],
  system: UnitSystem,
  plain?: Quantity,
): OutCell[][] =>
  rows.map((row) =>
    row.map((cell): OutCell => {
      if (cell === null) return '';
      if (typeof cell === 'number') return numberCell(plain ? fromSi(cell, plain, system) : cell);
      if (typeof cell === 'string' || typeof cell === 'boolean' || cell instanceof CellError) return cell;
      if (cell instanceof UnitOf) return unitName(cell.quantity, system);
      if (cell instanceof Fault) return errorOf(cell, system);
      return numberCell(fromSi(cell.value, cell.quantity, system));
    }),
  );
