/** What guides are made of beside their words: formulas with printed results, small sheets, tables that spill. */

import { SETTINGS, type SettingKey } from '../../calculation/settings.ts';
import type { Answer, OutCell } from '../../functions/calling/cell.ts';
import type { WorksheetFunction } from '../../functions/define.ts';
import { functions } from '../../functions/index.ts';
import { escaped } from '../html.ts';
import { block } from './caution-block.ts';
import { cellTable, formulaLine, functionLink, scrolled } from './elements.ts';
import { settingAddress } from './names.ts';
import { asRows } from './numbers.ts';
import { withSemicolons } from './separators.ts';

/** A formula in a cell and what is printed for it. A test calculates it and compares. */
export interface Calculated {
  readonly formula: string;
  readonly shows: string;
}

export type SheetCell = string | number | Calculated;

/** A small sheet: its cells row by row from A1. */
export interface HelpSheet {
  readonly kind: 'sheet';
  readonly caption: string;
  readonly cells: readonly (readonly SheetCell[])[];
}

/** A formula whose answer spills, with those of its rows and columns that are worth showing. */
export interface HelpTable {
  readonly kind: 'table';
  readonly caption: string;
  readonly formula: string;
  readonly answer: Answer;
  /** First cells of the rows to show; all where left out. */
  readonly rows?: readonly string[];
  /** Names of the columns to show; all where left out. */
  readonly columns?: readonly string[];
}

export type Piece = HelpSheet | HelpTable;

/** A guide: one page of advice with worked examples. */
export interface Guide {
  readonly file: string;
  readonly title: string;
  readonly question: string;
  /** One sentence for the list of guides. */
  readonly summary: string;
  /** HTML with markers: see `filled`. */
  readonly body: string;
  readonly pieces?: Readonly<Record<string, Piece>>;
  /** Names that formulas of this guide use: what each stands for, as `piece!A1:B4`. */
  readonly names?: Readonly<Record<string, string>>;
}

/** Calls a function of the registry by its id. */
export const call = (id: string, ...args: Parameters<WorksheetFunction['call']>[0]): Answer => byId(id).call(args);

const byId = (id: string): WorksheetFunction => {
  const found = functions.find((f) => f.id === id);
  if (!found) throw new Error(`a help page names ${id}, and there is no such function`);
  return found;
};

/** Functions that occur in a formula. */
export const functionsIn = (formula: string): WorksheetFunction[] =>
  [...formula.matchAll(/JACKET\.([A-Z_]+)/g)].map(([, id]) => byId(id!));

/** Ids of functions in a formula, for the mark on a printed result. */
const ids = (formula: string): string =>
  functionsIn(formula)
    .map(({ id }) => id)
    .join(' ');

const one = (formula: string, shows: string): string => {
  const other = withSemicolons(formula);
  return block(
    `<div class="call">${formulaLine(formula)}
${other === formula ? '' : `<p class="other">with a decimal comma <code>${escaped(other)}</code></p>`}
<p class="result" data-result="${ids(formula)}"><strong>${escaped(shows)}</strong></p></div>`,
    functionsIn(formula),
  );
};

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZ';

const sheetCell = (cell: SheetCell): string => {
  if (typeof cell === 'number') return `<td class="number">${cell}</td>`;
  if (typeof cell === 'string') return `<td>${escaped(cell)}</td>`;
  return `<td class="calculated"><span class="shows" data-result="${ids(cell.formula)}">${escaped(cell.shows)}</span>${formulaLine(cell.formula)}</td>`;
};

const sheet = ({ caption, cells }: HelpSheet): string => {
  const width = Math.max(...cells.map((row) => row.length));
  const head = Array.from({ length: width }, (_, c) => `<th scope="col">${LETTERS[c]}</th>`).join('');
  const body = cells
    .map(
      (row, r) =>
        `<tr><th scope="row">${r + 1}</th>${row.map(sheetCell).join('')}${'<td></td>'.repeat(width - row.length)}</tr>`,
    )
    .join('');
  const used = cells.flat().flatMap((cell) => (typeof cell === 'object' ? functionsIn(cell.formula) : []));
  return block(
    scrolled(
      caption,
      `<table class="sheet"><caption>${escaped(caption)}</caption><thead><tr><td></td>${head}</tr></thead><tbody>${body}</tbody></table>`,
    ),
    used,
  );
};

/** Rows and columns of a table that are shown. */
export const shownRows = ({ answer, rows, columns }: HelpTable): OutCell[][] => {
  const all = asRows(answer);
  const [head = []] = all;
  const at = columns?.map((name) => {
    const place = head.indexOf(name);
    if (place < 0) throw new Error(`a help page shows the column ${name}, and there is none`);
    return place;
  });
  for (const name of rows ?? [])
    if (!all.some(([first]) => first === name)) throw new Error(`a help page shows the row ${name}, and there is none`);
  return all
    .filter((row, r) => r === 0 || !rows || rows.includes(String(row[0])))
    .map((row) => (at ? at.map((c) => row[c]!) : row));
};

const table = (piece: HelpTable): string =>
  block(
    `${formulaLine(piece.formula)}<div data-result="${ids(piece.formula)}"><p class="faint">${escaped(piece.caption)}</p>${cellTable(piece.caption, shownRows(piece), true)}</div>`,
    functionsIn(piece.formula),
  );

const settingLink = (name: string): string => {
  const key = (Object.keys(SETTINGS) as SettingKey[]).find((k) => SETTINGS[k].name === name);
  if (!key) throw new Error(`a help page names the setting ${name}, and there is none`);
  return `<a href="${settingAddress(key)}">${escaped(name)}</a>`;
};

/**
 * The body of a guide with its markers replaced:
 * `{{=FORMULA → RESULT}}` a formula with its result, `{{piece NAME}}` a sheet or table, `{{f ID}}` a link to a function,
 * `{{setting NAME}}` a link to a setting.
 *
 * @throws where a marker names what is not there
 */
export const filled = ({ body, pieces = {} }: Pick<Guide, 'body' | 'pieces'>): string =>
  body.replace(/\{\{((?:[^{}]|\{[^{}]*\})*)\}\}/g, (whole, inner: string) => {
    const worked = MARKED.exec(inner);
    if (worked) return one(worked[1]!.trim(), worked[2]!.trim());
    const [, word, name = ''] = /^(piece|f|setting) (.+)$/.exec(inner) ?? [];
    if (word === 'f') return functionLink(byId(name).id);
    if (word === 'setting') return settingLink(name);
    const piece = word === 'piece' ? pieces[name] : undefined;
    if (!piece) throw new Error(`a help page has the marker ${whole}, and there is nothing for it`);
    return piece.kind === 'sheet' ? sheet(piece) : table(piece);
  });

const MARKED = /^(=[^→]+)→(.+)$/;

/** Formulas with the results printed for them in the text of a guide. */
export const markedFormulas = ({ body }: Pick<Guide, 'body'>): Calculated[] =>
  [...body.matchAll(/\{\{(=[^→]+)→([^}]+)\}\}/g)].map(([, formula, shows]) => ({
    formula: formula!.trim(),
    shows: shows!.trim(),
  }));
