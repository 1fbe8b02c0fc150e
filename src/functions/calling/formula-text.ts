/** Calls written out as people type them. */
import { type Argument, type Cell, isRows } from './cell.ts';

/** What separates arguments, cells of a row and rows, and what marks decimals: spreadsheets write them by locale. */
export interface Separators {
  readonly argument: string;
  readonly column: string;
  readonly row: string;
  readonly decimal: string;
}

/** The form in which files keep formulas. */
export const STANDARD: Separators = { argument: ',', column: ',', row: ';', decimal: '.' };

/** The form of locales with a decimal comma. */
export const DECIMAL_COMMA: Separators = { argument: ';', column: '\\', row: ';', decimal: ',' };

const cellText = (cell: Cell, s: Separators): string => {
  if (cell === null) return '';
  if (typeof cell === 'string') return `"${cell.replaceAll('"', '""')}"`;
  if (typeof cell === 'number') return String(cell).replace('.', s.decimal);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return cell.code;
};

/** One argument as it stands in a formula. */
export const argumentText = (argument: Argument, s: Separators = STANDARD): string =>
  isRows(argument)
    ? `{${argument.map((row) => row.map((cell) => cellText(cell, s)).join(s.column)).join(s.row)}}`
    : cellText(argument as Cell, s);

/** A formula with the namespace, such as =JACKET.PLASTER(1,8). */
export const formulaText = (id: string, args: readonly Argument[], s: Separators = STANDARD): string =>
  `=JACKET.${id}(${args.map((one) => argumentText(one, s)).join(s.argument)})`;

/** How a call is written, with square brackets round what may be left out. */
export const syntaxText = (
  id: string,
  args: readonly { readonly name: string; readonly optional: boolean; readonly repeating?: boolean }[],
  s: Separators = STANDARD,
): string =>
  `JACKET.${id}(${args
    .map(({ name, optional, repeating }) => (repeating ? `${name}…` : optional ? `[${name}]` : name))
    .join(`${s.argument} `)})`;
