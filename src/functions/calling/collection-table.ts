/** A table of specimens, row by row: one place for the sheet function and for files of any length. */
import { type CollectionJacket, collectionJacket } from '../../calculation/plans/collection.ts';
import { withChanges } from '../../calculation/plans/with-changes.ts';
import { amount, type Fault, isFault, type Quantity, type Result, wrong } from '../../calculation/result.ts';
import type { Given, Settings } from '../../calculation/settings.ts';
import { counted, Refusal } from './arguments.ts';
import { type Cell, type CellError, isCellError } from './cell.ts';
import { COLUMN_NAMES, type CollectionInput, type ColumnName, isBlankRow, readRow } from './collection-inputs.ts';
import { columnName, findColumns, isHeader } from './header.ts';
import { clipped, errorOf, reasonOf } from './reasons.ts';
import type { TableCell } from './tables.ts';
import type { UnitSystem } from './units.ts';

/** Order of the columns where no row names them. */
const FIXED_ORDER: readonly ColumnName[] = ['length', 'width', 'height', 'weight', 'padding'];

/** Columns that every table has. The weight may come from volume and material instead. */
const SIZES: readonly ColumnName[] = ['length', 'width', 'height'];

/** Columns that come out, after those repeated from the left, before the note. */
const RESULTS: readonly { readonly name: string; readonly of: keyof CollectionJacket; readonly quantity: Quantity }[] =
  [
    { name: 'layers', of: 'layers', quantity: 'count' },
    { name: 'shell area', of: 'shellArea', quantity: 'area' },
    { name: 'plaster', of: 'plaster', quantity: 'mass' },
    { name: 'water', of: 'water', quantity: 'mass' },
    { name: 'mixes', of: 'mixes', quantity: 'count' },
    { name: 'cloth', of: 'cloth', quantity: 'clothLength' },
    { name: 'felt sheets', of: 'feltSheets', quantity: 'count' },
    { name: 'foam sheets', of: 'foamSheets', quantity: 'count' },
    { name: 'sealer', of: 'sealer', quantity: 'liquidVolume' },
    { name: 'bolts', of: 'bolts', quantity: 'count' },
    { name: 'weight', of: 'weight', quantity: 'mass' },
    { name: 'wet weight', of: 'wetWeight', quantity: 'mass' },
    { name: 'margin', of: 'margin', quantity: 'length' },
    { name: 'tip angle', of: 'tipAngle', quantity: 'angle' },
    { name: 'safety factor', of: 'safetyFactor', quantity: 'ratio' },
    { name: 'rib height', of: 'ribHeight', quantity: 'length' },
    { name: 'crew', of: 'crew', quantity: 'count' },
  ];

const PADDING = 'padding';
const NOTE = 'note';

/** Settings kept for rows that say the same. More than this many are forgotten, so that a table of any length takes no more room. */
const MOST_KEPT = 500;

export interface CollectionTable {
  /** Names of the columns that come out. */
  readonly header: readonly Cell[];
  /** Whether the first row named the columns, so that it is no specimen. */
  readonly named: boolean;
  /** Which columns are read as numbers and words. All others are only repeated or left alone. */
  readonly inputs: ReadonlySet<number>;
  /** What comes out for one row. The note is last and is '' where all is well. */
  readonly row: (cells: readonly Cell[]) => TableCell[];
  /** What comes out for a row that cannot be calculated. */
  readonly refused: (cells: readonly Cell[], error: CellError) => TableCell[];
}

const isNamed = (first: readonly Cell[]): boolean =>
  isHeader(first) || first.some((cell) => [...SIZES, 'weight'].includes(columnName(cell)));

/** The fault of a header that lacks a column. */
const missing = (name: ColumnName, header: readonly Cell[]): Fault => {
  const near = header.find((cell) => typeof cell === 'string' && columnName(cell).includes(name));
  const hint = near ? `; name it so where it says "${String(near).trim()}"` : '';
  const instead = name === 'weight' ? ', nor both volume and material' : '';
  return wrong(
    'table',
    `has no column named ${name}${instead}${hint || '; name the columns length, width, height and weight'}`,
  );
};

