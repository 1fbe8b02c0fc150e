/** Tables in the quiet look of the page, in place of the stock styles that files name: bold headings over a clay line, faint stripes. */

import { BooleanNumber, BorderStyleTypes, type IStyleData } from '@univerjs/core';
import type { Table } from '../engine/book.ts';

const CLAY = { rgb: '#8A4B2F' };
const PAPER = { rgb: '#FAF8F4' };

/** What a table adds to the look of one of its cells: nothing where the file's own look says something else. */
export function tableStyle(table: Table, stripes: boolean, row: number): IStyleData | undefined {
  const { area, headerRows, totalsRows } = table;
  if (row < area.firstRow + headerRows)
    return { bl: BooleanNumber.TRUE, bg: PAPER, bd: { b: { s: BorderStyleTypes.MEDIUM, cl: CLAY } } };
  if (row > area.lastRow - totalsRows)
    return { bl: BooleanNumber.TRUE, bd: { t: { s: BorderStyleTypes.THIN, cl: CLAY } } };
  const fromFirst = row - area.firstRow - headerRows;
  return stripes && fromFirst % 2 === 0 ? { bg: PAPER } : undefined;
}
