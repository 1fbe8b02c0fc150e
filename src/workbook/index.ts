/**
 * Reads .xlsx and .xlsm workbooks and writes changed cells back. Every part and every byte that need not change stays as it was.
 *
 * Runs in the browser and in Node. Writing to disk is Node alone: import `write-beside.ts` for it.
 */

export { type Comparison, compareWorkbooks } from './compare.ts';
export { toEngine, toStored } from './formula-text.ts';
export { translateFormula, translator } from './translate-formula.ts';
export type {
  BookCell,
  BookFormula,
  BookLayout,
  BookName,
  BookSheet,
  BookTable,
  BookValue,
  CellUpdate,
} from './types.ts';
export { Workbook } from './workbook.ts';
export { WorkbookError } from './workbook-error.ts';