const columnsOf = (first: readonly Cell[], named: boolean): Result<ReadonlyMap<ColumnName, number>> => {
  if (!named) {
    if (first.length < FIXED_ORDER.length - 1 || first.length > FIXED_ORDER.length)
      return wrong(
        'table',
        `has ${counted(first.length, 'column')} and no row of names; give length, width, height, weight and perhaps padding, or put names in the first row`,
      );
    return new Map(first.map((_, i) => [FIXED_ORDER[i]!, i]));
  }
  const found = findColumns(first, COLUMN_NAMES);
  if (found instanceof Refusal) return wrong('', found.reason);
  for (const name of SIZES) if (!found.has(name)) return missing(name, first);
  if (!found.has('weight') && !(found.has('volume') && found.has('material'))) return missing('weight', first);
  return found;
};

/**
 * Reads the first row of a table of specimens.
 *
 * @param first the first row: names of columns, or the first specimen
 * @param settings in force; the padding of a row comes from the row
 * @param system units of the table
 * @returns how the rows are calculated, or the fault of the table as a whole
 */
export const collectionTable = (
  first: readonly Cell[],
  settings: Settings,
  system: UnitSystem,
): Result<CollectionTable> => {
  const named = isNamed(first);
  const columns = columnsOf(first, named);
  if (isFault(columns)) return columns;
  const inputs = new Set(columns.values());
  const repeated = named ? first.map((_, i) => i).filter((i) => i < columns.get('length')! && !inputs.has(i)) : [];
  const settingsFor = settingsByRow(settings);

  const leftOf = (cells: readonly Cell[]): TableCell[] => repeated.map((i) => cells[i] ?? null);
  const refused = (cells: readonly Cell[], error: CellError): TableCell[] => [
    ...leftOf(cells),
    '',
    ...RESULTS.map(() => error),
    error.reason,
  ];
  const row = (cells: readonly Cell[]): TableCell[] => {
    if (isBlankRow(cells, columns)) return [...leftOf(cells).map(blankZero), '', ...RESULTS.map(() => ''), ''];
    const input = readRow(cells, columns, settings, system);
    if (isCellError(input)) return refused(cells, input);
    const own = settingsFor(input);
    if (isFault(own)) return refused(cells, errorOf(own, system));
    return [...leftOf(cells), ...resultCells(collectionJacket(input.specimen, own), system)];
  };
  return {
    header: [...repeated.map((i) => first[i]!), PADDING, ...RESULTS.map(({ name }) => name), NOTE],
    named,
    inputs,
    row,
    refused,
  };
};

/** In a blank row a 0 beside it is a blank that the host handed over so. */
const blankZero = (cell: TableCell): TableCell => (cell === 0 ? null : cell);

const resultCells = (jacket: CollectionJacket, system: UnitSystem): TableCell[] => {
  const cells: TableCell[] = [jacket.padding];
  const reasons = new Set<string>();
  for (const { of, quantity } of RESULTS) {
    const value = jacket[of];
    if (isFault(value)) {
      cells.push(value);
      reasons.add(reasonOf(value, system));
    } else cells.push(typeof value === 'number' ? amount(value, quantity) : value);
  }
  cells.push(clipped([...reasons].join('; ')));
  return cells;
};

/** Settings with what a row says of its own, each combination worked out once. */
const settingsByRow = (settings: Settings): ((input: CollectionInput) => Result<Settings>) => {
  const kept = new Map<string, Result<Settings>>();
  return ({ padding, shape, reliefFactor }) => {
    const key = `${padding}|${shape ?? ''}|${reliefFactor ?? ''}`;
    const known = kept.get(key);
    if (known) return known;
    const changes: Given = { padding, ...(shape && { shape }), ...(reliefFactor && { reliefFactor }) };
    const own = withChanges(settings, changes);
    if (kept.size >= MOST_KEPT) kept.clear();
    kept.set(key, own);
    return own;
  };
};
