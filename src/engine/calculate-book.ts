/** Calculates every formula of a workbook, and says which it did not and why. */

import { CellValueType, type ICellData, type Nullable, type ObjectMatrix } from '@univerjs/core';
import { ICalculateFormulaService, type IFormulaDependencyTreeJson } from '@univerjs/engine-formula';
import { type Book, keyOf, openBook, type Sheet, type SheetCell, type SheetValue, sheetId } from './book.ts';
import { bookReasons } from './book-reasons.ts';
import { type Calculation, type Engine, freshBookId, type Progress } from './engine.ts';
import { reasonOf } from './values.ts';

/** The value of one formula cell, and of the cells it spills over, itself first. */
export interface Calculated {
  readonly cell: SheetCell;
  readonly rows: readonly (readonly SheetValue[])[];
  /** Why an error value came out, where that is known. */
  readonly reason?: string;
}

/** A formula that was not calculated. Its value is as it was, and other formulas have used that. */
export interface NotChecked {
  readonly cell: SheetCell;
  readonly reason: string;
}

export interface SheetResult {
  readonly sheet: Sheet;
  readonly calculated: readonly Calculated[];
  readonly notChecked: readonly NotChecked[];
}

/** A spill read by another spill needs another round; a workbook that is not steady after so many never is. */
const MOST_ROUNDS = 12;

type KeptReasons = Map<number, Map<string, string>>;

const keep = (kept: KeptReasons, sheet: number, key: string, reason: string): void => {
  const ofSheet = kept.get(sheet) ?? new Map<string, string>();
  kept.set(sheet, ofSheet.set(key, reason));
};

/** Calculates a workbook. `engine` is used for it alone from then on. */
export async function calculateBook(engine: Engine, book: Book, progress?: Progress): Promise<SheetResult[]> {
  const kept: KeptReasons = bookReasons(book, engine.knows);
  for (;;) {
    const id = freshBookId();
    openBook(engine, book, id, kept);
    const { data, circular } = await untilSteady(engine, id, progress);
    const late = circular ? await circles(engine) : unexpectedTables(book, data, id, kept);
    let found = 0;
    for (const { sheet, key, reason } of late) {
      if (kept.get(sheet)?.has(key)) continue;
      keep(kept, sheet, key, reason);
      found += 1;
    }
    if (found === 0) return book.sheets.map((sheet, index) => sheetResult(sheet, index, data, id, kept));
  }
}

/** Calculates until nothing changes any more. One round is enough where nothing spills. */
async function untilSteady(engine: Engine, id: string, progress?: Progress): Promise<Calculation> {
  let before = '';
  for (let round = 1; ; round += 1) {
    const result = await engine.calculate(progress);
    const spills = result.data.arrayFormulaRange[id] ?? {};
    const anySpill = Object.values(spills).some((rows) => rows && Object.keys(rows).length > 0);
    if (!anySpill || round === MOST_ROUNDS || result.circular) return result;
    const now = JSON.stringify([result.data.unitData[id], result.data.arrayFormulaCellData[id]]);
    if (now === before) return result;
    before = now;
  }
}

interface Late {
  readonly sheet: number;
  readonly key: string;
  readonly reason: string;
}

/** Formulas that fill several cells here, where the file keeps them for one: there a spreadsheet program would take one value out. */
function unexpectedTables(book: Book, data: Calculation['data'], id: string, kept: KeptReasons): Late[] {
  return book.sheets.flatMap(({ cells }, sheet) =>
    cells
      .filter(({ formula, row, column }) => formula?.fills === 'single' && !kept.get(sheet)?.has(keyOf(row, column)))
      .filter(({ row, column }) => data.arrayFormulaRange[id]?.[sheetId(sheet)]?.[row - 1]?.[column - 1] !== undefined)
      .map(({ row, column }) => ({
        sheet,
        key: keyOf(row, column),
        reason:
          'the answer fills several cells, but the file keeps the formula for one; enter it again in the spreadsheet program',
      })),
  );
}

/** Cells that refer to themselves, directly or by way of others. */
async function circles(engine: Engine): Promise<Late[]> {
  const trees = await engine.injector.get(ICalculateFormulaService).getAllDependencyJson();
  const byId = new Map(trees.map((tree) => [tree.treeId, tree]));
  return onCircles(byId).map((tree) => ({
    sheet: Number(tree.subUnitId.replace(/\D/g, '')),
    key: keyOf(tree.row + 1, tree.column + 1),
    reason: 'the formula refers to its own cell, directly or by way of others',
  }));
}

