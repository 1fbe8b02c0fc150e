/** The grid and its engine: set up once, then one workbook after the other. */

import {
  DOCS_NORMAL_EDITOR_UNIT_ID_KEY,
  type DocumentDataModel,
  type Injector,
  IUniverInstanceService,
  type IWorkbookData,
  LocaleType,
  LogLevel,
  mergeLocales,
  Univer,
  UniverInstanceType,
} from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { IFunctionService, LexerTreeBuilder } from '@univerjs/engine-formula';
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting';
import conditionalFormatsEnglish from '@univerjs/preset-sheets-conditional-formatting/locales/en-US';
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import coreEnglish from '@univerjs/preset-sheets-core/locales/en-US';
import {
  SheetsDataValidationValidatorService,
  UniverSheetsDataValidationPreset,
} from '@univerjs/preset-sheets-data-validation';
import validationEnglish from '@univerjs/preset-sheets-data-validation/locales/en-US';
import { descriptions, register } from '../engine/adapter.ts';
import { registerArrayArea } from '../engine/array-area.ts';
import { type Book, registerNamesAndTables } from '../engine/book.ts';
import { bound } from '../engine/bounds.ts';
import { repair } from '../engine/repairs.ts';
import { functions } from '../functions/index.ts';
import { installDarkColours } from './dark-colours.ts';
import { installTheme, styleHeadings } from './grid-theme.ts';

export interface Grid {
  readonly api: FUniver;
  readonly injector: Injector;
  /** Brings the engine to life. What watches the grid must be set up before. */
  start(): void;
  /** What stands in the cell that is being edited. */
  editorText(): string;
  /** Whether the engine has a function of that name, in capitals. */
  knows(name: string): boolean;
  /** Shows a workbook in place of the one before. `book` tells its names and tables. */
  show(data: Partial<IWorkbookData> & { id: string }, book: Book): void;
}

/** Shown until the first file is there. The engine's parts come to life with it. */
const EMPTY = 'empty';
const EMPTY_DATA = {
  id: EMPTY,
  name: EMPTY,
  sheetOrder: [EMPTY],
  sheets: { [EMPTY]: { id: EMPTY, name: ' ', rowCount: 100, columnCount: 26, cellData: {} } },
};

export function createGrid(container: HTMLElement, dark: boolean): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    logLevel: LogLevel.ERROR,
    darkMode: dark,
    locales: { [LocaleType.EN_US]: mergeLocales(coreEnglish, validationEnglish, conditionalFormatsEnglish) },
  });
  const presets = [
    UniverSheetsCorePreset({
      container,
      header: true,
      toolbar: false,
      contextMenu: false,
      formulaBar: true,
      disableAutoFocus: true,
      footer: false,
      formula: { description: descriptions(functions), initialFormulaComputing: CalculationMode.FORCED },
      sheets: { clipboardConfig: { hidePasteOptions: true } },
    }),
    UniverSheetsDataValidationPreset({ showEditOnDropdown: false }),
    UniverSheetsConditionalFormattingPreset(),
  ];
  for (const { plugins } of presets)
    for (const plugin of plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
      else if (plugin) univer.registerPlugin(plugin);
    }
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  installTheme(injector);
  let shown = EMPTY;
  return {
    api,
    injector,
    editorText: () =>
      injector
        .get(IUniverInstanceService)
        .getUnit<DocumentDataModel>(DOCS_NORMAL_EDITOR_UNIT_ID_KEY, UniverInstanceType.UNIVER_DOC)
        ?.getPlainText()
        .replace(/[\r\n]+$/, '') ?? '',
    knows: (name) => injector.get(IFunctionService).hasExecutor(name),
    start() {
      api.createWorkbook(EMPTY_DATA);
      // The first workbook restores the shipped functions, so ours come after it.
      repair(injector);
      bound(injector);
      register(injector, functions);
      registerArrayArea(injector);
      installDarkColours(injector);
      checkOpenWorkbooksOnly(injector);
    },
    show(data, book) {
      api.disposeUnit(shown);
      // The engine keeps the pieces of formulas by their text, and changes those of LET: the same text in the next workbook would be read wrongly.
      injector.get(LexerTreeBuilder).dispose();
      api.createWorkbook(data);
      registerNamesAndTables(injector, book, data.id);
      shown = data.id;
      styleHeadings(api);
    },
  };
}

/** The grid checks cells against their rules when it is idle, and throws where the workbook was closed meanwhile. */
function checkOpenWorkbooksOnly(injector: Injector): void {
  const service = injector.get(SheetsDataValidationValidatorService);
  const books = injector.get(IUniverInstanceService);
  const shipped = service.validatorRanges.bind(service);
  service.validatorRanges = async (unit, sheet, ranges) =>
    books.getUnit(unit, UniverInstanceType.UNIVER_SHEET) ? shipped(unit, sheet, ranges) : [];
}
