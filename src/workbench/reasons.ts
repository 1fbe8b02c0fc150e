/** What there is to say about a cell: why it shows an error, or why its number should not be relied on here. */

import { keyOf } from '../engine/book.ts';
import { bare } from '../engine/formula-text.ts';
import { type Knows, notCheckedReason } from '../engine/not-checked.ts';
import { unreadable } from '../engine/syntax.ts';
import type { Session } from './session.ts';

/** Plain words for error values that carry no reason of their own. */
const PLAIN: Readonly<Record<string, string>> = {
  '#N/A': 'a value that the formula looks for is not there',
  '#VALUE!': 'a value in the formula is of the wrong kind, such as text where a number is wanted',
  '#REF!': 'the formula points at cells that are not there',
  '#DIV/0!': 'the formula divides by zero or by a blank cell',
  '#NAME?': 'the formula uses a name or a function that is not known here',
  '#NUM!': 'the numbers of the formula have no result',
  '#NULL!': 'the areas in the formula share no cell',
  '#CALC!': 'the formula has no result',
  '#CYCLE!': 'the formula refers to its own cell, directly or by way of others',
  '#SPILL!': 'the cells that the answer would fill are not empty',
};

/** The sentence for a cell, or nothing where all is well. Rows and columns from 1. */
export function cellReason(
  session: Session,
  knows: Knows,
  sheet: number,
  row: number,
  column: number,
): string | undefined {
  const kept = session.kept.get(sheet)?.get(keyOf(row, column));
  const { value, formula, reason, spilledFrom } = session.contents.at(sheet, row, column);
  if (kept !== undefined && formula === '') {
    const cell = session.book.sheets[sheet]?.cells.find((one) => one.row === row && one.column === column);
    const text = cell?.formula?.text ?? '';
    return `The file's formula =${text} is kept as it is and not calculated here: ${kept}`;
  }
  const isError = typeof value === 'object' && value !== null;
  if (reason !== undefined && isError) return reason;
  if (formula === '' || spilledFrom !== undefined) return undefined;
  const text = bare(formula);
  if (isError) {
    const fault = unreadable(text);
    if (fault !== undefined) return `the formula cannot be read: ${fault}`;
  }
  const doubt = notCheckedReason(text, knows);
  if (isError) return doubt ?? PLAIN[value.error];
  return doubt === undefined ? undefined : `not checked here: ${doubt}`;
}
