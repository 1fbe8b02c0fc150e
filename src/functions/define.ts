/**
 * What a worksheet function is, and how a call of it runs.
 *
 * One definition gives everything that the faces of the product show or do: metadata, argument checks with their reasons, spilling,
 * units in and out, help, examples. A call goes one way: raw cells → settings → checks → SI → calculation → units → cells. A reason stays
 * data until the last step.
 */
import { Fault, type Quantity, type Result } from '../calculation/result.ts';
import type { Basis, SettingKey, Settings } from '../calculation/settings.ts';
import { type ArgumentKind, counted, Refusal } from './calling/arguments.ts';
import {
  type Answer,
  type Argument,
  type CallNotes,
  type Cell,
  CellError,
  isCellError,
  isRows,
  type OutCell,
  type Rows,
} from './calling/cell.ts';
import { METRIC, type ReadSettings, readSettings } from './calling/read-settings.ts';
import { clipped, errorOf, valueError } from './calling/reasons.ts';
import { type TableCell, tableCells } from './calling/tables.ts';
import { fromSi, type UnitSystem, unitName } from './calling/units.ts';

/** Topics in the order in which people meet them. */
export const TOPICS = [
  'size',
  'shell',
  'mixing',
  'cloth',
  'weight',
  'feet',
  'strength',
  'handling',
  'jobs',
  'about',
] as const;
export type Topic = (typeof TOPICS)[number];

/** How a number can hurt somebody who trusts it too far. Faces show the cautions of that kind beside it. */
export type Hurt = 'dust' | 'heat' | 'lifting' | 'solvent' | 'stability' | 'strength';

/** A limit within which the number can be relied on. `holds` tells for a call; without it the limit is only told. */
export interface Limit<V = unknown> {
  readonly text: string;
  readonly holds?: (values: V, settings: Settings) => boolean;
}

export type ResultKind =
  | { readonly kind: 'number'; readonly quantity: Quantity; readonly what: string; readonly asTyped?: boolean }
  | { readonly kind: 'text' | 'flag' | 'numberOrText'; readonly what: string }
  | { readonly kind: 'table'; readonly what: string; readonly header: boolean; readonly quantity?: Quantity };

/** An example that the tests run: arguments as cells, and what comes out. */
export interface Example {
  readonly args: readonly Argument[];
  readonly value: OutCell | readonly (readonly OutCell[])[];
}

// biome-ignore lint/suspicious/noExplicitAny: the one place where argument kinds of every type meet
type Kinds = Readonly<Record<string, ArgumentKind<any>>>;
type ValuesOf<A extends Kinds> = { readonly [K in keyof A]: A[K] extends ArgumentKind<infer T> ? T : never };

/** What `run` may answer. */
export type RunResult = Result<number | string | boolean | readonly (readonly TableCell[])[]>;

interface Texts {
  /** Name without the namespace; also the id in the metadata. Never changes once released. */
  readonly id: string;
  readonly topic: Topic;
  /** The question that it answers, in plain words. */
  readonly question: string;
  /** One sentence for completion lists, at most 128 characters. */
  readonly description: string;
  /** The formula in words and signs. */
  readonly equation: string;
  /** The same as LaTeX, one formula a line, for pages that can set formulas. */
  readonly math?: string;
  readonly result: ResultKind;
  readonly examples: readonly [Example, ...Example[]];
  readonly basis: Basis;
  readonly source: string;
  /** Further remarks, one sentence each. */
  readonly remarks?: readonly string[];
  readonly related?: readonly string[];
  readonly hurts?: readonly Hurt[];
}

export interface Definition<A extends Kinds> extends Texts {
  readonly arguments: A;
  /** False where no unit and no default matters. */
  readonly settings: boolean;
  readonly limits?: readonly Limit<ValuesOf<A>>[];
  /** The calculation: values in SI, result in SI. */
  readonly run: (values: ValuesOf<A>, settings: Settings, system: UnitSystem, notes?: CallNotes) => RunResult;
}

