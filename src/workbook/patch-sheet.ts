/** Changes cells of one sheet. Whatever is not in a changed cell keeps its very characters. */

import { type Area, addressOf, areaText, isInside, parseArea } from './address.ts';
import { readValue, sameValue, storableValue, type ValueContext, writeValue } from './cell-value.ts';
import { applyEdits, type Edit, opened, withAttributes } from './edits.ts';
import type { SharedFormulas } from './shared-formulas.ts';
import type { RawCell, RawFormula, RawRow, SheetRows } from './sheet-rows.ts';
import { escapeFormula } from './text-escapes.ts';
import type { CellUpdate } from './types.ts';

export interface SheetPatch {
  /** The sheet's new text. */
  readonly xml: string;
  /** Addresses of the cells whose text changed, row by row. */
  readonly changed: readonly string[];
  /** True when a formula came, went or changed its text. */
  readonly formulasChanged: boolean;
}

export interface PatchContext extends ValueContext {
  /** Number for the attribute `cm` of a new dynamic array. */
  readonly dynamicMark: () => number;
  /** Called for each cell about to change; may throw. */
  readonly guard: (row: number, column: number) => void;
  /** The error for a sheet whose rows or cells are not in order. */
  readonly outOfOrder: () => Error;
}

/** Updates by row, then by column. */
export type UpdatesByRow = Map<number, Map<number, CellUpdate>>;

/** What happens to a cell's formula. */
interface FormulaChange {
  /** The formula element to write; empty without a formula. */
  readonly xml: string;
  readonly changed: boolean;
  /** For the attribute `cm`: text sets, null takes away, undefined leaves. */
  readonly mark?: string | null;
}

export class SheetPatcher {
  readonly #xml: string;
  readonly #rows: SheetRows;
  readonly #shared: SharedFormulas;
  readonly #context: PatchContext;
  readonly #edits: Edit[] = [];
  readonly #changed: string[] = [];
  #formulasChanged = false;
  #prefix = '';
  /** Areas that an array formula filled, with the part of them that it still fills. */
  readonly #freed: { readonly old: Area; readonly kept: Area | undefined }[] = [];
  /** Shared groups that lost their first cell. */
  readonly #headless = new Set<string>();

  constructor(xml: string, rows: SheetRows, shared: SharedFormulas, context: PatchContext) {
    this.#xml = xml;
    this.#rows = rows;
    this.#shared = shared;
    this.#context = context;
  }

