import { BUDGET_ITEMS, type BudgetItem, purchase, totalCost } from '../calculation/plans/budget.ts';
import { amount, type Fault, isFault, wrong } from '../calculation/result.ts';
import type { Settings } from '../calculation/settings.ts';
import { listed, Refusal, table } from './calling/arguments.ts';
import { type Cell, CellError, isCellError, type Rows } from './calling/cell.ts';
import { findColumns } from './calling/header.ts';
import { shownPlain } from './calling/names.ts';
import { clipped, valueError } from './calling/reasons.ts';
import { type TableCell, unitOf } from './calling/tables.ts';
import { toSi, type UnitSystem } from './calling/units.ts';
import { define } from './define.ts';

const HEADER = ['item', 'needed', 'unit', 'packs', 'left over', 'cost'];
const NAMES = BUDGET_ITEMS.map(({ name }) => name);

const isBlank = (cell: Cell): boolean => cell === null || cell === '';

/** The sum of a column in the unit of the table, or the error of the first cell that is no number, with its row. */
const sumOf = (name: string, cells: readonly Cell[]): number | CellError => {
  let sum = 0;
  for (const [i, cell] of cells.entries()) {
    if (isBlank(cell)) continue;
    const place = `${name} in row ${i + 1} below the names`;
    if (isCellError(cell))
      return new CellError(
        cell.code,
        clipped(cell.reason ? `${place}: ${cell.reason}` : `${place} is the error ${cell.code}; mend that row first`),
      );
    if (typeof cell === 'string') return valueError(`${place} is text; type a number`);
    if (typeof cell !== 'number' || !(cell >= 0 && cell < Infinity))
      return valueError(`${place} is ${shownPlain(cell)}; type a number, 0 or more`);
    sum += cell;
  }
  return sum;
};

interface Line {
  readonly cells: readonly TableCell[];
  /** null where it is not known. */
  readonly cost: number | null | Fault | CellError;
}

const lineOf = (item: BudgetItem, cells: readonly Cell[], settings: Settings, system: UnitSystem): Line => {
  const { name, quantity } = item;
  const sum = sumOf(name, cells);
  const bought = isCellError(sum) ? sum : purchase(toSi(sum, quantity, system), item, settings);
  if (isCellError(sum) || isCellError(bought) || isFault(bought)) {
    const error = bought as Fault | CellError;
    return { cells: [name, error, unitOf(quantity), error, error, error], cost: error };
  }
  const { packs, leftOver, cost } = bought;
  return { cells: [name, sum, unitOf(quantity), packs, amount(leftOver, quantity), cost], cost };
};

const totalOf = (lines: readonly Line[]): TableCell => {
  const costs: (number | null)[] = [];
  for (const { cost } of lines) {
    if (isFault(cost) || isCellError(cost)) return cost;
    costs.push(cost);
  }
  return totalCost(costs);
};

const isBlankRow = (row: readonly Cell[], columns: readonly number[]): boolean =>
  columns.every((i) => isBlank(row[i]!) || row[i] === 0);

export default define({
  id: 'BUDGET',
  topic: 'jobs',
  question: 'What is to be bought for all of them?',
  description: 'Sums a table such as that of COLLECTION: needed, packs, left over and cost of each item.',
  equation: 'packs = the sum of the column ÷ pack, rounded up; left over = packs × pack − sum; cost = packs × price',
  math: String.raw`\text{packs} = \left\lceil\frac{\sum\text{needed}}{\text{pack}}\right\rceil
\text{left over} = \text{packs} \times \text{pack} - \sum\text{needed}
\text{cost} = \text{packs} \times \text{price}`,
  arguments: { table: table('a table with a row of names, such as COLLECTION gives') },
  settings: true,
  result: {
    kind: 'table',
    what: 'item, needed, unit, packs, left over, cost; then total, rows counted, rows blank',
    header: true,
  },
  examples: [
    {
      args: [
        [
          ['plaster', 'bolts'],
          [30, 12],
          [20, 9],
        ],
        [['plaster price', 40]],
      ],
      value: [
        HEADER,
        ['plaster', 50, 'kg', 3, 18.0388555, 120],
        ['bolts', 21, 'count', 1, 29, ''],
        ['total', '', '', '', '', ''],
        ['rows counted', 2],
        ['rows blank', 0],
      ],
    },
  ],
  basis: 'derived',
  source: 'arithmetic; sizes of packs are assumptions, prices are your own',
  remarks: [
    'Columns are found by name: plaster, cloth, felt sheets, foam sheets, sealer, bolts; others are left alone, and a column that is not there has no row.',
    'Without a price the cost is blank, and so is the total: a sum without it would be too low.',
  ],
  limits: [{ text: 'only what these columns hold: no tools, protective gear or freight' }],
  related: ['COLLECTION', 'SETTINGS'],
  run: ({ table: rows }, settings, system) => {
    const columns = findColumns(rows[0] ?? [], NAMES);
    if (columns instanceof Refusal) return wrong('', columns.reason);
    if (!columns.size) return wrong('table', `has no column named ${listed(NAMES)}; put names in its first row`);
    const below: Rows = rows.slice(1);
    const lines = BUDGET_ITEMS.filter(({ name }) => columns.has(name)).map((item) => {
      const i = columns.get(item.name)!;
      return lineOf(
        item,
        below.map((row) => row[i] ?? null),
        settings,
        system,
      );
    });
    const blank = below.filter((row) => isBlankRow(row, [...columns.values()])).length;
    return [
      HEADER,
      ...lines.map(({ cells }) => cells),
      ['total', '', '', '', '', totalOf(lines)],
      ['rows counted', below.length - blank, '', '', '', ''],
      ['rows blank', blank, '', '', '', ''],
    ];
  },
});