export interface NamedArgument extends Omit<ArgumentKind<unknown>, 'read'> {
  readonly name: string;
  /** What it is, with its units: for metadata and help. */
  readonly description: string;
}

/** What a call used, for "this cell". */
export interface Explanation {
  readonly system: UnitSystem;
  /** Arguments as they were read, in SI where they have a unit. */
  readonly values: Readonly<Record<string, unknown>>;
  readonly settings: Settings;
  readonly used: readonly SettingKey[];
  readonly doubts: readonly string[];
}

export interface WorksheetFunction extends Texts {
  readonly arguments: readonly NamedArgument[];
  readonly takesSettings: boolean;
  readonly limits: readonly Limit[];
  /** Calculates. Never throws for any cells. */
  call(args: readonly Argument[], notes?: CallNotes): Answer;
  /** `ok`, the reason why the call fails, or what is doubtful; one text a cell on ranges. */
  check(args: readonly Argument[], notes?: CallNotes): Answer;
  /** What one single call used; undefined for columns and for calls that fail. */
  explain(args: readonly Argument[], notes?: CallNotes): Explanation | undefined;
}

const SETTINGS_ARGUMENT: NamedArgument = {
  name: 'settings',
  description: '"metric", "us", or a range of setting names and values',
  what: 'settings',
  takes: 'range',
  optional: true,
  zeroAllowed: true,
  type: 'any',
  schema: undefined as never,
};

/** Units of a quantity that are worth naming. */
const unitWords = (quantity: Quantity | undefined): string => {
  if (!quantity) return '';
  const [metric, us] = [unitName(quantity, 'metric'), unitName(quantity, 'us')];
  return metric === us ? `, ${metric}` : `, ${metric} (us: ${us})`;
};

const blankOut = '';

const isBlankCell = (cell: Cell): boolean => cell === null || cell === '';

/** What one call comes to before single cells are looked at. */
interface Prepared {
  readonly read: ReadSettings;
  /** For each argument: rows to take one cell from, or the same for all cells. */
  readonly columns: readonly (Rows | undefined)[];
  readonly fixed: readonly Argument[];
  readonly shape: { readonly rows: number; readonly columns: number } | undefined;
}

const sizeWords = (rows: Rows, other: Rows): string => {
  const [r, c] = [rows.length, rows[0]!.length];
  if (c === other[0]!.length) return counted(r, 'row');
  if (r === other.length) return counted(c, 'column');
  return `${counted(r, 'row')} and ${counted(c, 'column')}`;
};

