/** What must hold for every call. Each check answers what is wrong, in words, or nothing. */
import { SETTINGS, type SettingDefinition } from '../../src/calculation/settings.ts';
import { type Answer, type Argument, type Cell, isCellError, isRows } from '../../src/functions/calling/cell.ts';
import { plainName } from '../../src/functions/calling/names.ts';
import { LONGEST_REASON } from '../../src/functions/calling/reasons.ts';
import { fromSi, toSi, UNITS, unitName } from '../../src/functions/calling/units.ts';
import type { WorksheetFunction } from '../../src/functions/define.ts';

/** Words of the code, none of a text for people. Units such as kPa are no identifiers. */
export const CODE_WORDS =
  /undefined|NaN|\bnull\b|Infinity|\[object|=>|\{\w*\}|\bat \w+ \(|TypeError|RangeError|\b(?!kPa\b|mPa\b)[a-z]{1,}[A-Z]\w*/;

/** What people typed stands in quotation marks and may be anything. */
const withoutQuotes = (text: string): string => text.replace(/"[^"]*"/g, '""');

const readable = (text: string): string | undefined => {
  if (text.length > LONGEST_REASON) return `a text of ${text.length} characters`;
  if (text === '') return 'an error without a reason';
  const found = CODE_WORDS.exec(withoutQuotes(text));
  return found ? `the word «${found[0]}» in «${text}»` : undefined;
};

const cellFault = (cell: unknown): string | undefined => {
  if (typeof cell === 'number') return Number.isFinite(cell) ? undefined : `the number ${cell}`;
  if (typeof cell === 'string' || typeof cell === 'boolean') return undefined;
  if (isCellError(cell)) return readable(cell.reason);
  return `a cell that is ${String(cell)}`;
};

const answerFault = (answer: Answer): string | undefined => {
  if (!Array.isArray(answer)) return cellFault(answer);
  if (answer.length === 0) return 'a table without rows';
  const width = answer[0]!.length;
  if (width === 0) return 'a table without columns';
  for (const row of answer) {
    if (!Array.isArray(row) || row.length !== width) return 'a table that is not rectangular';
    for (let c = 0; c < width; c++) {
      const fault = cellFault(row[c]);
      if (fault) return fault;
    }
  }
  return undefined;
};

const same = (a: unknown, b: unknown): boolean => {
  if (Array.isArray(a))
    return Array.isArray(b) && a.length === b.length && a.every((one, i) => same(one, (b as unknown[])[i]));
  if (isCellError(a)) return isCellError(b) && a.code === b.code && a.reason === b.reason;
  return Object.is(a, b);
};

const isMany = (given: Argument | undefined): boolean =>
  isRows(given) && (given.length > 1 || (given[0]?.length ?? 0) > 1);

/** A range that is not empty where the function takes one value a cell. */
const fillsColumn = (f: WorksheetFunction, args: readonly Argument[], i: number): boolean =>
  f.arguments[i]?.takes === 'cells' && isMany(args[i]) && (args[i] as Cell[][])[0]!.length > 0;

/** `check` says ok or what is doubtful where the cell has a value, and its reason where it has an error. */
const toldFault = (cell: unknown, told: unknown): string | undefined => {
  if (typeof told !== 'string')
    return isCellError(cell) && same(cell, told) ? undefined : `check answers ${String(told)}`;
  const isFine = told === 'ok' || told.startsWith('doubtful: ');
  if (isCellError(cell))
    return told === cell.reason && !isFine ? undefined : `check says «${told}» of «${cell.reason}»`;
  if (told === '') return cell === '' ? undefined : 'check says nothing of a value';
  if (!isFine) return `check says «${told}» of a value`;
  return told === 'ok' ? undefined : readable(told);
};

const checkFault = (f: WorksheetFunction, args: readonly Argument[], answer: Answer): string | undefined => {
  const told = f.check(args);
  const inColumn = args.some((_, i) => fillsColumn(f, args, i));
  if (!inColumn || !Array.isArray(answer)) {
    const cells = Array.isArray(answer) ? answer.flat() : [answer];
    return toldFault(cells.find(isCellError) ?? cells[0], told);
  }
  if (!Array.isArray(told) || told.length !== answer.length) return 'check has another number of rows';
  for (const [r, row] of answer.entries())
    for (const [c, cell] of row.entries()) {
      const fault = toldFault(cell, told[r]?.[c]);
      if (fault) return fault;
    }
  return undefined;
};

/** Cells of a column that are compared with calls of their own. */
const MOST_SINGLES = 6;

const columnFault = (f: WorksheetFunction, args: readonly Argument[], answer: Answer): string | undefined => {
  const isColumn = args.map((_, i) => fillsColumn(f, args, i));
  if (!isColumn.includes(true) || !Array.isArray(answer)) return undefined;
  const notes = { fromCells: isColumn };
  let count = 0;
  for (const [r, row] of answer.entries())
    for (const [c, cell] of row.entries()) {
      if (++count > MOST_SINGLES) return undefined;
      const single = args.map((one, i) => (isColumn[i] ? ((one as Cell[][])[r]?.[c] ?? null) : one));
      const alone = f.call(single, notes);
      if (!same(alone, cell))
        return `row ${r + 1}, column ${c + 1} alone is ${String(alone)}, in the column ${String(cell)}`;
    }
  return undefined;
};

/** Everything that must hold for any cells at all. */
export const callFault = (f: WorksheetFunction, args: readonly Argument[]): string | undefined => {
  const answer = f.call(args);
  const fault = answerFault(answer);
  if (fault) return fault;
  if (!same(f.call(args), answer)) return 'another answer the second time';
  f.explain(args);
  return checkFault(f, args, answer) ?? columnFault(f, args, answer);
};

const definitions: readonly SettingDefinition[] = Object.values(SETTINGS);

const toUs = (value: number, quantity: keyof typeof UNITS): number =>
  fromSi(toSi(value, quantity, 'metric'), quantity, 'us');

/** The same settings in US units. */
const settingsInUs = (given: Argument | undefined): Argument => {
  if (!isRows(given)) return 'us';
  return given.map((row) => {
    const name = plainName(String(row[0]));
    if (name === 'units') return ['units', 'us', null];
    const d = definitions.find((one) => one.name === name);
    if (d?.kind !== 'number' || typeof row[1] !== 'number') return row;
    return [row[0]!, toUs(row[1], d.quantity), row[2] ? unitName(d.quantity, 'us') : null];
  });
};

/** Quantities of the columns that the tables of our examples have. */
const COLUMNS: Readonly<Record<string, keyof typeof UNITS>> = {
  length: 'length',
  width: 'length',
  height: 'length',
  weight: 'mass',
  plaster: 'mass',
};

const tableInUs = (rows: readonly (readonly Cell[])[]): Cell[][] =>
  rows.map((row) =>
    row.map((cell, c) => {
      const of = COLUMNS[String(rows[0]![c])];
      return of && typeof cell === 'number' ? toUs(cell, of) : cell;
    }),
  );

/** The same call in US units: same sizes, other numbers. */
export const inUs = (f: WorksheetFunction, args: readonly Argument[]): Argument[] =>
  args.map((one, i) => {
    const { name, quantity } = f.arguments[i]!;
    if (name === 'settings') return settingsInUs(one);
    if (name === 'table' && isRows(one)) return tableInUs(one);
    if (!quantity) return one;
    const cell = (x: Cell): Cell => (typeof x === 'number' ? toUs(x, quantity) : x);
    return isRows(one) ? one.map((row) => row.map(cell)) : cell(one as Cell);
  });

/** Share of a number that the roundings of two ways may come to; cells of one row can be sums and differences of each other. */
const ROUNDING = 1e-9;

const quantities = Object.keys(UNITS) as (keyof typeof UNITS)[];

/** Quantities that a cell of a table may have: those of the unit that stands in its row, else any. */
const quantitiesOf = (metric: readonly unknown[], us: readonly unknown[]): (keyof typeof UNITS)[] => {
  const named = quantities.filter((q) =>
    metric.some((cell, i) => cell === unitName(q, 'metric') && us[i] === unitName(q, 'us')),
  );
  return named.length ? named : quantities;
};

const isConverted = (metric: number, us: number, quantity: keyof typeof UNITS, size: number): boolean => {
  const expected = toUs(metric, quantity);
  const difference = toUs(metric, quantity) - toUs(0, quantity);
  const room = ROUNDING * Math.max(Math.abs(expected), toUs(size, quantity) - toUs(0, quantity));
  return Math.abs(us - expected) <= room || Math.abs(us - difference) <= room;
};

const largest = (cells: readonly unknown[]): number =>
  Math.max(0, ...cells.map((cell) => (typeof cell === 'number' ? Math.abs(cell) : 0)));

const rowFault = (
  metric: readonly unknown[],
  us: readonly unknown[],
  fixed: keyof typeof UNITS | undefined,
  size: number,
): string | undefined => {
  const allowed = fixed ? [fixed] : quantitiesOf(metric, us);
  for (const [i, cell] of metric.entries()) {
    const other = us[i];
    if (typeof cell !== typeof other || isCellError(cell) !== isCellError(other))
      return `${String(cell)} against ${String(other)}`;
    if (typeof cell !== 'number' || Object.is(cell, other)) continue;
    if (!allowed.some((q) => isConverted(cell, other as number, q, size))) return `${cell} against ${String(other)}`;
  }
  return metric.length === us.length ? undefined : 'rows of other lengths';
};

const rowsOf = (answer: Answer): readonly (readonly unknown[])[] => (Array.isArray(answer) ? answer : [[answer]]);

const usFaultAt = (f: WorksheetFunction, args: readonly Argument[]): string | undefined => {
  const metric = rowsOf(f.call(args));
  const us = rowsOf(f.call(inUs(f, args)));
  if (metric.length !== us.length) return `${metric.length} rows against ${us.length}`;
  const fixed =
    f.result.kind === 'number' ? f.result.quantity : f.result.kind === 'table' ? f.result.quantity : undefined;
  for (const [r, row] of metric.entries()) {
    // A table of one quantity holds coordinates: what is 0 but for rounding is as exact as the others.
    const fault = rowFault(row, us[r]!, fixed, largest(fixed ? metric.flat() : row));
    if (fault) return `row ${r + 1}: ${fault}`;
  }
  return undefined;
};

/** All numbers with a unit a little larger or smaller. */
const moved = (f: WorksheetFunction, args: readonly Argument[], by: number): Argument[] =>
  args.map((one, i) => {
    if (!f.arguments[i]?.quantity) return one;
    const cell = (x: Cell): Cell => (typeof x === 'number' ? x * by : x);
    return isRows(one) ? one.map((row) => row.map(cell)) : cell(one as Cell);
  });

/** How far to both sides of a step the two ways are compared. */
const BESIDE = 1e-7;

/**
 * Metric and US units come to the same thing. Where they do not, the call may stand right on a step, such as from one mix to two, that
 * rounding lets one of them cross: then they agree a little to both sides of it.
 */
export const usFault = (f: WorksheetFunction, args: readonly Argument[]): string | undefined => {
  const fault = usFaultAt(f, args);
  if (!fault) return undefined;
  const below = usFaultAt(f, moved(f, args, 1 - BESIDE));
  const above = usFaultAt(f, moved(f, args, 1 + BESIDE));
  return below || above ? fault : undefined;
};
