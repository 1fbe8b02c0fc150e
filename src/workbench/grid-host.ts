/** The grid as the pane sees a sheet. */

import type { Injector } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import type { SheetValue } from '../engine/book.ts';
import { reach, tokens } from '../engine/formula-text.ts';
import { addressOf, areaOf } from '../engine/workbook-book.ts';
import { type Cell, CellError, type ErrorCode, type Rows } from '../functions/calling/cell.ts';
import { MOST_CELLS_READ, type SheetHost, SheetProblem } from '../taskpane/sheet-host.ts';
import type { Calculation } from './calculation.ts';
import { onChanges } from './changes.ts';
import type { Session } from './session.ts';
import { typedText } from './to-book.ts';

export interface GridHostOptions {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly calculation: Calculation;
  /** The workbook that is open now. */
  readonly session: () => Session;
  /** The selected cell: sheet number, row and column from 1. */
  readonly active: () => { readonly sheet: number; readonly row: number; readonly column: number } | undefined;
}

const toCell = (value: SheetValue, reason = ''): Cell =>
  typeof value === 'object' && value !== null ? new CellError(value.error as ErrorCode, reason) : value;

/** An area of a sheet, both ends included. */
interface Place {
  readonly sheet: number;
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Names may lead to names; a chain longer than this leads in a circle. */
const MOST_STEPS = 16;

class References {
  readonly #session: Session;

  constructor(session: Session) {
    this.#session = session;
  }

  /** The cells that a reference means, as seen from a sheet. */
  place(reference: string, sheet: number, steps = 0): Place {
    const text = reference.trim().replace(/^=/, '');
    const cannot = (): SheetProblem => new SheetProblem(`“${reference}” is not an area of this workbook.`);
    if (steps > MOST_STEPS) throw cannot();
    const [first, second] = tokens(text);
    if (first?.kind === 'reference') {
      const place = this.#area(first.text, sheet);
      if (place === undefined) throw cannot();
      return second?.text === '#' ? this.#spill(place) : place;
    }
    if (first?.kind === 'structured' && second === undefined) {
      const table = this.#table(first.text);
      if (table !== undefined) return table;
    }
    if (first?.kind === 'name' && second === undefined) {
      const wanted = first.text.slice(first.text.lastIndexOf('!') + 1).toLowerCase();
      const here = this.#session.contents.sheetName(sheet);
      const named = this.#session.book.names.filter(({ name }) => name.toLowerCase() === wanted);
      const known = named.find((name) => name.sheet === here) ?? named.find((name) => name.sheet === undefined);
      if (known !== undefined) return this.place(known.text, sheet, steps + 1);
    }
    throw cannot();
  }

  #area(text: string, sheet: number): Place | undefined {
    const { contents } = this.#session;
    const mark = text.lastIndexOf('!');
    const name = text
      .slice(0, Math.max(0, mark))
      .replace(/^'(.*)'$/s, '$1')
      .replaceAll("''", "'");
    const number = mark < 0 ? sheet : contents.sheetNumber(name);
    if (number < 0) return undefined;
    const area = text.slice(mark + 1).replaceAll('$', '');
    const used = contents.extent(number);
    if (/^[A-Z]+:[A-Z]+$/i.test(area)) {
      const { firstColumn, lastColumn } = areaOf(area.replace(/([A-Z]+):([A-Z]+)/i, '$11:$21'));
      return { sheet: number, top: 1, left: firstColumn, bottom: Math.max(1, used.rows), right: lastColumn };
    }
    if (/^\d+:\d+$/.test(area)) {
      const [top, bottom] = area.split(':').map(Number) as [number, number];
      return { sheet: number, top, left: 1, bottom, right: Math.max(1, used.columns) };
    }
    if (reach(area).row === 0) return undefined;
    const { firstRow, firstColumn, lastRow, lastColumn } = areaOf(area);
    return {
      sheet: number,
      top: Math.min(firstRow, lastRow),
      left: Math.min(firstColumn, lastColumn),
      bottom: Math.max(firstRow, lastRow),
      right: Math.max(firstColumn, lastColumn),
    };
  }

