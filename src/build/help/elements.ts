/** Small pieces of pages that stand in several places. */
import { sign } from '../../drawing/signs.ts';
import type { OutCell } from '../../functions/calling/cell.ts';
import { escaped } from '../html.ts';
import { helpFile } from './names.ts';
import { cellText } from './numbers.ts';

export const functionLink = (id: string): string => `<a href="${helpFile(id)}"><code>${escaped(id)}</code></a>`;

export const list = (items: readonly string[]): string =>
  items.length ? `<ul>${items.map((item) => `<li>${item}</li>`).join('')}</ul>` : '';

/** Ends a sentence that may have come without its full stop. */
export const closed = (text: string): string => (/[.?:]$/.test(text) ? text : `${text}.`);

/** A sentence with its capital letter and its full stop. */
export const sentence = (text: string): string => closed(text.charAt(0).toUpperCase() + text.slice(1));

/** A table that scrolls inside its own region where the page is narrow. */
export const scrolled = (label: string, table: string): string =>
  `<div class="scroll" role="region" aria-label="${escaped(label)}" tabindex="0">${table}</div>`;

const isNumber = (cell: OutCell): boolean => typeof cell === 'number';

/** Numbers stand right, and the words in their column with them; only words may be broken. */
const place = (cell: OutCell, numeric: boolean): string =>
  isNumber(cell) ? ' class="number"' : numeric ? ' class="right"' : '';

/** Rows of cells as a table; the first row is its head where `header` says so. */
export const cellTable = (label: string, rows: readonly (readonly OutCell[])[], header: boolean): string => {
  const body = header ? rows.slice(1) : rows;
  const numeric = (rows[0] ?? []).map((_, c) => body.some((row) => isNumber(row[c]!)));
  const headCell = (cell: OutCell, c: number): string =>
    `<th scope="col"${place(cell, numeric[c]!)}>${escaped(cellText(cell))}</th>`;
  const bodyCell = (cell: OutCell, c: number): string =>
    header && c === 0
      ? `<th scope="row"${place(cell, numeric[c]!)}>${escaped(cellText(cell))}</th>`
      : `<td${place(cell, numeric[c]!)}>${escaped(cellText(cell))}</td>`;
  const head = header ? `<thead><tr>${rows[0]!.map(headCell).join('')}</tr></thead>` : '';
  return scrolled(
    label,
    `<table>${head}<tbody>${body.map((row) => `<tr>${row.map(bodyCell).join('')}</tr>`).join('')}</tbody></table>`,
  );
};

/** A formula with a button that copies it. Without script the button is not shown. */
export const formulaLine = (formula: string, more = ''): string =>
  `<div class="formula"><code data-formula>${escaped(formula)}</code>${more}<button type="button" class="copy" data-copy="${escaped(formula)}" aria-label="Copy ${escaped(formula)}" hidden>${sign('copy', 20)}<span class="copy-word">Copy</span></button></div>`;
