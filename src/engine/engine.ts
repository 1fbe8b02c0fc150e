/** The grid engine without a grid, for the command line and tests. The workbench registers the same functions in its own. */

import {
  type Injector,
  IUniverInstanceService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  Univer,
  UniverInstanceType,
} from '@univerjs/core';
import {
  type ArrayValueObject,
  type BaseReferenceObject,
  type BaseValueObject,
  FormulaDataModel,
  type FunctionVariantType,
  type IAllRuntimeData,
  ICalculateFormulaService,
  IFormulaRuntimeService,
  IFunctionService,
  UniverFormulaEnginePlugin,
} from '@univerjs/engine-formula';
import { UniverSheetsPlugin } from '@univerjs/sheets';
import enUS from '@univerjs/sheets/locale/en-US';
import { type Answer, type Cell, CellError, type OutCell } from '../functions/calling/cell.ts';
import { type EngineFunction, register } from './adapter.ts';
import { registerArrayArea } from './array-area.ts';
import { bound } from './bounds.ts';
import { bare } from './formula-text.ts';
import { repair } from './repairs.ts';
import { cellsOf, toCell, toRows } from './values.ts';

/** What one calculation of a workbook found. */
export interface Calculation {
  readonly data: IAllRuntimeData;
  /** True where cells refer to themselves, by whatever way. */
  readonly circular: boolean;
}

/** How far a calculation is. */
export type Progress = (done: number, all: number) => void;

export interface Engine {
  readonly injector: Injector;
  /** Whether there is a function of that name, in capitals. */
  knows(name: string): boolean;
  /** Opens a workbook in place of the one before. */
  open(data: Partial<IWorkbookData> & { id: string }): void;
  /** Calculates every formula of the open workbook once. */
  calculate(progress?: Progress): Promise<Calculation>;
  /** Calculates one formula as if it stood in the first cell of the first sheet. Nothing if the engine cannot read it. */
  evaluate(formula: string): Promise<Answer | undefined>;
  dispose(): void;
}

const EMPTY_SHEET = 'sheet';

let booksOpened = 0;

/** A name for a workbook that no other had: the engine keeps read formulas by workbook, for all engines of a process together. */
export function freshBookId(): string {
  booksOpened += 1;
  return `book${booksOpened}`;
}

/** An empty workbook of one sheet, for formulas without a sheet of their own. */
export const emptyBook = (rowCount: number, columnCount: number): Partial<IWorkbookData> & { id: string } => ({
  id: freshBookId(),
  sheetOrder: [EMPTY_SHEET],
  sheets: { [EMPTY_SHEET]: { id: EMPTY_SHEET, name: 'Sheet1', rowCount, columnCount, cellData: {} } },
});

/** An engine with our functions and the repaired built-in ones. `repaired: false` is for the tests that show why. */
export function createEngine(functions: readonly EngineFunction[], { repaired = true } = {}): Engine {
  // A language is loaded although nobody sees it: without one a long calculation dies while it writes its progress.
  const univer = new Univer({
    locale: LocaleType.EN_US,
    locales: { [LocaleType.EN_US]: enUS },
    logLevel: LogLevel.SILENT,
  });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  const injector = univer.__getInjector();
  let book = emptyBook(1, 1);
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, book);
  // Only now: as the first workbook opens, the engine puts its own functions in place.
  if (repaired) repair(injector);
  bound(injector);
  register(injector, functions);
  registerArrayArea(injector);
  let ready: Promise<unknown> | undefined;

  return {
    injector,
    knows: (name) => injector.get(IFunctionService).hasExecutor(name),
    open(data) {
      injector.get(IUniverInstanceService).disposeUnit(book.id);
      const model = injector.get(FormulaDataModel);
      model.setArrayFormulaCellData({});
      model.setArrayFormulaRange({});
      univer.createUnit(UniverInstanceType.UNIVER_SHEET, data);
      book = data;
      ready = undefined;
    },
    calculate: (progress) => calculateAll(injector, progress),
    async evaluate(formula) {
      const service = injector.get(ICalculateFormulaService);
      const sheetId = book.sheetOrder?.[0] ?? EMPTY_SHEET;
      ready ??= service.executeFormulas({ [book.id]: { [sheetId]: {} } });
      await ready;
      const { rowCount = 0, columnCount = 0 } = book.sheets?.[sheetId] ?? {};
      injector.get(IFormulaRuntimeService).setCurrent(0, 0, rowCount, columnCount, sheetId, book.id);
      // Declared as nothing, but it is the value that comes back.
      const value = await (service.calculate(`=${bare(formula)}`) as unknown as Promise<
        FunctionVariantType | undefined
      >);
      return value === undefined ? undefined : toAnswer(value);
    },
    dispose: () => univer.dispose(),
  };
}

/** A blank cell shows as 0 where a formula answers it. */
const shown = (cell: Cell): OutCell => cell ?? 0;

function toAnswer(value: FunctionVariantType): Answer {
  const single = (rows: readonly (readonly Cell[])[]): Answer =>
    rows.length === 1 && rows[0]!.length === 1 ? shown(rows[0]![0]!) : rows.map((row) => row.map(shown));
  if (value.isReferenceObject()) return single(cellsOf(value as BaseReferenceObject));
  const object = value as BaseValueObject;
  if (object.isArray()) {
    const rows = toRows(object as ArrayValueObject);
    return rows.length === 0 ? new CellError('#CALC!', 'the table has no cells') : single(rows);
  }
  return shown(toCell(object));
}

/**
 * Tells of what goes wrong in the middle of a calculation. The engine as shipped (version 0.25.1) waits for its steps nowhere: an exception in
 * one ends the process or, where that is prevented, the calculation never ends.
 */
function failInstead(service: ICalculateFormulaService, fail: (error: unknown) => void): void {
  const inner = service as unknown as { _executeStep: () => Promise<unknown> };
  const step = (Object.getPrototypeOf(inner) as typeof inner)._executeStep;
  inner._executeStep = () => step.call(service).catch(fail);
}

function calculateAll(injector: Injector, progress?: Progress): Promise<Calculation> {
  const service = injector.get(ICalculateFormulaService);
  const runtime = injector.get(IFormulaRuntimeService);
  const model = injector.get(FormulaDataModel);
  return new Promise((resolve, reject) => {
    failInstead(service, reject);
    const steps = service.executionInProgressListener$.subscribe((state) => {
      progress?.(state.completedFormulasCount, state.totalFormulasToCalculate);
    });
    const end = service.executionCompleteListener$.subscribe((data) => {
      steps.unsubscribe();
      end.unsubscribe();
      resolve({ data, circular: runtime.isCycleDependency() });
    });
    service
      .execute({
        formulaData: model.getFormulaData(),
        arrayFormulaCellData: model.getArrayFormulaCellData(),
        arrayFormulaRange: model.getArrayFormulaRange(),
        forceCalculate: true,
        dirtyRanges: [],
        dirtyNameMap: {},
        dirtyDefinedNameMap: {},
        dirtySuperTableMap: {},
        dirtyUnitFeatureMap: {},
        dirtyUnitOtherFormulaMap: {},
        clearDependencyTreeCache: {},
        maxIteration: 1,
      })
      .catch(reject);
  });
}
