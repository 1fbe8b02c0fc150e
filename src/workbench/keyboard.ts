/** Keys that the grid lacks or gets wrong (version 0.25.1), and the way out of it. */

import { Direction } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';
import { CELL_LINE, KEYS } from './names.ts';

/** Rows that Page Up and Page Down move where the height of the view is not known. */
const PAGE_ROWS = 20;

/** Parts of the page that F6 goes through, each with what takes the focus. */
export interface Stop {
  readonly place: HTMLElement;
  focus(): void;
}

/** The first thing inside an element that can take the focus. */
export const focusFirst = (place: HTMLElement): void => {
  const first = [
    ...place.querySelectorAll<HTMLElement>('button, a[href], input, select, textarea, summary, [tabindex="0"]'),
  ].find((node) => !node.hasAttribute('disabled') && node.offsetParent !== null);
  first?.focus();
};

export const focusCells = (grid: HTMLElement): void => grid.querySelector<HTMLElement>(KEYS)?.focus();

/** Shift+Enter and Shift+Tab on one cell look for a selection before the first one and leave none at all; a plain step does the same rightly. */
function repairBackwards(api: FUniver): void {
  api.addEvent(api.Event.BeforeCommandExecute, (event) => {
    const direction = (event.params as { direction?: Direction } | undefined)?.direction;
    if (event.id !== 'sheet.command.move-selection-enter-tab') return;
    if (direction !== Direction.LEFT && direction !== Direction.UP) return;
    const ranges = api.getActiveWorkbook()?.getActiveSheet().getSelection()?.getActiveRangeList() ?? [];
    if (ranges.length > 1) return;
    event.cancel = true;
    void api.executeCommand('sheet.command.move-selection', { direction });
  });
}

/** Home, End and the page keys. True if the key was one of them. */
function move(api: FUniver, event: KeyboardEvent): boolean {
  const book = api.getActiveWorkbook();
  const sheet = book?.getActiveSheet();
  const cell = sheet?.getSelection()?.getCurrentCell();
  if (!book || !sheet || !cell || book.isCellEditing() || event.shiftKey || event.altKey) return false;
  const go = (row: number, column: number): boolean => {
    const r = Math.min(Math.max(row, 0), sheet.getMaxRows() - 1);
    const c = Math.min(Math.max(column, 0), sheet.getMaxColumns() - 1);
    sheet.getRange(r, c).activate();
    sheet.scrollToCell(Math.max(r - 3, 0), Math.max(c - 2, 0));
    return true;
  };
  const { actualRow: row, actualColumn: column } = cell;
  const ctrl = event.ctrlKey || event.metaKey;
  if (event.key === 'Home') return go(ctrl ? 0 : row, 0);
  if (event.key === 'End' && ctrl) return go(sheet.getLastRow(), sheet.getLastColumn());
  if (event.key !== 'PageDown' && event.key !== 'PageUp') return false;
  const step = event.key === 'PageDown' ? 1 : -1;
  if (!ctrl) {
    const seen = sheet.getVisibleRange();
    const rows = seen ? Math.max(1, seen.endRow - seen.startRow - 1) : PAGE_ROWS;
    return go(row + step * rows, column);
  }
  const sheets = book.getSheets().filter((one) => !one.isSheetHidden());
  const next = sheets[sheets.findIndex((one) => one.getSheetId() === sheet.getSheetId()) + step];
  if (next) book.setActiveSheet(next);
  return true;
}

/** Sets up all keys. `stops` in the order in which F6 visits them; the grid is one of them. */
export function setUpKeys(
  api: FUniver,
  grid: HTMLElement,
  stops: () => readonly Stop[],
  actions: ReadonlyMap<string, () => void>,
): void {
  repairBackwards(api);
  addEventListener(
    'keydown',
    (event) => {
      const taken = (): void => {
        event.preventDefault();
        event.stopPropagation();
      };
      const active = document.activeElement;
      if (event.key === 'F6') {
        taken();
        const all = stops();
        const here = all.findIndex(({ place }) => place.contains(active));
        const count = all.length;
        all[(here + (event.shiftKey ? count - 1 : 1) + count) % count]?.focus();
        return;
      }
      const ctrl = event.ctrlKey || event.metaKey;
      const action = ctrl && !event.shiftKey && !event.altKey ? actions.get(event.key.toLowerCase()) : undefined;
      if (action) {
        taken();
        action();
        return;
      }
      const inCells = active?.matches(KEYS) === true;
      if (inCells && move(api, event)) taken();
      // Escape out of the cell line: the grid puts the old content back, and the keys go back to the cells.
      if (event.key === 'Escape' && active?.matches(CELL_LINE)) setTimeout(() => focusCells(grid));
    },
    { capture: true },
  );
}
