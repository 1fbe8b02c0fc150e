/** Reads a sheet part row by row, with the place of everything in its text. Holds one row at a time, so sheets of any length pass through. */

import { addressOf, parseAddress } from './address.ts';
import { COLUMNS, ROWS } from './limits.ts';
import { MAIN } from './namespaces.ts';
import type { XmlReader } from './xml.ts';

/** A stretch of the part's text. */
export interface Span {
  readonly start: number;
  readonly end: number;
}

export interface RawFormula extends Span {
  readonly openEnd: number;
  readonly type: string;
  readonly text: string;
  readonly ref?: string;
  readonly si?: string;
}

export interface RawCell extends Span {
  readonly row: number;
  readonly column: number;
  /** End of the opening tag. */
  readonly openEnd: number;
  /** Attribute `t`: which kind of value. */
  readonly type: string;
  readonly style: number;
  /** Attribute `cm` is set. */
  readonly dynamic: boolean;
  readonly formula?: RawFormula;
  /** Text of the value element, or null without one. */
  readonly value: string | null;
  /** Text typed in place, or null. */
  readonly inline: string | null;
  /** Elements other than formula and value, kept when the cell changes. */
  readonly others?: Span[];
}

export interface RawRow extends Span {
  readonly number: number;
  readonly openEnd: number;
  readonly selfClosing: boolean;
  /** Start of the closing tag. */
  readonly closeStart: number;
  /** Style for new cells of this row; 0 without one. */
  readonly style: number;
  readonly cells: RawCell[];
}

/** The element that holds the rows. */
export interface RawSheetData extends Span {
  readonly openEnd: number;
  readonly selfClosing: boolean;
  readonly closeStart: number;
  /** Prefix of its name with the colon, or `''`. New elements take the same. */
  readonly prefix: string;
}

export class SheetRows {
  readonly #reader: XmlReader;
  readonly #refuse: (where: string) => Error;
  /** Styles of whole columns, known once the rows begin. */
  readonly columnStyles: { readonly first: number; readonly last: number; readonly style: number }[] = [];
  /** Known once the rows have been read to the end. */
  data: RawSheetData | undefined;

  /** `refuse` makes the error for a cell that cannot be read. */
  constructor(reader: XmlReader, refuse: (where: string) => Error) {
    this.#reader = reader;
    this.#refuse = refuse;
  }

  *rows(): Generator<RawRow> {
    const reader = this.#reader;
    while (reader.next() !== 'end') {
      if (reader.depth !== 2 || !MAIN.has(reader.space)) continue;
      if (reader.local === 'cols' && !reader.selfClosing) this.#readColumns();
      if (reader.local === 'sheetData') break;
    }
    if (reader.depth === 0) return;
    const { start, end: openEnd, selfClosing, prefix } = reader;
    let number = 0;
    for (let event = reader.next(); event !== 'close' || reader.depth >= 2; event = reader.next()) {
      if (event !== 'open') continue;
      if (reader.local !== 'row' || !MAIN.has(reader.space)) {
        reader.skip();
        continue;
      }
      const row = this.#readRow(number);
      number = row.number;
      yield row;
    }
    this.data = { start, openEnd, selfClosing, closeStart: reader.start, end: reader.end, prefix };
    while (reader.next() !== 'end');
  }

  #readColumns(): void {
    const reader = this.#reader;
    const { depth } = reader;
    for (let event = reader.next(); event !== 'close' || reader.depth >= depth; event = reader.next()) {
      if (event !== 'open' || reader.local !== 'col') continue;
      const style = Number(reader.attribute('style') ?? 0);
      if (style > 0) {
        this.columnStyles.push({
          first: Number(reader.attribute('min')),
          last: Number(reader.attribute('max')),
          style,
        });
      }
    }
  }

  #readRow(previous: number): RawRow {
    const reader = this.#reader;
    const { start, end: openEnd, selfClosing, depth } = reader;
    const r = reader.attribute('r');
    const number = r === undefined ? previous + 1 : Number(r);
    if (!(Number.isInteger(number) && number >= 1 && number <= ROWS)) throw this.#refuse(`row ${r}`);
    const isStyled = /^(1|true)$/.test(reader.attribute('customFormat') ?? '');
    const style = isStyled ? Number(reader.attribute('s') ?? 0) : 0;
    const cells: RawCell[] = [];
    let column = 0;
    for (let event = reader.next(); event !== 'close' || reader.depth >= depth; event = reader.next()) {
      if (event !== 'open') continue;
      if (reader.local !== 'c' || !MAIN.has(reader.space)) {
        reader.skip();
        continue;
      }
      const cell = this.#readCell(number, column);
      column = cell.column;
      cells.push(cell);
    }
    return { number, start, openEnd, selfClosing, closeStart: reader.start, end: reader.end, style, cells };
  }

  #readCell(row: number, previous: number): RawCell {
    const reader = this.#reader;
    const { start, end: openEnd, depth } = reader;
    const address = reader.attribute('r');
    const place = address === undefined ? { row, column: previous + 1 } : parseAddress(address);
    if (place?.row !== row || place.column > COLUMNS) throw this.#refuse(address ?? addressOf(row, previous + 1));
    const type = reader.attribute('t') ?? 'n';
    const style = Number(reader.attribute('s') ?? 0);
    const dynamic = reader.attribute('cm') !== undefined;
    let formula: RawFormula | undefined;
    let value: string | null = null;
    let inline: string | null = null;
    let others: Span[] | undefined;
    for (let event = reader.next(); event !== 'close' || reader.depth >= depth; event = reader.next()) {
      if (event !== 'open') continue;
      const isMain = MAIN.has(reader.space);
      if (isMain && reader.local === 'f') formula = this.#readFormula();
      else if (isMain && reader.local === 'v') value = reader.textInside();
      else if (isMain && reader.local === 'is') inline = readString(reader);
      else {
        const from = reader.start;
        reader.skip();
        others ??= [];
        others.push({ start: from, end: reader.end });
      }
    }
    const { column } = place;
    return { row, column, start, openEnd, end: reader.end, type, style, dynamic, formula, value, inline, others };
  }

  #readFormula(): RawFormula {
    const reader = this.#reader;
    const { start, end: openEnd } = reader;
    const type = reader.attribute('t') ?? 'normal';
    const ref = reader.attribute('ref');
    const si = reader.attribute('si');
    const text = reader.textInside();
    return { start, openEnd, end: reader.end, type, ref, si, text };
  }
}

/** Text of a string element that has just opened: its runs joined, without the reading aids of East Asian text. `_x` escapes stay. */
export function readString(reader: XmlReader): string {
  const { depth } = reader;
  let text = '';
  for (let event = reader.next(); event !== 'close' || reader.depth >= depth; event = reader.next()) {
    if (event !== 'open') continue;
    if (reader.local === 't') text += reader.textInside();
    else if (reader.local === 'rPh') reader.skip();
  }
  return text;
}