  patch(updates: UpdatesByRow): SheetPatch {
    const waiting = [...updates.keys()].sort((a, b) => a - b);
    let next = 0;
    let previous = 0;
    for (const row of this.#rows.rows()) {
      if (row.number <= previous) throw this.#context.outOfOrder();
      previous = row.number;
      this.#prefix = this.#prefixOf(row);
      for (; next < waiting.length && waiting[next]! < row.number; next++) {
        this.#addRow(row.start, waiting[next]!, updates.get(waiting[next]!)!);
      }
      if (waiting[next] === row.number) next++;
      this.#patchRow(row, updates.get(row.number));
    }
    const { data } = this.#rows;
    if (!data) throw this.#context.outOfOrder();
    this.#prefix = data.prefix;
    const first = this.#edits.length;
    for (; next < waiting.length; next++) this.#addRow(data.closeStart, waiting[next]!, updates.get(waiting[next]!)!);
    if (data.selfClosing && this.#edits.length > first) {
      const added = this.#edits.splice(first).map((edit) => edit.text);
      const tag = opened(this.#xml.slice(data.start, data.openEnd));
      this.#edits.push({ start: data.start, end: data.end, text: `${tag}${added.join('')}</${data.prefix}sheetData>` });
    }
    const xml = this.#edits.length > 0 ? applyEdits(this.#xml, this.#edits) : this.#xml;
    return { xml, changed: this.#changed, formulasChanged: this.#formulasChanged };
  }

  /** The prefix of a row's own tag: cells and rows beside it take the same. */
  #prefixOf(row: RawRow): string {
    const name = /^<([^\s/>]+)/.exec(this.#xml.slice(row.start, row.openEnd))![1]!;
    return name.slice(0, name.length - 'row'.length);
  }

  #patchRow(row: RawRow, updates: ReadonlyMap<number, CellUpdate> | undefined): void {
    const present = new Set(row.cells.map((cell) => cell.column));
    const fresh = [...(updates ?? [])].filter(([column]) => !present.has(column)).sort(([a], [b]) => a - b);
    let next = 0;
    let previous = 0;
    for (const cell of row.cells) {
      if (updates && cell.column <= previous) throw this.#context.outOfOrder();
      previous = cell.column;
      for (; next < fresh.length && fresh[next]![0] < cell.column; next++) {
        const text = this.#newCell(row.number, fresh[next]!, row.style);
        if (text) this.#edits.push({ start: cell.start, end: cell.start, text });
      }
      this.#patchCell(cell, updates?.get(cell.column));
    }
    const rest = fresh.slice(next).map((entry) => this.#newCell(row.number, entry, row.style));
    const text = rest.join('');
    if (text === '') return;
    if (row.selfClosing) {
      const tag = opened(this.#xml.slice(row.start, row.openEnd));
      this.#edits.push({ start: row.start, end: row.end, text: `${tag}${text}</${this.#prefix}row>` });
    } else this.#edits.push({ start: row.closeStart, end: row.closeStart, text });
  }

  #addRow(at: number, number: number, updates: ReadonlyMap<number, CellUpdate>): void {
    const cells = [...updates].sort(([a], [b]) => a - b).map((entry) => this.#newCell(number, entry, 0));
    const text = cells.join('');
    const p = this.#prefix;
    if (text) this.#edits.push({ start: at, end: at, text: `<${p}row r="${number}">${text}</${p}row>` });
  }

  /** A cell that the sheet lacks. Blank ones stay away. */
  #newCell(row: number, [column, update]: readonly [number, CellUpdate], rowStyle: number): string {
    const value = storableValue(update.value);
    if (value === null && typeof update.formula !== 'string') return '';
    this.#context.guard(row, column);
    const p = this.#prefix;
    const formula = typeof update.formula === 'string' ? this.#newFormula(update.formula, update.arrayRef) : undefined;
    const written = writeValue(value, formula !== undefined || update.spill === true, p);
    const columnStyle = this.#rows.columnStyles.find(({ first, last }) => column >= first && column <= last)?.style;
    const style = rowStyle || columnStyle;
    const address = addressOf(row, column);
    this.#changed.push(address);
    const tag = withAttributes(`<${p}c r="${address}">`, {
      s: style ? String(style) : undefined,
      t: written.type ?? undefined,
      cm: formula?.mark ?? undefined,
    });
    return `${tag}${formula?.xml ?? ''}${written.xml}</${p}c>`;
  }

  #newFormula(text: string, arrayRef: string | undefined): FormulaChange {
    this.#formulasChanged = true;
    const p = this.#prefix;
    if (arrayRef === undefined) return { xml: `<${p}f>${escapeFormula(text)}</${p}f>`, changed: true, mark: null };
    const xml = `<${p}f t="array" ref="${arrayRef}">${escapeFormula(text)}</${p}f>`;
    return { xml, changed: true, mark: String(this.#context.dynamicMark()) };
  }

  #patchCell(cell: RawCell, given: CellUpdate | undefined): void {
    this.#shared.note(cell);
    const update = given ?? this.#clearing(cell);
    const formula = update ? this.#formulaChange(cell, update) : this.#keptFormula(cell);
    const current = readValue(cell, this.#context);
    const value = update ? storableValue(update.value) : current;
    if (!formula.changed && sameValue(current, value)) return;
    this.#context.guard(cell.row, cell.column);
    this.#changed.push(addressOf(cell.row, cell.column));
    if (sameValue(current, value) && cell.formula && formula.xml !== '' && formula.mark === undefined) {
      this.#edits.push({ start: cell.formula.start, end: cell.formula.end, text: formula.xml });
      return;
    }
    const tag = opened(this.#xml.slice(cell.start, cell.openEnd));
    const name = /^<([^\s/>]+)/.exec(tag)![1]!;
    const p = name.slice(0, name.length - 1);
    const written = writeValue(value, formula.xml !== '' || update?.spill === true, p);
    // `vm` describes the old value.
    const start = withAttributes(tag, { t: written.type, cm: formula.mark, vm: null });
    const others = (cell.others ?? []).map((span) => this.#xml.slice(span.start, span.end)).join('');
    const inside = formula.xml + written.xml + others;
    const text = inside === '' ? start.replace(/>$/, '/>') : `${start}${inside}</${name}>`;
    this.#edits.push({ start: cell.start, end: cell.end, text });
  }

  /** Clears a value that an array formula no longer fills in. */
  #clearing(cell: RawCell): CellUpdate | undefined {
    if (this.#freed.length === 0 || cell.formula || (cell.value ?? cell.inline) === null) return undefined;
    const { row, column } = cell;
    const isFreed = this.#freed.some(
      ({ old, kept }) => isInside(old, row, column) && !(kept && isInside(kept, row, column)),
    );
    return isFreed ? { value: null } : undefined;
  }

  #formulaChange(cell: RawCell, update: CellUpdate): FormulaChange {
    const { formula } = cell;
    const isSame =
      formula !== undefined &&
      typeof update.formula === 'string' &&
      update.formula === (formula.type === 'shared' ? this.#shared.text(cell) : formula.text) &&
      (update.arrayRef === undefined || formula.type === 'array');
    if (update.formula === undefined || isSame) return this.#keptFormula(cell, update.arrayRef);
    if (formula) this.#leaveFormula(formula, update);
    if (typeof update.formula === 'string') return this.#newFormula(update.formula, update.arrayRef);
    if (!formula) return { xml: '', changed: false };
    this.#formulasChanged = true;
    return { xml: '', changed: true, mark: null };
  }

  /** Takes note of what an old formula leaves behind. */
  #leaveFormula(formula: RawFormula, update: CellUpdate): void {
    if (formula.type === 'array') this.#free(formula.ref, update.formula ? update.arrayRef : undefined);
    if (formula.type === 'shared' && formula.text !== '' && formula.si !== undefined) this.#headless.add(formula.si);
  }

  #free(old: string | undefined, kept: string | undefined): void {
    const area = old === undefined ? undefined : parseArea(old);
    if (area) this.#freed.push({ old: area, kept: kept === undefined ? undefined : parseArea(kept) });
  }

  /** The formula as it stands, with its area moved, or as the new first cell of a group that lost its own. */
  #keptFormula(cell: RawCell, arrayRef?: string): FormulaChange {
    const { formula } = cell;
    if (!formula) return { xml: '', changed: false };
    const tag = this.#xml.slice(formula.start, formula.openEnd);
    const rest = this.#xml.slice(formula.openEnd, formula.end);
    if (formula.type === 'array' && arrayRef !== undefined && arrayRef !== formula.ref) {
      this.#free(formula.ref, arrayRef);
      return { xml: withAttributes(tag, { ref: arrayRef }) + rest, changed: true };
    }
    const { si } = formula;
    if (formula.type === 'shared' && formula.text === '' && si !== undefined && this.#headless.has(si)) {
      this.#headless.delete(si);
      const name = /^<([^\s/>]+)/.exec(tag)![1]!;
      const start = opened(withAttributes(tag, { ref: this.#newGroupRef(cell) }));
      return { xml: `${start}${escapeFormula(this.#shared.text(cell))}</${name}>`, changed: true };
    }
    return { xml: tag + rest, changed: false };
  }

  /** Area of a shared group from its new first cell on. */
  #newGroupRef(cell: RawCell): string {
    const old = parseArea(this.#shared.group(cell)?.ref ?? '');
    if (!old) return addressOf(cell.row, cell.column);
    const left = old.top === old.bottom || old.left === old.right ? cell.column : old.left;
    return areaText({ ...old, top: cell.row, left });
  }
}