  #spill(place: Place): Place {
    const found = this.#session.contents
      .spills(place.sheet)
      .find(({ row, column }) => row + 1 === place.top && column + 1 === place.left);
    if (found === undefined) return place;
    return { ...place, bottom: found.range.endRow + 1, right: found.range.endColumn + 1 };
  }

  /** A table's data, or one of its columns. */
  #table(text: string): Place | undefined {
    const [, name = '', column = ''] = /^([^[]*)\[(.*)\]$/s.exec(text) ?? [];
    const table = this.#session.book.tables.find((one) => one.name.toLowerCase() === name.toLowerCase());
    if (table === undefined) return undefined;
    const sheet = this.#session.contents.sheetNumber(table.sheet);
    const { area, headerRows, totalsRows } = table;
    const rows = { sheet, top: area.firstRow + headerRows, bottom: area.lastRow - totalsRows };
    if (column === '' || /^#data$/i.test(column)) return { ...rows, left: area.firstColumn, right: area.lastColumn };
    const at = table.columns.findIndex((one) => one.trim().toLowerCase() === column.trim().toLowerCase());
    return at < 0 ? undefined : { ...rows, left: area.firstColumn + at, right: area.firstColumn + at };
  }
}

/** The host over the grid. It lives as long as the page; the workbook under it may be another each time. */
export function gridHost({ api, injector, calculation, session, active }: GridHostOptions): SheetHost {
  const problem = (text: string): SheetProblem => new SheetProblem(text);
  return {
    can: (ability) => ability !== 'putPicture',

    async selection() {
      const at = active();
      if (at === undefined) return undefined;
      const { contents } = session();
      const { formula, value, reason, spilledFrom } = contents.at(at.sheet, at.row, at.column);
      return {
        sheet: contents.sheetName(at.sheet),
        address: addressOf(at.row, at.column),
        formula: formula === '' ? '' : `=${typedText(formula)}`,
        value: toCell(value, reason),
        spillRow: spilledFrom === undefined ? 0 : at.row - spilledFrom.row,
        spillColumn: spilledFrom === undefined ? 0 : at.column - spilledFrom.column,
      };
    },

    async onChange(listener) {
      return onChanges(injector, listener);
    },

    async read(reference, sheetName) {
      const open = session();
      const sheet = open.contents.sheetNumber(sheetName);
      if (sheet < 0) throw problem(`There is no sheet called ${sheetName}.`);
      const { sheet: from, top, left, bottom, right } = new References(open).place(reference, sheet);
      const count = (bottom - top + 1) * (right - left + 1);
      if (count > MOST_CELLS_READ)
        throw problem(`“${reference}” has more than ${MOST_CELLS_READ} cells. Name a smaller area.`);
      const rows: Rows = Array.from({ length: bottom - top + 1 }, (_, r) =>
        Array.from({ length: right - left + 1 }, (_, c) => {
          const { value, reason } = open.contents.at(from, top + r, left + c);
          return toCell(value, reason);
        }),
      );
      return rows;
    },

    async insertFormula(formula) {
      const at = active();
      const sheet = api.getActiveWorkbook()?.getActiveSheet();
      if (at === undefined || !sheet) throw problem('Select a cell first.');
      const book = api.getActiveWorkbook();
      if (book?.isCellEditing()) await book.endEditingAsync(true);
      sheet.getRange(at.row - 1, at.column - 1).setValue({ f: formula });
      await calculation.settled();
    },

    async putPicture() {
      throw problem('Pictures cannot be put into a sheet here.');
    },

    async recalculate() {
      api.getFormula().executeCalculation();
      await calculation.settled();
    },
  };
}
