/** The grid and its engine: set up once, then one workbook after the other. */

import { type Injector, type IWorkbookData, LocaleType, LogLevel, mergeLocales, Univer } from '@univerjs/core';
import { FUniver } from '@univerjs/core/facade';
import { UniverSheetsConditionalFormattingPreset } from '@univerjs/preset-sheets-conditional-formatting';
import conditionalFormatsEnglish from '@univerjs/preset-sheets-conditional-formatting/locales/en-US';
import { CalculationMode, UniverSheetsCorePreset } from '@univerjs/preset-sheets-core';
import coreEnglish from '@univerjs/preset-sheets-core/locales/en-US';
import { UniverSheetsDataValidationPreset } from '@univerjs/preset-sheets-data-validation';
import validationEnglish from '@univerjs/preset-sheets-data-validation/locales/en-US';
import { descriptions, register } from '../engine/adapter.ts';
import { registerArrayArea } from '../engine/array-area.ts';
import { repair } from '../engine/repairs.ts';
import { functions } from '../functions/index.ts';
import { gridTheme } from './grid-theme.ts';

export interface Grid {
  readonly api: FUniver;
  readonly injector: Injector;
  /** Shows a workbook in place of the one before. */
  show(data: Partial<IWorkbookData> & { id: string }): void;
}

export function createGrid(container: HTMLElement, dark: boolean): Grid {
  const univer = new Univer({
    locale: LocaleType.EN_US,
    logLevel: LogLevel.ERROR,
    darkMode: dark,
    theme: gridTheme(),
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
      footer: {
        sheetBar: true,
        statisticBar: false,
        menus: false,
        zoomSlider: false,
        addSheetButtonConfig: { show: false },
      },
      formula: { description: descriptions(functions), initialFormulaComputing: CalculationMode.NO_CALCULATION },
      sheets: { clipboardConfig: { hidePasteOptions: true } },
    }),
    UniverSheetsDataValidationPreset(),
    UniverSheetsConditionalFormattingPreset(),
  ];
  for (const { plugins } of presets)
    for (const plugin of plugins) {
      if (Array.isArray(plugin)) univer.registerPlugin(plugin[0], plugin[1]);
      else if (plugin) univer.registerPlugin(plugin);
    }
  const api = FUniver.newAPI(univer);
  const injector = univer.__getInjector();
  let shown: string | undefined;
  return {
    api,
    injector,
    show(data) {
      if (shown !== undefined) api.disposeUnit(shown);
      api.createWorkbook(data);
      if (shown === undefined) {
        // The first workbook restores the shipped functions, so ours come after it.
        repair(injector);
        register(injector, functions);
        registerArrayArea(injector);
      }
      shown = data.id;
    },
  };
}
