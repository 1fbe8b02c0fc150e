/** A table that one formula spills, laid out with a number format for each row by its unit. */
import type { Answer, Argument } from '../../functions/calling/cell.ts';
import { functions } from '../../functions/index.ts';
import { address, type CellPlan, calculate, put, type SheetPlan } from './book.ts';

/** Decimals that a unit is worth. */
const DECIMALS: Readonly<Record<string, number>> = {
  count: 0,
  cm: 1,
  in: 1,
  mm: 1,
  kg: 1,
  lb: 1,
  L: 1,
  'US qt': 1,
  m: 1,
  yd: 1,
  degrees: 0,
  hours: 0,
  '°C': 0,
  '°F': 0,
};

/** A count that is not whole, such as sheets of padding, shows its parts. */
const formatOf = (unit: unknown, numbers: readonly unknown[]): string => {
  const parts = unit === 'count' && numbers.some((x) => typeof x === 'number' && !Number.isInteger(x));
  const decimals = parts ? 2 : (DECIMALS[String(unit)] ?? 2);
  return decimals ? `0.${'0'.repeat(decimals)}` : '0';
};

/**
 * Cells of a spilled table whose first row is a heading.
 *
 * @param id the function, called once here to know how many rows there are and in which units
 * @param args what it is called with in the sheet, as values
 * @param formula the formula of the first cell
 * @param row, column where the first cell stands, counted from 0
 */
export const spilledTable = (
  id: string,
  args: readonly Argument[],
  formula: string,
  row: number,
  column: number,
): CellPlan[][] => {
  const answer = answerOf(id, args);
  const unitColumn = answer[0]!.indexOf('unit');
  const area = `${address(row, column)}:${address(row + answer.length - 1, column + answer[0]!.length - 1)}`;
  return answer.map((cells, r) =>
    cells.map((cell, c): CellPlan => {
      if (r === 0) {
        const look = c === 0 || c === unitColumn ? 'heading' : 'numberHeading';
        return c === 0 ? calculate(formula, look, undefined, area) : put(null, look);
      }
      const isText = c === 0 || c === unitColumn;
      return put(
        null,
        isText ? 'label' : 'result',
        isText || typeof cell !== 'number' ? undefined : formatOf(cells[unitColumn], cells),
      );
    }),
  );
};

/** What a function answers for arguments that a sample holds. */
export const answerOf = (id: string, args: readonly Argument[]): Answer[][] =>
  functions.find((f) => f.id === id)!.call(args) as Answer[][];

/**
 * A sheet of plain values: what spilled tables of the workbook show, for programs without the functions, which cannot show them.
 *
 * @param tables titles with the tables, one under the other
 */
export const valuesSheet = (
  tables: readonly { readonly title: string; readonly rows: readonly (readonly unknown[])[] }[],
  charts: SheetPlan['charts'] = [],
): SheetPlan => {
  const columns = Math.max(...tables.map(({ rows }) => rows[0]!.length));
  const rows = [
    [put('The same as plain values', 'title')],
    [
      put(
        'For programs without the functions: the values of this workbook as it was made. They do not follow when something is changed.',
        'faint',
      ),
    ],
    ...tables.flatMap(({ title, rows: table }): CellPlan[][] => {
      const units = table[0]!.indexOf('unit');
      return [
        [],
        [put(title, 'label')],
        ...table.map((cells, r) =>
          cells.map((cell, c): CellPlan => {
            if (r === 0) return put(String(cell), typeof table[1]![c] === 'number' ? 'numberHeading' : 'heading');
            const shown =
              typeof cell === 'boolean'
                ? cell
                  ? 'yes'
                  : 'no'
                : typeof cell === 'object'
                  ? ''
                  : (cell as string | number);
            const format = typeof cell === 'number' ? (units >= 0 ? formatOf(cells[units], cells) : '0.00') : undefined;
            return put(shown, c === 0 ? 'label' : 'result', format);
          }),
        ),
      ];
    }),
  ];
  return {
    name: 'Values',
    widths: Array.from({ length: columns }, (_, c) => (c === 0 ? 26 : 14)),
    rows,
    landscape: true,
    printTo: address(
      Math.max(rows.length - 1, ...charts.map(({ anchor }) => anchor.to?.row ?? 0)),
      Math.max(columns - 1, ...charts.map(({ anchor }) => anchor.to?.col ?? 0)),
    ),
    charts: [...charts],
  };
};