/** Tarjan's strongly connected components, without recursion: chains of formulas can be long. */
function onCircles(trees: ReadonlyMap<number, IFormulaDependencyTreeJson>): IFormulaDependencyTreeJson[] {
  const order = new Map<number, number>();
  const lowest = new Map<number, number>();
  const open: number[] = [];
  const isOpen = new Set<number>();
  const found: IFormulaDependencyTreeJson[] = [];
  for (const start of trees.keys()) {
    if (order.has(start)) continue;
    const path: { id: number; next: number }[] = [{ id: start, next: 0 }];
    while (path.length > 0) {
      const step = path.at(-1)!;
      const { id } = step;
      if (step.next === 0) {
        order.set(id, order.size);
        lowest.set(id, order.get(id)!);
        open.push(id);
        isOpen.add(id);
      }
      const child = trees.get(id)?.children[step.next];
      step.next += 1;
      if (child !== undefined) {
        if (!trees.has(child)) continue;
        if (!order.has(child)) path.push({ id: child, next: 0 });
        else if (isOpen.has(child)) lowest.set(id, Math.min(lowest.get(id)!, order.get(child)!));
        continue;
      }
      path.pop();
      const parent = path.at(-1);
      if (parent) lowest.set(parent.id, Math.min(lowest.get(parent.id)!, lowest.get(id)!));
      if (lowest.get(id) !== order.get(id)) continue;
      const group = open.splice(open.lastIndexOf(id));
      for (const member of group) isOpen.delete(member);
      const isCircle = group.length > 1 || trees.get(id)!.children.includes(id);
      if (isCircle) for (const member of group) found.push(trees.get(member)!);
    }
  }
  return found;
}

const ERROR =
  /^#(?:N\/A|NULL!|DIV\/0!|VALUE!|REF!|NAME\?|NUM!|SPILL!|CALC!|BUSY!|GETTING_DATA|ERROR!|CYCLE!|CONNECT!|BLOCKED!)$/;

/** A cell of the engine as a value. A formula never leaves a cell blank: it shows 0. */
function sheetValue(cell: Nullable<ICellData>): SheetValue {
  const value = cell?.v ?? null;
  if (value === null) return 0;
  if (cell?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === 'TRUE';
  if (typeof value === 'string' && ERROR.test(value)) return { error: value };
  return value;
}

const SPILL_REASON = 'the cells that the answer would fill are not empty';

function sheetResult(
  sheet: Sheet,
  index: number,
  data: Calculation['data'],
  id: string,
  kept: KeptReasons,
): SheetResult {
  const values = data.unitData[id]?.[sheetId(index)];
  const spilled = data.arrayFormulaCellData[id]?.[sheetId(index)];
  const areas = data.arrayFormulaRange[id]?.[sheetId(index)];
  const calculated: Calculated[] = [];
  const notChecked: NotChecked[] = [];
  for (const cell of sheet.cells) {
    const { row, column, formula } = cell;
    if (formula === undefined) continue;
    const reason = kept.get(index)?.get(keyOf(row, column));
    if (reason !== undefined) notChecked.push({ cell, reason });
    else {
      const own = values?.getValue(row - 1, column - 1);
      const area = own?.v === '#SPILL!' ? undefined : areas?.[row - 1]?.[column - 1];
      const rows =
        area === undefined
          ? [[sheetValue(own)]]
          : spilledRows(spilled, row - 1, column - 1, area.endRow, area.endColumn);
      const why = reasonOf(own) ?? (own?.v === '#SPILL!' ? SPILL_REASON : undefined);
      calculated.push({ cell, rows, ...(why === undefined ? {} : { reason: why }) });
    }
  }
  return { sheet, calculated, notChecked };
}

function spilledRows(
  cells: Nullable<ObjectMatrix<Nullable<ICellData>>>,
  row: number,
  column: number,
  endRow: number,
  endColumn: number,
): SheetValue[][] {
  return Array.from({ length: endRow - row + 1 }, (_, r) =>
    Array.from({ length: endColumn - column + 1 }, (_, c) => sheetValue(cells?.getValue(row + r, column + c))),
  );
}
