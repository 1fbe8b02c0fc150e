/** Felt against foam for one invented specimen, in both unit systems, with a chart. */

import type { SheetChart } from 'hucre';
import type { UnitSystem } from '../../functions/calling/units.ts';
import { type BookPlan, type CellPlan, CLAY, FAINT_INK, put, type SheetPlan } from './book.ts';
import { MUSEUM } from './museum.ts';
import { readMe, shopSettings } from './parts.ts';
import { answerOf, spilledTable, valuesSheet } from './spilled-table.ts';

const HEAD = 8;

const METRIC_SIZE = [72, 41, 13, 54];
const US_SIZE = [28.5, 16, 5, 119];

/** Felt against foam, dry and wet, from a table whose headings stand in row `first`, counted from 1. */
const weightChart = (sheet: string, first: number, unit: string): SheetChart => {
  const items = answerOf('COMPARE', METRIC_SIZE).map(([item]) => item);
  const [from, to] = [first + items.indexOf('weight'), first + items.indexOf('wet weight')];
  const series = (title: string, column: string, rgb: string) => ({
    name: title,
    values: `'${sheet}'!$${column}$${from}:$${column}$${to}`,
    categories: `'${sheet}'!$A$${from}:$A$${to}`,
    color: rgb,
  });
  return {
    type: 'column',
    title: `Weight dry and wet, ${unit}`,
    series: [series('felt', 'B', CLAY), series('foam', 'C', FAINT_INK)],
    legend: 'bottom',
    axes: { y: { scale: { min: 0 } } },
    anchor: { from: { row: 2, col: 10 }, to: { row: 20, col: 17 } },
  };
};

const compareSheet = (name: string, system: UnitSystem): SheetPlan => {
  const metric = system === 'metric';
  const size = metric ? METRIC_SIZE : US_SIZE;
  const settings = metric ? 'Shop' : '"us"';
  const [length, weight] = metric ? ['cm', 'kg'] : ['in', 'lb'];
  const names = ['length', 'width', 'height', 'weight'];
  const table = spilledTable('COMPARE', [...size, system], `JACKET.COMPARE(B4,B5,B6,B7,${settings})`, HEAD, 0);
  return {
    name,
    widths: [24, 16, 16, 13, 8, 12, 12, 12, 12],
    rows: [
      [put('Felt or foam?', 'title')],
      [put(`${MUSEUM}: invented specimen. Estimates for planning: weigh before you lift.`, 'faint')],
      [put('given', 'heading'), put('value', 'numberHeading'), put('unit', 'heading')],
      ...names.map((item, i): CellPlan[] => [
        put(item, 'label'),
        put(size[i]!, 'input'),
        put(i < 3 ? length! : weight!, 'faint'),
      ]),
      [],
      ...table,
    ],
    frozen: { rows: HEAD + 1, columns: 1 },
    printTo: `I${HEAD + table.length}`,
    landscape: true,
    charts: [weightChart(name, HEAD + 1, weight!)],
  };
};

export const feltOrFoam = (): BookPlan => {
  const shop = shopSettings('Shop settings', 'metric');
  return {
    file: 'felt-or-foam.xlsx',
    title: 'Felt or foam?',
    names: [{ name: 'Shop', range: shop.range }],
    sheets: [
      readMe('Felt or foam?', [
        'Type the size and weight of a specimen: one formula, JACKET.COMPARE, plans its jacket once with polyester felt and once with polyethylene foam, item by item, with low and high for both.',
        'Felt suits small, fragile or high-relief specimens; foam suits larger and heavier ones, but a foam-padded half needs two mixes. That is common practice, no published rule was found.',
        'Prices of felt and foam can be set in the shop settings; a budget of a season uses them.',
        'Values: both tables as plain values, for programs without the functions, which cannot show a table that spills from one formula.',
      ]),
      compareSheet('Felt or foam', 'metric'),
      compareSheet('US units', 'us'),
      shop.sheet,
      valuesSheet(
        [
          { title: 'Felt or foam', rows: answerOf('COMPARE', METRIC_SIZE) },
          { title: 'US units', rows: answerOf('COMPARE', [...US_SIZE, 'us']) },
        ],
        [weightChart('Values', 5, 'kg')],
      ),
    ],
  };
};
