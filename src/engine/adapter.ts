/** Our worksheet functions as functions of the grid engine. */

import type { Injector } from '@univerjs/core';
import {
  type ArrayValueObject,
  BaseFunction,
  type BaseReferenceObject,
  type BaseValueObject,
  FunctionType,
  type FunctionVariantType,
  type IFunctionInfo,
  IFunctionService,
} from '@univerjs/engine-formula';
import type { Answer, Argument, CallNotes, Cell, Rows } from '../functions/calling/cell.ts';
import { cellsOf, toCell, toEngine, toRows } from './values.ts';

/** What the engine must know of a worksheet function; those of the registry know more. */
export interface EngineFunction {
  readonly id: string;
  readonly description: string;
  readonly arguments: readonly {
    readonly name: string;
    readonly description: string;
    readonly optional: boolean;
    readonly repeating?: boolean;
    readonly takes: 'cells' | 'range' | 'one';
  }[];
  call(args: readonly Argument[], notes?: CallNotes): Answer;
}

export const NAMESPACE = 'JACKET';

/** What people type. */
export const typedName = (id: string): string => `${NAMESPACE}.${id.toUpperCase()}`;

/** What spreadsheet programs store in the file for a function of an add-in; the engine finds names in capitals. */
export const storedName = (id: string): string => `_XLDUDF_${NAMESPACE}_${id.toUpperCase()}`;

/** The most arguments a formula can hold. */
const MOST_ARGUMENTS = 255;

const isBlankRow = (row: readonly Cell[]): boolean => row.every((cell) => cell === null);

/** A single cell is passed on as it is. */
const asArgument = (rows: Rows): Argument => (rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0]! : rows);

interface Read {
  rows: Rows;
  fromCells: boolean;
  /** Whole columns and rows, whose blank end is cut off. */
  wholeColumns: boolean;
  wholeRows: boolean;
}

function read(value: FunctionVariantType): Read {
  if (value.isReferenceObject()) {
    const reference = value as BaseReferenceObject;
    return {
      rows: cellsOf(reference),
      fromCells: true,
      wholeColumns: reference.isColumn(),
      wholeRows: reference.isRow(),
    };
  }
  const object = value as BaseValueObject;
  const rows = object.isArray() ? toRows(object as ArrayValueObject) : [[toCell(object)]];
  return { rows, fromCells: false, wholeColumns: false, wholeRows: false };
}

const filledRows = (rows: Rows): number => rows.findLastIndex((row) => !isBlankRow(row)) + 1;
const filledColumns = (rows: Rows): number =>
  Math.max(0, ...rows.map((row) => row.findLastIndex((c) => c !== null) + 1));

/** Whole columns (and rows) of one call all end where the longest of them does, so that they stay of one shape. */
function cutBlankEnds(args: readonly Read[]): void {
  const columns = args.filter((arg) => arg.wholeColumns);
  const lastRow = Math.max(1, ...columns.map((arg) => filledRows(arg.rows)));
  for (const arg of columns) arg.rows = arg.rows.slice(0, lastRow);
  const rows = args.filter((arg) => arg.wholeRows);
  const lastColumn = Math.max(1, ...rows.map((arg) => filledColumns(arg.rows)));
  for (const arg of rows) arg.rows = arg.rows.map((row) => row.slice(0, lastColumn));
}

class Adapter extends BaseFunction {
  /** The engine's own count answers a bare #N/A; ours says what is missing. */
  override minParams = 0;
  override maxParams = MOST_ARGUMENTS;
  /** A reference tells a cell from a typed value; the engine knows from the formula on which cells it depends. */
  override needsReferenceObject = true;
  readonly #definition: EngineFunction;

  constructor(name: string, definition: EngineFunction) {
    super(name);
    this.#definition = definition;
  }

  override calculate(...values: FunctionVariantType[]): BaseValueObject {
    const args = values.map(read);
    cutBlankEnds(args);
    const answer = this.#definition.call(
      args.map((arg) => asArgument(arg.rows)),
      { fromCells: args.map((arg) => arg.fromCells) },
    );
    return toEngine(answer, {
      unitId: this.unitId ?? '',
      sheetId: this.subUnitId ?? '',
      row: this.row,
      column: this.column,
    });
  }
}

/**
 * Makes the functions known to an engine under the name people type and the name files store.
 *
 * Call it after the first workbook was created.
 */
export function register(injector: Injector, functions: readonly EngineFunction[]): void {
  const service = injector.get(IFunctionService);
  for (const definition of functions)
    service.registerExecutors(
      new Adapter(typedName(definition.id), definition),
      new Adapter(storedName(definition.id), definition),
    );
}

/** Texts for the grid's list of functions and its help on arguments. */
export const descriptions = (functions: readonly EngineFunction[]): IFunctionInfo[] =>
  functions.map((definition) => ({
    functionName: typedName(definition.id),
    functionType: FunctionType.User,
    description: definition.description,
    abstract: definition.description,
    functionParameter: definition.arguments.map((argument) => ({
      name: argument.name,
      detail: argument.description,
      example: argument.takes === 'one' ? '1' : 'A1:A9',
      require: argument.optional ? 0 : 1,
      repeat: argument.repeating ? 1 : 0,
    })),
  }));
