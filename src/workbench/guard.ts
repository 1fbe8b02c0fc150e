/**
 * Holds back what the file could not keep. Only contents of cells are written back into a workbook, so everything else that the grid could do,
 * by a key or by pasting, is cancelled with a sentence that says why.
 */

import { CellValueType, type ICellData, type ICommandInfo, ICommandService, type Injector } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { forEngine } from '../engine/for-engine.ts';
import { bare } from '../engine/formula-text.ts';

/** Commands that change contents of cells, or only the view. */
const ALLOWED: ReadonlySet<string> = new Set([
  'nil',
  'formula.command.insert-function',
  'sheets-formula.command.quick-sum',
  'univer.command.copy',
  'univer.command.paste',
  'univer.command.redo',
  'univer.command.undo',
  ...[
    'auto-clear-content',
    'auto-fill',
    'change-zoom-ratio',
    'clear-selection-content',
    'copy-down',
    'copy-formula-only',
    'copy-right',
    'delta-column-width',
    'delta-row-height',
    'expand-selection',
    'move-selection',
    'move-selection-enter-tab',
    'paste-by-short-key',
    'paste-formula',
    'paste-value',
    'refill',
    'scroll-to-cell',
    'scroll-view',
    'select-all',
    'select-range',
    'set-col-auto-width',
    'set-col-header-height',
    'set-range-values',
    'set-row-header-width',
    'set-row-height',
    'set-row-is-auto-height',
    'set-scroll-relative',
    'set-worksheet-activate',
    'set-worksheet-col-width',
    'set-zoom-ratio',
    'text-to-number',
    'toggle-cell-checkbox',
  ].map((name) => `sheet.command.${name}`),
]);

/** Commands by which a person makes columns wider or rows higher. */
const ONLY_A_VIEW =
  /^sheet\.command\.(?:delta-column-width|delta-row-height|set-col-auto-width|set-row-height|set-worksheet-col-width)$/;

const IN_A_SPREADSHEET = 'Do that in a spreadsheet program and open the file here again.';
const FORMATS = `Formats stay as the file has them; only what stands in the cells can be changed here. ${IN_A_SPREADSHEET}`;

/** Why a command is held back, by words in its name; the first that fits. */
const REASONS: readonly (readonly [RegExp, string])[] = [
  [
    /insert-(?:row|col|range|multi)|remove-(?:row|col)|delete-range-move|move-(?:rows|cols)|append-row|(?:row|column)-count/,
    `Rows and columns cannot be added, removed or moved here, since other parts of the file point at them. ${IN_A_SPREADSHEET}`,
  ],
  [
    /command\.cut|move-range|reorder-range/,
    'Cells cannot be moved here. Copy and paste them, then delete the old ones.',
  ],
  [/data-?validation|checkbox/i, `What may be typed into a cell stays as the file says. ${IN_A_SPREADSHEET}`],
  [/conditional/, `Conditional formats stay as the file has them. ${IN_A_SPREADSHEET}`],
  [/defined-name/, `Names stay as the file has them. ${IN_A_SPREADSHEET}`],
  [/merge/, `Cells cannot be merged or parted here. ${IN_A_SPREADSHEET}`],
  [/protection|permission/, `Protection stays as the file has it. ${IN_A_SPREADSHEET}`],
  [
    /(?:insert|remove|copy)-sheet|worksheet-(?:name|order|hidden|show)|tab-color|workbook-name/,
    `Sheets cannot be added, removed, renamed or moved here. ${IN_A_SPREADSHEET}`,
  ],
  [/frozen|hidden|visible|gridlines|hide-/, `What is hidden or stays in view is as the file says. ${IN_A_SPREADSHEET}`],
];

/** The sentence for a command that is held back. */
export const reasonFor = (command: string): string => REASONS.find(([words]) => words.test(command))?.[1] ?? FORMATS;

/** Whether a command changes a workbook in a way that the file cannot keep. */
export const isHeldBack = (command: string): boolean =>
  !ALLOWED.has(command) && /^(?:sheets?|univer|data-validation|sheets-formula|formula)\.command\./.test(command);

