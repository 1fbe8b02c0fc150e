/** Prints the sheet in view: a plain table of what its cells show, since the grid itself is a picture that ends at the screen's edge. */

import type { FUniver } from '@univerjs/core/facade';
import { columnLetters } from '../engine/formula-text.ts';
import { element } from './element.ts';

/** Most cells that are laid out for print. */
export const MOST_PRINTED = 50_000;

/** Fills the print page. `shown` answers what a cell shows, rows and columns from 1. */
export function layOutPrint(
  page: HTMLElement,
  title: string,
  rows: number,
  columns: number,
  shown: (row: number, column: number) => { readonly text: string; readonly isNumber: boolean },
): void {
  const head = element(
    'tr',
    {},
    element('td'),
    ...Array.from({ length: columns }, (_, c) => element('th', { scope: 'col' }, columnLetters(c + 1))),
  );
  const body = Array.from({ length: rows }, (_, r) =>
    element(
      'tr',
      {},
      element('th', { scope: 'row' }, String(r + 1)),
      ...Array.from({ length: columns }, (_, c) => {
        const { text, isNumber } = shown(r + 1, c + 1);
        return element('td', isNumber ? { class: 'number' } : {}, text);
      }),
    ),
  );
  page.replaceChildren(
    element('h1', {}, title),
    element('table', {}, element('thead', {}, head), element('tbody', {}, ...body)),
  );
}

/** What a cell of the sheet in view shows, number format included. */
export function displayed(api: FUniver, row: number, column: number): string {
  const range = api
    .getActiveWorkbook()
    ?.getActiveSheet()
    .getRange(row - 1, column - 1);
  return String(range?.getDisplayValue() ?? '');
}
