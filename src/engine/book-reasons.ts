/** Which formulas of a workbook cannot be relied on here, and why. */

import { beyondLimits } from './beyond-limits.ts';
import { type Book, cellCount, formOf, keyOf, type Name, type SheetFormula, type Table } from './book.ts';
import { forEngine } from './for-engine.ts';
import { sheetIn, type Token, tokens } from './formula-text.ts';
import { countedFrom1904, type Knows, notCheckedReason } from './not-checked.ts';
import { rangeForOneCell } from './one-cell.ts';
import { unreadable } from './syntax.ts';
import { readTableReference } from './table-reference.ts';
import { takenNames } from './taken-names.ts';

/** Reasons by sheet number, then by cell. */
type Reasons = Map<number, Map<string, string>>;

/** Most cells that one array formula may fill. Ours: each of them is kept by itself. */
const MOST_FILLED = 1_000_000;

const ONE_CELL = 'the formula is not kept as an array, so a spreadsheet program takes one cell of';

/** Why the text of a formula cannot be relied on, wherever it stands in the workbook. */
type TextReason = (text: string) => string | undefined;

const textReasonFor =
  (knows: Knows, date1904: boolean): TextReason =>
  (text) => {
    const tooLarge = beyondLimits(text);
    if (tooLarge !== undefined) return tooLarge;
    const fault = unreadable(text);
    if (fault !== undefined) return `the formula cannot be read: ${fault}`;
    return notCheckedReason(text, knows) ?? (date1904 ? countedFrom1904(text) : undefined);
  };

/** A reference into a table that is not there, or to a part of it that it does not have. */
function tableReason({ text }: Token, tables: ReadonlyMap<string, Table>): string | undefined {
  if (text.startsWith('[')) return 'a column without the name of its table is not understood here';
  const name = text.slice(0, text.indexOf('['));
  const table = tables.get(name.toLowerCase());
  if (table === undefined) return `there is no table ${name}`;
  const reference = readTableReference(text);
  if (reference === undefined || text.includes("'")) return 'this way to point into a table is not understood here';
  if (reference.sections.includes('#headers') && table.headerRows !== 1)
    return `the table ${table.name} shows no headings`;
  if (reference.sections.includes('#totals') && table.totalsRows === 0)
    return `the table ${table.name} has no totals row`;
  const known = new Set(table.columns.map((column) => column.trim().toLowerCase()));
  const unknown = reference.columns?.find((column) => !known.has(column.toLowerCase()));
  return unknown === undefined ? undefined : `the table has no column ${unknown}`;
}

/** The engine takes cells of a sheet that it does not find for blank ones. */
function sheetReason({ text }: Token, sheets: ReadonlySet<string>): string | undefined {
  const sheet = sheetIn(text);
  return sheet === undefined || sheets.has(sheet.toLowerCase()) ? undefined : `there is no sheet ${sheet}`;
}

class NameReasons {
  readonly #names = new Map<string, Name[]>();
  readonly #textReason: TextReason;
  readonly #taken: ReadonlySet<string>;
  readonly #reasons = new Map<string, string | undefined>();

  constructor(names: readonly Name[], textReason: TextReason, taken: ReadonlySet<string>) {
    this.#textReason = textReason;
    this.#taken = taken;
    for (const name of names) {
      const key = name.name.toLowerCase();
      this.#names.set(key, [...(this.#names.get(key) ?? []), name]);
    }
  }

  /** Why what a name stands for cannot be relied on, as seen from a sheet. */
  reason(name: string, sheet: string): string | undefined {
    const key = name.slice(name.lastIndexOf('!') + 1).toLowerCase();
    const all = this.#names.get(key);
    if (all === undefined) return undefined;
    const fault = `the name ${all[0]!.name}`;
    if (this.#taken.has(key)) return `${fault} is that of a function too, which is not understood here`;
    if (name.includes('!')) return `${fault} with a sheet in front of it is not understood here`;
    if (all.length > 1) return `${fault} means different things on different sheets, which is not understood here`;
    if (all[0]!.sheet !== undefined && all[0]!.sheet !== sheet) return `${fault} belongs to another sheet`;
    if (!this.#reasons.has(key)) {
      // A name that leads back to itself finds this and stops.
      this.#reasons.set(key, `${fault} refers to itself`);
      const own = this.#textReason(all[0]!.text) ?? this.#namesWithin(all[0]!.text, sheet);
      this.#reasons.set(key, own === undefined ? undefined : `${fault}: ${own}`);
    }
    return this.#reasons.get(key);
  }

  #namesWithin(text: string, sheet: string): string | undefined {
    for (const token of tokens(text)) {
      const reason = token.kind === 'name' ? this.reason(token.text, sheet) : undefined;
      if (reason !== undefined) return reason;
    }
    return undefined;
  }
}

/** Finds every formula that the engine would get wrong or cannot read. Filled-down formulas are looked at once. */
export function bookReasons(book: Book, knows: Knows): Reasons {
  const textReason = textReasonFor(knows, book.date1904 === true);
  const names = new NameReasons(book.names, textReason, takenNames(book));
  const sheets = new Set(book.sheets.map(({ name }) => name.toLowerCase()));
  const tables = new Map(book.tables.map((table) => [table.name.toLowerCase(), table]));
  const reasonFor = ({ text, area, fills }: SheetFormula, sheet: string): string | undefined => {
    if (fills === 'area' && area && cellCount(area) > MOST_FILLED)
      return 'the area of the formula has more than 1 million cells, which is more than is filled here';
    const own = textReason(text);
    if (own !== undefined) return own;
    // As the engine gets it, so that `T[@a]` is looked at in the form that names its column.
    for (const token of tokens(forEngine(text))) {
      let reason: string | undefined;
      if (token.kind === 'name') reason = names.reason(token.text, sheet);
      else if (token.kind === 'structured') reason = tableReason(token, tables);
      else if (token.kind === 'reference') reason = sheetReason(token, sheets);
      if (reason !== undefined) return reason;
    }
    const range = fills === 'single' ? rangeForOneCell(text) : undefined;
    return range && `${ONE_CELL} ${range}; enter it again in the spreadsheet program`;
  };
  const reasons: Reasons = new Map();
  for (const [index, { name, cells }] of book.sheets.entries()) {
    const known = new Map<string, string | undefined>();
    const ofSheet = new Map<string, string>();
    for (const { row, column, formula } of cells) {
      if (formula === undefined) continue;
      const form = `${formula.fills} ${formOf(formula, row, column)}`;
      if (!known.has(form)) known.set(form, reasonFor(formula, name));
      const reason = known.get(form);
      if (reason !== undefined) ofSheet.set(keyOf(row, column), reason);
    }
    if (ofSheet.size > 0) reasons.set(index, ofSheet);
  }
  return reasons;
}
