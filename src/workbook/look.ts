/** How a whole workbook looks, for showing it in a grid. Reads a file of its own accord and never writes one. */

import { Parts } from './parts.ts';
import { readWorkbookPart } from './read-workbook.ts';
import { readSheetLook, type SheetLook } from './sheet-look.ts';
import { readStyles, type Styles } from './styles.ts';

export interface BookLook {
  readonly styles: Styles;
  /** In the order of the workbook's sheets. */
  readonly sheets: readonly SheetLook[];
}

/** Reads how a workbook looks. Throws a `WorkbookError` for anything that is none. `fileName` is for its message only. */
export function readLook(bytes: Uint8Array, fileName = 'This file'): BookLook {
  const parts = new Parts(bytes, fileName);
  const workbook = readWorkbookPart(parts);
  const styles = readStyles(parts, workbook);
  return { styles, sheets: workbook.sheets.map(({ path }) => readSheetLook(parts, path, styles.theme)) };
}
