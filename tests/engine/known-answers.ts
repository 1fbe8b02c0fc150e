/** Built-in formulas with answers known from elsewhere, and the workbook that they look at. */

import { readFileSync } from 'node:fs';
import type { Book, SheetCell, SheetValue } from '../../src/engine/book.ts';
import { columnNumber, tokens } from '../../src/engine/formula-text.ts';
import { areaOf } from '../../src/engine/workbook-book.ts';

export interface KnownAnswer {
  readonly area: string;
  readonly formula: string;
  readonly rows: readonly (readonly SheetValue[])[];
  readonly secondOpinion: string;
  readonly note: string;
}

const beside = (name: string): string => readFileSync(new URL(name, import.meta.url), 'utf8');

/** A value as it is typed into a formula: `3`, `"text"`, `TRUE`, `#N/A`, `{1,2;3,4}`. */
export function rowsOf(literal: string): SheetValue[][] {
  const rows: SheetValue[][] = [[]];
  let sign = 1;
  for (const { kind, text } of tokens(literal)) {
    if (text === ';') rows.push([]);
    if (text === '-') sign = -1;
    const row = rows.at(-1)!;
    if (kind === 'text') row.push(text.slice(1, -1).replaceAll('""', '"'));
    else if (kind === 'error') row.push({ error: text });
    else if (kind === 'name') row.push(text === 'TRUE');
    else if (kind === 'number') {
      row.push(sign * Number(text));
      sign = 1;
    }
  }
  return rows;
}

export const knownAnswers: readonly KnownAnswer[] = beside('known-answers.tsv')
  .trimEnd()
  .split('\n')
  .slice(1)
  .map((line) => {
    const [area = '', formula = '', answer = '', secondOpinion = '', note = ''] = line.split('\t');
    return { area, formula, rows: rowsOf(answer), secondOpinion, note };
  });

interface Cells {
  readonly sheets: readonly {
    readonly name: string;
    readonly cells: Readonly<Record<string, number | string | boolean>>;
    readonly spills: Readonly<Record<string, string>>;
  }[];
  readonly names: Readonly<Record<string, string>>;
  readonly table: {
    readonly name: string;
    readonly sheet: string;
    readonly ref: string;
    readonly columns: readonly string[];
  };
}

const place = (address: string): { row: number; column: number } => {
  const [, letters = '', digits = ''] = /^([A-Z]+)(\d+)$/.exec(address) ?? [];
  return { row: Number(digits), column: columnNumber(letters) };
};

/** Formulas stand under one another on the first sheet, so far apart that none spills into the next. */
export const FIRST_ROW = 21;
export const STEP = 8;

/** The workbook of the file beside, with formulas on its first sheet. */
export function bookWith(formulas: readonly string[]): Book {
  const { sheets, names, table } = JSON.parse(beside('known-answers-cells.json')) as Cells;
  return {
    sheets: sheets.map(({ name, cells, spills }, index) => ({
      name,
      cells: [
        ...Object.entries(cells).map(([address, value]): SheetCell => {
          const isFormula = typeof value === 'string' && value.startsWith('=');
          if (!isFormula) return { ...place(address), value };
          return { ...place(address), value: null, formula: { text: value.slice(1), fills: 'single' } };
        }),
        ...Object.entries(spills).map(
          ([ref, text]): SheetCell => ({
            ...place(ref.split(':')[0]!),
            value: null,
            formula: { text, fills: 'dynamic', area: areaOf(ref) },
          }),
        ),
        ...(index === 0 ? formulas : []).map(
          (text, i): SheetCell => ({
            row: FIRST_ROW + i * STEP,
            column: 1,
            value: null,
            formula: { text, fills: 'dynamic' },
          }),
        ),
      ],
    })),
    names: Object.entries(names).map(([name, text]) => ({ name, text })),
    tables: [{ ...table, area: areaOf(table.ref), headerRows: 1, totalsRows: 1 }],
  };
}
