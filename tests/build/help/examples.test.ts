/** Every formula on the pages is calculated by the engine of command line and workbench, and compared with what is printed. */
import { describe, expect, test } from 'vitest';
import { GUIDES } from '../../../src/build/help/guides/index.ts';
import { asRows, cellText, plain } from '../../../src/build/help/numbers.ts';
import { type Guide, type HelpSheet, markedFormulas, shownRows } from '../../../src/build/help/pieces.ts';
import type { Book, SheetCell, SheetValue } from '../../../src/engine/book.ts';
import { calculateBook } from '../../../src/engine/calculate-book.ts';
import { createEngine } from '../../../src/engine/engine.ts';
import { evaluateAll } from '../../../src/engine/evaluate.ts';
import { isCellError } from '../../../src/functions/calling/cell.ts';
import { functions } from '../../../src/functions/index.ts';
import { files, unescaped, words } from './site.ts';

/** A printed number: its digits after the point say how far it was rounded. */
const close = (value: unknown, shows: string): boolean => {
  const printed = /^(-?\d+(?:\.(\d+))?)(?: .*)?$/.exec(shows);
  if (typeof value !== 'number' || !printed) return String(value) === shows;
  // Half a unit of the last printed digit, and a hair for its own rounding in binary.
  return Math.abs(value - Number(printed[1])) <= 0.5 * 10 ** -(printed[2]?.length ?? 0) + 1e-9;
};

test('a printed number that is off by one in its last digit is found', () => {
  expect(close(18.2957, '18.3 kg')).toBe(true);
  expect(close(18.2957, '18.2 kg')).toBe(false);
  expect(close(18.2957, '18.4 kg')).toBe(false);
  expect(close('felt', 'felt')).toBe(true);
  expect(close('felt', 'foam')).toBe(false);
});

/** Formulas of a function page with what stands under each. */
const printedCalls = (html: string): { formula: string; result: string }[] =>
  [
    ...html.matchAll(/<code data-formula>([^<]*)<\/code>([\s\S]*?)(?=<div class="call">|<div class="caution"|<h2>)/g),
  ].map(([, formula, rest]) => ({ formula: unescaped(formula!), result: rest! }));

const tableCells = (html: string): string[] =>
  [...html.matchAll(/<t[hd][^>]*>([\s\S]*?)<\/t[hd]>/g)].map(([, cell]) => words(cell!));

describe('function pages', () => {
  const calls = functions.flatMap((f) =>
    printedCalls(files.get(`${f.id.toLowerCase().replaceAll('_', '-')}.html`)!).map((call) => ({ id: f.id, ...call })),
  );

  test('print every example and, where there are units, both systems', () => {
    expect(calls.length).toBeGreaterThan(functions.length);
    for (const f of functions.filter((one) => one.result.kind === 'number' && one.takesSettings))
      expect(
        calls.filter(({ id, formula }) => id === f.id && formula.includes('us')),
        f.id,
      ).not.toHaveLength(0);
  });

  test('print what the engine calculates', async () => {
    const answers = await evaluateAll(
      functions,
      calls.map(({ formula }) => formula),
    );
    for (const [i, { id, formula, result }] of calls.entries()) {
      const one = answers[i]!;
      if ('unreadable' in one) throw new Error(`${formula}: ${one.unreadable}`);
      if (Array.isArray(one.answer)) {
        expect(tableCells(result), formula).toEqual(one.answer.flat().map((cell) => words(cellText(cell))));
        continue;
      }
      const printed = words(/<p class="result"[^>]*><strong>([\s\S]*?)<\/strong>/.exec(result)![1]!);
      const expected = typeof one.answer === 'string' ? one.answer.trim() : cellText(one.answer);
      expect(
        printed === expected || printed.startsWith(`${expected} `),
        `${id} ${formula}: ${printed}, ${expected}`,
      ).toBe(true);
    }
  });
});

