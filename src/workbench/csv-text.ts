/** The first sheet as comma-separated text: values, no formulas. */

import type { Contents } from './content.ts';
import { writeCsv } from './csv.ts';

/** Whether a .csv would lose a formula. */
export function hasFormulas(contents: Contents): boolean {
  const { rows, columns } = contents.extent(0);
  for (let row = 1; row <= rows; row += 1)
    for (let column = 1; column <= columns; column += 1) if (contents.formula(0, row, column) !== '') return true;
  return false;
}

function text(contents: Contents, row: number, column: number): string {
  const { value } = contents.at(0, row, column);
  if (value === null) return '';
  if (typeof value === 'boolean') return value ? 'TRUE' : 'FALSE';
  return typeof value === 'object' ? value.error : String(value);
}

export function csvText(contents: Contents): string {
  const { rows, columns } = contents.extent(0);
  return writeCsv(
    Array.from({ length: rows }, (_, r) => Array.from({ length: columns }, (__, c) => text(contents, r + 1, c + 1))),
  );
}