const SET_VALUES = 'sheet.mutation.set-range-values';
const SET_FORMATS = 'sheet.mutation.set.numfmt';

interface SetValues {
  readonly subUnitId: string;
  cellValue?: Record<number, Record<number, ICellData | null>>;
}

/** Number formats with days, months or hours. */
const isDate = (pattern: string): boolean => /[dmyhs]/i.test(pattern.replace(/"[^"]*"|\[[^\]]*\]|\\./g, ''));

/** A typed number with its usual signs: thousands, percent, money, brackets for minus. Everything else that became a number is a date or a time. */
const isTypedNumber = (text: string): boolean => {
  const plain = text.replace(/[\s,'%()\p{Sc}]/gu, '');
  return plain !== '' && !Number.isNaN(Number(plain));
};

export interface GuardOptions {
  readonly api: FUniver;
  readonly injector: Injector;
  readonly say: (text: string) => void;
  /** Whether a cell is a heading of a table, counted from 0. */
  readonly isHeading: (sheetId: string, row: number, column: number) => boolean;
  /** Number format of a cell in the file. */
  readonly formatInFile: (sheetId: string, row: number, column: number) => string;
  /** Cells were changed by a person, counted from 0. */
  readonly onTouched: (sheetId: string, cells: readonly (readonly [row: number, column: number])[]) => void;
}

/** What a person's change of cells may carry: contents, no formats; formulas written so that the engine reads them rightly. */
function cleaned(params: SetValues, typed: string | undefined, options: GuardOptions): string | undefined {
  let said: string | undefined;
  for (const [r, row] of Object.entries(params.cellValue ?? {})) {
    for (const [c, cell] of Object.entries(row)) {
      const [rowNumber, column] = [Number(r), Number(c)];
      if (options.isHeading(params.subUnitId, rowNumber, column)) {
        delete row[column];
        said = `Headings of tables stay as the file has them, since formulas name them. ${IN_A_SPREADSHEET}`;
        continue;
      }
      if (!cell) continue;
      if (typed !== undefined && typeof cell.v === 'number' && !isTypedNumber(typed)) {
        if (!isDate(options.formatInFile(params.subUnitId, rowNumber, column))) {
          cell.v = typed;
          cell.t = CellValueType.FORCE_STRING;
          said = 'A date or time is kept as text in a cell that has no such format in the file.';
        }
      }
      delete cell.s;
      if (typeof cell.f === 'string' && cell.f !== '') {
        const text = bare(cell.f);
        const written = forEngine(text);
        if (written !== text) cell.f = `=${written}`;
      }
    }
  }
  return said;
}

/** Watches all that is done to the grid from now on. */
export function guard(options: GuardOptions): void {
  const { api, injector, say } = options;
  const commands = injector.get(ICommandService);
  let typed: string | undefined;
  api.addEvent(api.Event.BeforeSheetEditEnd, (event) => {
    typed = event.value?.toPlainText().replace(/\r?\n$/, '');
  });
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    if (ONLY_A_VIEW.test(event.id)) say('Widths and heights change only the view here; the file keeps its own.');
    if (!isHeldBack(event.id)) return;
    event.cancel = true;
    say(reasonFor(event.id));
  });
  commands.beforeCommandExecuted((command, info) => {
    if (command.id !== SET_VALUES && command.id !== SET_FORMATS) return;
    if (info?.fromFormula || info?.onlyLocal) return;
    if (command.id === SET_FORMATS) {
      (command.params as { values: object }).values = {};
      return;
    }
    const said = cleaned(command.params as SetValues, typed, options);
    if (said !== undefined) say(said);
  });
  commands.onCommandExecuted((command: ICommandInfo, info) => {
    if (command.id !== SET_VALUES || info?.fromFormula || info?.onlyLocal) return;
    const { subUnitId, cellValue = {} } = command.params as SetValues;
    typed = undefined;
    const cells = Object.entries(cellValue).flatMap(([row, line]) =>
      Object.keys(line ?? {}).map((column): [number, number] => [Number(row), Number(column)]),
    );
    if (cells.length > 0) options.onTouched(subUnitId, cells);
  });
}
