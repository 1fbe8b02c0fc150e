/** What is read of one specimen from a row of a table: its columns, strictly, each reason with the name of its column. */
import { paddingChoice } from '../../calculation/cloth/padding-choice.ts';
import type { Specimen } from '../../calculation/plans/specimen.ts';
import { isFault } from '../../calculation/result.ts';
import { type Padding, SETTINGS, type Settings, type Shape } from '../../calculation/settings.ts';
import { specimenWeight } from '../../calculation/size/specimen-weight.ts';
import { densityByName } from '../density.ts';
import { type ArgumentKind, flag, numberOrText, quantity, Refusal, word } from './arguments.ts';
import { type Cell, CellError, isCellError } from './cell.ts';
import { HEIGHT, LENGTH, SPECIMEN_WEIGHT, WIDTH } from './common.ts';
import { clipped, errorOf, valueError } from './reasons.ts';
import { type UnitSystem, unitName } from './units.ts';

/** Columns that are read, by name. The first four must be there. */
export const COLUMNS = {
  length: LENGTH,
  width: WIDTH,
  height: HEIGHT,
  weight: SPECIMEN_WEIGHT,
  padding: word(SETTINGS.padding.words, 'felt or foam'),
  shape: word(SETTINGS.shape.words, 'the shape'),
  'surface area': quantity('area', 'the surface of the specimen'),
  'relief factor': quantity('ratio', 'a factor on its surface'),
  fragile: flag('TRUE if it is fragile, else FALSE'),
  relief: flag('high or low', 'high', 'low'),
  volume: quantity('bodyVolume', 'the body volume'),
  material: numberOrText('density', 'a material such as sandstone, or a density'),
} as const;

export type ColumnName = keyof typeof COLUMNS;

export const COLUMN_NAMES = Object.keys(COLUMNS) as readonly ColumnName[];

/** What a row says of its specimen, in SI. What it does not say is left out. */
export interface CollectionInput {
  readonly specimen: Specimen;
  readonly padding: Padding;
  readonly shape?: Shape;
  readonly reliefFactor?: number;
}

type ValueOf<N extends ColumnName> = (typeof COLUMNS)[N] extends ArgumentKind<infer T> ? T : never;

/** 0 is as good as blank here: some hosts hand a blank over as 0. */
const isNothing = (cell: Cell): boolean => cell === null || cell === '' || cell === 0;

/** A tick box that is not ticked says nothing about whether there is a specimen. */
const TICKED: ReadonlySet<ColumnName> = new Set(['fragile', 'relief']);

/** Whether a row has no specimen. */
export const isBlankRow = (cells: readonly Cell[], columns: ReadonlyMap<ColumnName, number>): boolean => {
  for (const [name, i] of columns) {
    const cell = cells[i] ?? null;
    if (!isNothing(cell) && !(cell === false && TICKED.has(name))) return false;
  }
  return true;
};

const blank = (name: ColumnName, system: UnitSystem): CellError => {
  const { what, quantity: of } = COLUMNS[name];
  return valueError(`${name} is blank; type ${what}${of ? ` in ${unitName(of, system)}` : ''}`);
};

const passed = (error: CellError, name: ColumnName): CellError =>
  new CellError(
    error.code,
    clipped(error.reason ? `${name}: ${error.reason}` : `${name} is the error ${error.code}; mend that cell first`),
  );

/**
 * Reads one row.
 *
 * @param cells the row
 * @param columns which column holds what
 * @returns what it says of the specimen, or the error of the first column that cannot be used
 */
export const readRow = (
  cells: readonly Cell[],
  columns: ReadonlyMap<ColumnName, number>,
  settings: Settings,
  system: UnitSystem,
): CollectionInput | CellError => {
  const cellOf = (name: ColumnName): Cell => {
    const i = columns.get(name);
    return i === undefined ? null : (cells[i] ?? null);
  };
  let error: CellError | undefined;
  const take = <N extends ColumnName>(name: N): ValueOf<N> | undefined => {
    if (error) return undefined;
    const cell = cellOf(name);
    if (isCellError(cell)) {
      error = passed(cell, name);
      return undefined;
    }
    const value = COLUMNS[name].read(cell, name, system);
    if (!(value instanceof Refusal)) return value as ValueOf<N>;
    error = valueError(value.reason);
    return undefined;
  };
  const needed = <N extends ColumnName>(name: N): ValueOf<N> | undefined => {
    const cell = cellOf(name);
    if (cell === null || cell === '') error ??= blank(name, system);
    return take(name);
  };
  const may = <N extends ColumnName>(name: N): ValueOf<N> | undefined =>
    isNothing(cellOf(name)) ? undefined : take(name);

  const weighed = (): number | undefined => {
    if (isNothing(cellOf('volume')) || !isNothing(cellOf('weight'))) return needed('weight');
    const volume = take('volume');
    const material = isNothing(cellOf('material')) ? undefined : take('material');
    if (material === undefined) {
      error ??= blank('material', system);
      return undefined;
    }
    const density = typeof material === 'string' ? densityByName(material, 'material') : material;
    const weight = error ? undefined : isFault(density) ? density : specimenWeight(volume!, density);
    if (isFault(weight)) error ??= errorOf(weight, system);
    return isFault(weight) ? undefined : weight;
  };

  const length = needed('length');
  const width = needed('width');
  const height = needed('height');
  const weight = weighed();
  const given = may('padding');
  const shape = may('shape');
  const surface = may('surface area');
  const reliefFactor = may('relief factor');
  const fragile = may('fragile') ?? false;
  const highRelief = may('relief') ?? false;
  if (error) return error;
  const padding = given ?? paddingChoice(weight!, fragile, highRelief, settings);
  if (isFault(padding)) return errorOf(padding, system);
  return {
    specimen: { length: length!, width: width!, height: height!, weight: weight!, ...(surface && { surface }) },
    padding,
    ...(shape && { shape }),
    ...(reliefFactor && { reliefFactor }),
  };
};
