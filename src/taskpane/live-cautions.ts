/** Which limits the numbers of the active cell pass, or those of the plan or the row that it lies in. */

import { PLAN_ROWS } from '../calculation/plans/plan-rows.ts';
import type { Quantity } from '../calculation/result.ts';
import { DEFAULT_SETTINGS, type Settings } from '../calculation/settings.ts';
import { type Answer, type Cell, isCellError, isRows, type Rows } from '../functions/calling/cell.ts';
import { fromSi, toSi, type UnitSystem } from '../functions/calling/units.ts';
import type { WorksheetFunction } from '../functions/define.ts';
import { type Figures, type LiveCaution, liveCautions, type Say } from '../texts/live-cautions.ts';
import { figuresOf, planFigures } from '../texts/live-figures.ts';
import type { Account, Answered } from './account.ts';
import { estimate } from './numbers.ts';
import type { ActiveCell } from './sheet-host.ts';

/** Cautions about one plan, one row or one number. */
export interface LiveCautions {
  /** What they are about, where a cell shows several: `felt`, `row 3 of the table`. */
  readonly of: string;
  /** The function that gave the numbers. */
  readonly id: string;
  readonly cautions: readonly LiveCaution[];
  /** What the plan itself advises, or the note of the row. */
  readonly advice: string;
}

/** Functions whose tables hold plans. */
export const PLAN_TABLES: ReadonlySet<string> = new Set(['PLAN', 'COMPARE', 'COLLECTION']);

const QUANTITIES: ReadonlyMap<string, Quantity | null> = new Map(
  PLAN_ROWS.map(({ label, quantity }) => [label, quantity]),
);

const sayIn =
  (system: UnitSystem): Say =>
  (value, quantity) =>
    estimate(fromSi(value, quantity, system), quantity, system).replace(' (ratio)', '');

interface Read {
  readonly figures: Figures;
  readonly advice: string;
}

/** Values of a plan or a row by their names, each with its cell in the units of the sheet. */
const readPlan = (
  entries: readonly (readonly [name: Cell, cell: Cell | undefined])[],
  system: UnitSystem,
  specimenWeight?: number,
): Read => {
  const named = new Map<string, unknown>();
  const reasons = new Map<string, string>();
  let advice = '';
  for (const [name, cell] of entries) {
    if (typeof name !== 'string' || cell === undefined) continue;
    const quantity = QUANTITIES.get(name);
    if (isCellError(cell)) {
      // A wrong input is told by the function itself.
      if (cell.code === '#N/A' && cell.reason) reasons.set(name, cell.reason);
    } else if ((name === 'advice' || name === 'note') && typeof cell === 'string') advice = cell;
    else if (typeof cell === 'number' && quantity) named.set(name, toSi(cell, quantity, system));
    else named.set(name, cell);
  }
  return { figures: planFigures(named, reasons, specimenWeight), advice };
};

interface Table {
  readonly id: string;
  readonly rows: Rows;
  readonly system: UnitSystem;
  readonly settings: Settings;
  readonly specimenWeight: number | undefined;
}

const column = ({ id, rows, system, settings, specimenWeight }: Table, at: number, of: string): LiveCautions => {
  const { figures, advice } = readPlan(
    rows.slice(1).map((row) => [row[0]!, row[at]] as const),
    system,
    specimenWeight,
  );
  return { of, id, advice, cautions: liveCautions(figures, settings, sayIn(system)) };
};

const rowCautions = ({ id, rows, system, settings }: Table, at: number): LiveCautions => {
  const header = rows[0]!;
  const { figures, advice } = readPlan(
    header.map((name, i) => [name, rows[at]![i]] as const),
    system,
  );
  return { of: `row ${at} of the table`, id, advice, cautions: liveCautions(figures, settings, sayIn(system)) };
};

/** Most rows that are named one by one. Our own choice. */
const MOST_NAMED = 12;

/** For the whole of a collection: of each kind of caution the worst, with the rows that it is about. */
const collectionCautions = (table: Table): LiveCautions => {
  const worst = new Map<string, { caution: LiveCaution; rows: number[] }>();
  for (let at = 1; at < table.rows.length; at++)
    for (const caution of rowCautions(table, at).cautions) {
      const before = worst.get(caution.about);
      const rows = [...(before?.rows ?? []), at];
      worst.set(caution.about, {
        caution: before && before.caution.excess >= caution.excess ? before.caution : caution,
        rows,
      });
    }
  const cautions = [...worst.values()].map(({ caution, rows }): LiveCaution => {
    const listed = rows.slice(0, MOST_NAMED).join(', ');
    const more = rows.length > MOST_NAMED ? ` and ${rows.length - MOST_NAMED} more` : '';
    return {
      ...caution,
      figure: `${caution.figure} ${rows.length === 1 ? `That is row ${listed}` : `That is the worst of ${rows.length} rows: ${listed}${more}`}.`,
    };
  });
  return { of: 'the whole table', id: table.id, advice: '', cautions };
};

const ofTable = (table: Table, { spillRow }: ActiveCell): readonly LiveCautions[] => {
  if (table.id === 'PLAN') return [column(table, 1, 'this plan')];
  if (table.id === 'COMPARE') return [column(table, 1, 'felt'), column(table, 2, 'foam')];
  return [spillRow > 0 && spillRow < table.rows.length ? rowCautions(table, spillRow) : collectionCautions(table)];
};

/** The answer of a call in SI, as far as its unit is known. */
const resultInSi = ({ result }: WorksheetFunction, answer: Answer, system: UnitSystem): unknown => {
  if (isCellError(answer)) return undefined;
  if (isRows(answer)) {
    const quantity = result.kind === 'table' && !result.header ? result.quantity : undefined;
    return quantity
      ? answer.map((row) => row.map((cell) => (typeof cell === 'number' ? toSi(cell, quantity, system) : cell)))
      : answer;
  }
  return typeof answer === 'number' && result.kind === 'number' ? toSi(answer, result.quantity, system) : answer;
};

const ofCall = (f: WorksheetFunction, { answer, system, told }: Answered): LiveCautions => {
  const settings = told?.settings ?? DEFAULT_SETTINGS;
  const figures = figuresOf(
    {
      id: f.id,
      ...(told && { values: told.values }),
      result: resultInSi(f, answer, system),
      ...(isCellError(answer) && answer.code === '#N/A' && { noAnswer: answer.reason }),
    },
    settings,
  );
  return { of: 'this number', id: f.id, advice: '', cautions: liveCautions(figures, settings, sayIn(system)) };
};

/** The padding of a plan stands in its rows, the weight of the specimen in its arguments. */
const specimenWeightOf = ({ told }: Answered): number | undefined =>
  typeof told?.values.weight === 'number' ? told.values.weight : undefined;

/**
 * The cautions for one call in the active cell.
 *
 * @param spilled the table as the sheet shows it, where the call could not be followed
 */
export const liveCautionsOf = ({ f, answered }: Account, cell: ActiveCell, spilled?: Rows): readonly LiveCautions[] => {
  if (!f?.hurts?.length || !answered) return [];
  if (!PLAN_TABLES.has(f.id)) return [ofCall(f, answered)];
  const rows = isRows(answered.answer) ? answered.answer : spilled;
  if (!rows) return [];
  return ofTable(
    {
      id: f.id,
      rows,
      system: answered.system,
      settings: answered.told?.settings ?? DEFAULT_SETTINGS,
      specimenWeight: specimenWeightOf(answered),
    },
    cell,
  );
};
