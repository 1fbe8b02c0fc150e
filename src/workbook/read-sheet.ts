/** Reads the cells and the layout of one sheet. */

import { addressOf, parseAddress } from './address.ts';
import { readValue, type ValueContext } from './cell-value.ts';
import { MAIN } from './namespaces.ts';
import type { Parts } from './parts.ts';
import { SharedFormulas } from './shared-formulas.ts';
import { type RawCell, SheetRows } from './sheet-rows.ts';
import type { BookCell, BookFormula, BookLayout } from './types.ts';

/** Addresses and row numbers are shorter than this [characters]; what stands in their place may not be. */
const LONGEST_PLACE = 20;

/** The rows of a sheet, for one pass. */
export const sheetRows = (parts: Parts, path: string): SheetRows =>
  new SheetRows(parts.reader(path), (where) => {
    const place = where.length > LONGEST_PLACE ? `${where.slice(0, LONGEST_PLACE)}…` : where;
    return parts.refuse(`is damaged: ${place} of its part ${path} cannot be read`);
  });

const KINDS: Readonly<Record<string, BookFormula['kind']>> = {
  array: 'array',
  shared: 'shared',
  dataTable: 'dataTable',
};

function bookFormula(cell: RawCell, shared: SharedFormulas): BookFormula | undefined {
  const { formula } = cell;
  if (!formula) return undefined;
  const kind = KINDS[formula.type] ?? 'normal';
  const text = kind === 'shared' ? shared.text(cell) : formula.text;
  const ref = formula.ref === undefined ? {} : { ref: formula.ref };
  const si = formula.si === undefined ? {} : { si: formula.si };
  return { text, kind, ...ref, ...si, dynamic: cell.dynamic };
}

function bookCell(cell: RawCell, shared: SharedFormulas, context: ValueContext): BookCell {
  const { row, column, style } = cell;
  const formula = bookFormula(cell, shared);
  const address = addressOf(row, column);
  return { row, column, address, value: readValue(cell, context), style, ...(formula ? { formula } : {}) };
}

export function* readCells(parts: Parts, path: string, context: ValueContext): Generator<BookCell> {
  const shared = new SharedFormulas(() => sheetRows(parts, path));
  for (const row of sheetRows(parts, path).rows()) {
    for (const cell of row.cells) yield bookCell(cell, shared, context);
  }
}

export function readCell(parts: Parts, path: string, address: string, context: ValueContext): BookCell | undefined {
  const place = parseAddress(address);
  if (!place) return undefined;
  const shared = new SharedFormulas(() => sheetRows(parts, path));
  for (const row of sheetRows(parts, path).rows()) {
    if (row.number !== place.row) continue;
    const cell = row.cells.find(({ column }) => column === place.column);
    return cell && bookCell(cell, shared, context);
  }
  return undefined;
}

const isTrue = (text: string | undefined): boolean => text === '1' || text === 'true';

export function readLayout(parts: Parts, path: string): BookLayout {
  const columns: BookLayout['columns'][number][] = [];
  const rows: BookLayout['rows'][number][] = [];
  const merged: string[] = [];
  let frozen = { rows: 0, columns: 0 };
  const reader = parts.reader(path);
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event !== 'open' || !MAIN.has(reader.space)) continue;
    const number = (name: string): number => Number(reader.attribute(name) ?? 0);
    if (reader.local === 'col') {
      const hidden = isTrue(reader.attribute('hidden'));
      columns.push({ first: number('min'), last: number('max'), width: number('width'), hidden });
    } else if (reader.local === 'row' && (reader.attribute('ht') ?? reader.attribute('hidden')) !== undefined) {
      const height = reader.attribute('ht') === undefined ? {} : { height: number('ht') };
      rows.push({ row: number('r'), ...height, hidden: isTrue(reader.attribute('hidden')) });
    } else if (reader.local === 'pane' && /^frozen/.test(reader.attribute('state') ?? '')) {
      frozen = { rows: number('ySplit'), columns: number('xSplit') };
    } else if (reader.local === 'mergeCell') merged.push(reader.attribute('ref') ?? '');
  }
  return { columns, rows, frozen, merged };
}
