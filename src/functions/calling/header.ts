/** Tables whose columns are found by their names. */

import { Refusal } from './arguments.ts';
import { type Cell, isCellError } from './cell.ts';
import { plainName, quoted } from './names.ts';

/** The name that a cell of the first row gives to its column, in the form in which names are compared; `''` for none. */
export const columnName = (cell: Cell | undefined): string =>
  cell === null || cell === undefined || isCellError(cell) ? '' : plainName(String(cell));

/** Whether a row is one of names: all of its cells are text or blank, and not all blank. */
export const isHeader = (row: readonly Cell[]): boolean =>
  row.every((cell) => cell === null || typeof cell === 'string') && row.some((cell) => columnName(cell) !== '');

/**
 * Where the columns with these names stand.
 *
 * @param header first row of a table
 * @param names the columns that are asked for; others are left alone
 * @returns index by name, or the refusal of a name that stands there twice
 */
export const findColumns = <N extends string>(
  header: readonly Cell[],
  names: readonly N[],
): Map<N, number> | Refusal => {
  const found = new Map<N, number>();
  for (const [i, cell] of header.entries()) {
    const name = columnName(cell) as N;
    if (!names.includes(name)) continue;
    if (found.has(name)) return new Refusal(`table has two columns named ${quoted(name)}; keep one`);
    found.set(name, i);
  }
  return found;
};