/** A function of the registry from its definition. */
export const define = <const A extends Kinds>(definition: Definition<A>): WorksheetFunction => {
  const { arguments: kinds, settings: takesSettings, run, limits = [], ...texts } = definition;
  const names = Object.keys(kinds);
  const list = Object.values(kinds);
  const repeats = list.at(-1)?.repeating === true;
  const most = repeats ? Number.POSITIVE_INFINITY : list.length + (takesSettings ? 1 : 0);
  const { result } = texts;

  const prepare = (args: readonly Argument[]): Prepared | CellError => {
    if (args.length > most)
      return valueError(`${texts.id} takes at most ${counted(most, 'argument')}, not ${args.length}`);
    const read = takesSettings ? readSettings(args[list.length]) : METRIC;
    if (read instanceof Fault) {
      const given = args[list.length];
      const only = isRows(given) ? given.flat().find(isCellError) : given;
      return isCellError(only) ? passed(only, 'settings') : errorOf(read, 'metric');
    }
    const columns: (Rows | undefined)[] = [];
    const fixed: Argument[] = [];
    let first: { rows: Rows; name: string } | undefined;
    for (const [i, kind] of list.entries()) {
      const given = isEmpty(args[i]) ? null : args[i]!;
      columns.push(undefined);
      if (kind.takes === 'range' || !isRows(given)) {
        fixed.push(kind.repeating ? (args.slice(i) as unknown as Argument) : given);
        continue;
      }
      if (given.length === 1 && given[0]!.length === 1) {
        fixed.push(given[0]![0]!);
        continue;
      }
      fixed.push(null);
      if (kind.takes === 'one')
        return valueError(
          `${names[i]} takes one value, not ${counted(given.length, 'row')} of ${counted(given[0]!.length, 'cell')}; point at one cell`,
        );
      columns[i] = given;
      if (!first) first = { rows: given, name: names[i]! };
      else if (first.rows.length !== given.length || first.rows[0]!.length !== given[0]!.length)
        return valueError(
          `${first.name} has ${sizeWords(first.rows, given)}, ${names[i]} has ${sizeWords(given, first.rows)}; give ranges of one size`,
        );
    }
    return { read, columns, fixed, shape: first && { rows: first.rows.length, columns: first.rows[0]!.length } };
  };

  /** A row is blank if all its cells are blank or 0 and one of them stands where 0 is not allowed. */
  const isBlankRow = (
    cells: readonly Argument[],
    { columns, shape }: Prepared,
    notes: CallNotes | undefined,
  ): boolean => {
    let strict = false;
    for (let i = 0; i < list.length; i++) {
      const kind = list[i]!;
      if (kind.takes !== 'cells') continue;
      if (shape ? !columns[i] : notes?.fromCells && notes.fromCells[i] !== true) continue;
      const cell = cells[i] as Cell;
      if (!isBlankCell(cell) && cell !== 0) return false;
      strict ||= !kind.zeroAllowed;
    }
    return strict;
  };

  const blank = (i: number, system: UnitSystem): CellError => {
    const kind = list[i]!;
    const unit = kind.quantity && unitWords(kind.quantity) ? ` in ${unitName(kind.quantity, system)}` : '';
    return valueError(`${names[i]} is blank; type ${kind.what}${unit}`);
  };

  /** The values of one row for the calculation, `undefined` for a blank row, or the error that it gives. */
  const valuesOf = (
    cells: readonly Argument[],
    p: Prepared,
    notes?: CallNotes,
  ): ValuesOf<A> | CellError | undefined => {
    if (isBlankRow(cells, p, notes)) return undefined;
    const values: Record<string, unknown> = {};
    for (let i = 0; i < list.length; i++) {
      const kind = list[i]!;
      const cell = cells[i]!;
      if (kind.repeating) {
        values[names[i]!] = cell;
        continue;
      }
      if (isCellError(cell)) return passed(cell, names[i]!);
      if (isMissing(cell)) {
        if (!kind.optional) return blank(i, p.read.system);
        continue;
      }
      if (isRows(cell) && kind.schema.def.type === 'array' && !isTable(kind)) {
        const bad = cell.flat().find(isCellError);
        if (bad) return passed(bad, names[i]!);
      }
      const value = kind.read(cell, names[i]!, p.read.system);
      if (value instanceof Refusal) return valueError(value.reason);
      values[names[i]!] = value;
    }
    return values as ValuesOf<A>;
  };

  /** Puts the cells of one row of a column call into `cells`, where what is fixed stands already. */
  const takeCells = ({ columns }: Prepared, r: number, c: number, cells: Argument[]): void => {
    for (let i = 0; i < columns.length; i++) {
      const column = columns[i];
      if (column) cells[i] = column[r]?.[c] ?? null;
    }
  };

  const out = (values: ValuesOf<A>, { settings, system }: ReadSettings, notes?: CallNotes): Answer => {
    const answer = run(values, settings, system, notes);
    if (typeof answer === 'number') {
      if (result.kind !== 'number') return answer;
      const shown = result.asTyped ? answer : fromSi(answer, result.quantity, system);
      return shown > -Infinity && shown < Infinity
        ? shown
        : new CellError('#NUM!', 'the result is too large to be a number');
    }
    if (answer instanceof Fault) return errorOf(answer, system);
    if (typeof answer === 'string' || typeof answer === 'boolean') return answer;
    return tableCells(answer, system, result.kind === 'table' ? result.quantity : undefined);
  };

  const doubtsOf = (values: ValuesOf<A>, settings: Settings): string[] =>
    limits.filter(({ holds }) => holds && !holds(values, settings)).map(({ text }) => text);

  const tell = (values: ValuesOf<A>, read: ReadSettings): OutCell => {
    const answer = out(values, read);
    if (isCellError(answer)) return answer.reason || `the result is the error ${answer.code}`;
    const bad = isRows(answer) ? answer.flat().find(isCellError) : undefined;
    const doubts = doubtsOf(values, read.settings);
    if (bad) return bad.reason;
    return doubts.length ? clipped(`doubtful: this holds for ${doubts.join('; and for ')}`) : 'ok';
  };

  /** Runs one row after another through `each`. */
  const overRows = (
    args: readonly Argument[],
    notes: CallNotes | undefined,
    each: (values: ValuesOf<A> | CellError | undefined, read: ReadSettings) => Answer,
  ): Answer => {
    const p = prepare(args);
    if (isCellError(p)) return each(p, METRIC);
    if (!p.shape) return each(valuesOf(p.fixed, p, notes), p.read);
    const rows: OutCell[][] = [];
    const cells = [...p.fixed];
    for (let r = 0; r < p.shape.rows; r++) {
      const row: OutCell[] = [];
      for (let c = 0; c < p.shape.columns; c++) {
        takeCells(p, r, c, cells);
        row.push(each(valuesOf(cells, p), p.read) as OutCell);
      }
      rows.push(row);
    }
    return rows;
  };

  return {
    ...texts,
    arguments: [
      ...list.map(({ read: _, ...kind }, i) => ({
        ...kind,
        name: names[i]!,
        description: `${kind.what}${unitWords(kind.quantity)}`,
      })),
      ...(takesSettings ? [SETTINGS_ARGUMENT] : []),
    ],
    takesSettings,
    limits: limits as readonly Limit[],
    call: (args, notes) =>
      overRows(args, notes, (values, read) =>
        values === undefined ? blankOut : isCellError(values) ? values : out(values, read, notes),
      ),
    check: (args, notes) =>
      overRows(args, notes, (values, read) =>
        values === undefined ? blankOut : isCellError(values) ? values.reason : tell(values, read),
      ),
    explain: (args, notes) => {
      const p = prepare(args);
      if (isCellError(p) || p.shape) return undefined;
      const values = valuesOf(p.fixed, p, notes);
      if (values === undefined || isCellError(values)) return undefined;
      const used = new Set<SettingKey>();
      const { settings, system } = p.read;
      const watched = new Proxy(settings, {
        get: (target, key) => {
          if (key !== 'given') used.add(key as SettingKey);
          return target[key as SettingKey];
        },
      });
      run(values, watched, system);
      return {
        system,
        values: values as Readonly<Record<string, unknown>>,
        settings,
        used: [...used],
        doubts: doubtsOf(values, settings),
      };
    },
  };
};

/** An error that comes in goes out as it is; its own reason stays with it. */
const passed = (error: CellError, name: string): CellError =>
  error.reason ? error : new CellError(error.code, clipped(`${name} is the error ${error.code}; mend that cell first`));

/** Left out, or a range without cells. */
const isEmpty = (given: Argument | undefined): boolean =>
  given === undefined || given === null || (isRows(given) && !given[0]?.length);

const isMissing = (given: Argument): boolean => {
  if (!isRows(given)) return isBlankCell(given as Cell);
  return (given as Rows).every((row) => row.every(isBlankCell));
};

/** Tables are read by the calculation cell by cell, errors included. */
const isTable = (kind: ArgumentKind<unknown>): boolean => kind.quantity === undefined;