describe('formulas in the words of guides', () => {
  const marked = GUIDES.flatMap((guide) => markedFormulas(guide).map((one) => [guide.file, one] as const));

  test('give what is printed', async () => {
    expect(marked.length).toBeGreaterThan(5);
    const answers = await evaluateAll(
      functions,
      marked.map(([, { formula }]) => formula),
    );
    for (const [i, [file, { formula, shows }]] of marked.entries()) {
      const one = answers[i]!;
      if ('unreadable' in one) throw new Error(`${formula}: ${one.unreadable}`);
      expect(close(isCellError(one.answer) ? one.answer.code : one.answer, shows), `${file} ${formula}: ${shows}`).toBe(
        true,
      );
      expect(words(files.get(file)!)).toContain(shows);
    }
  });
});

/** Where formulas of tables stand in the workbook of a guide: below its sheets, each with room to spill. */
const FIRST_TABLE_ROW = 100;
const ROOM = 60;

const cellsOf = ({ cells }: HelpSheet): SheetCell[] =>
  cells.flatMap((row, r) =>
    row.map((cell, c): SheetCell => {
      const place = { row: r + 1, column: c + 1 };
      return typeof cell === 'object'
        ? { ...place, value: null, formula: { text: cell.formula.slice(1), fills: 'single' } }
        : { ...place, value: cell };
    }),
  );

/** The sheets of a guide as a workbook, its spilling formulas on the first of them. */
const bookOf = ({ pieces = {}, names = {} }: Guide): Book => {
  const all = Object.entries(pieces);
  const tables = all.flatMap(([, piece], i): SheetCell[] =>
    piece.kind === 'table'
      ? [
          {
            row: FIRST_TABLE_ROW + i * ROOM,
            column: 1,
            value: null,
            formula: { text: piece.formula.slice(1), fills: 'dynamic' },
          },
        ]
      : [],
  );
  const sheets = all.flatMap(([name, piece]) => (piece.kind === 'sheet' ? [{ name, cells: cellsOf(piece) }] : []));
  const [first = { name: 'sheet', cells: [] }, ...others] = sheets;
  return {
    sheets: [{ ...first, cells: [...first.cells, ...tables] }, ...others],
    names: Object.entries(names).map(([name, text]) => ({ name, text: absolute(text) })),
    tables: [],
  };
};

const absolute = (reference: string): string => reference.replace(/([A-Z]+)(\d+)/g, '$$$1$$$2');

/** A cell as it came out of the engine, as the pages print it. */
const shown = (cell: SheetValue): string =>
  cell === null ? '' : typeof cell === 'object' ? cell.error : typeof cell === 'number' ? plain(cell) : cellText(cell);

const worked = GUIDES.filter(({ pieces }) => pieces);
describe.each(worked.map((guide) => [guide.file, guide] as const))('sheets and tables of %s', (_, guide) => {
  test('show what the engine calculates', async () => {
    const engine = createEngine(functions);
    try {
      const results = await calculateBook(engine, bookOf(guide));
      const calculated = results.flatMap(({ sheet, calculated: all }) =>
        all.map((one) => ({ sheet: sheet.name, ...one })),
      );
      let compared = 0;
      for (const [i, [name, piece]] of Object.entries(guide.pieces!).entries()) {
        if (piece.kind === 'table') {
          const found = calculated.find(({ cell }) => cell.row === FIRST_TABLE_ROW + i * ROOM)!;
          expect(
            found.rows.map((row) => row.map(shown)),
            piece.formula,
          ).toEqual(asRows(piece.answer).map((row) => row.map(cellText)));
          expect(shownRows(piece).length).toBeGreaterThan(1);
          compared += 1;
          continue;
        }
        for (const [r, row] of piece.cells.entries())
          for (const [c, cell] of row.entries()) {
            if (typeof cell !== 'object') continue;
            const found = calculated.find(
              (one) => one.sheet === name && one.cell.row === r + 1 && one.cell.column === c + 1,
            );
            const value = found?.rows[0]?.[0];
            expect(close(value, cell.shows), `${cell.formula}: ${cell.shows}, calculated ${String(value)}`).toBe(true);
            compared += 1;
          }
      }
      expect(compared).toBeGreaterThan(0);
    } finally {
      engine.dispose();
    }
  });
});
