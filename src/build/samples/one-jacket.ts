/** One jacket from its size and weight: the whole plan, and six of its numbers worked out again with built-in functions. */
import type { UnitSystem } from '../../functions/calling/units.ts';
import { functions } from '../../functions/index.ts';
import { type BookPlan, type CellPlan, calculate, put, type SheetPlan } from './book.ts';
import { MUSEUM } from './museum.ts';
import { readMe, shopSettings } from './parts.ts';
import { answerOf, spilledTable, valuesSheet } from './spilled-table.ts';

const NOTE = `${MUSEUM}: invented specimen. Estimates for planning: weigh before you lift.`;

/** An invented thigh bone: length, width, height, weight. */
const METRIC_SIZE = [90, 24, 17.5, 51];
const US_SIZE = [35.5, 9.5, 7, 112];

/** Row of the headings, counted from 0. */
const HEAD = 3;

/** In which row of the sheet, counted from 1, the plan has an item. */
const rowOf = (item: string): number => {
  const plan = functions.find((f) => f.id === 'PLAN')!.call(METRIC_SIZE) as unknown[][];
  return HEAD + 1 + plan.findIndex(([name]) => name === item);
};

interface Check {
  readonly item: string;
  readonly formula: string;
  readonly words: string;
}

const value = (item: string): string => `E${rowOf(item)}`;

/** The same quantities from the defaults, with nothing but built-in functions. */
const CHECKS: readonly Check[] = [
  { item: 'volume', formula: '4/3*PI()*(B5/2)*(B6/2)*(B7/2)/1000', words: '4/3·π·a·b·c' },
  { item: 'thickness', formula: '(B12+1)*1.5+1', words: '(layers + cover layer) × 1.5 mm + 1 mm' },
  {
    item: 'plaster',
    formula: `${value('shell area')}*(${value('mean layers')}*(1.5-0.203434484849/2.54)+1)/(1/2.76+0.38/0.998)*1.1`,
    words: 'area × (mean layers × plaster part of a layer + finish coat) ÷ slurry of 1 kg × 1.1',
  },
  { item: 'water', formula: `0.38*${value('plaster')}`, words: '0.38 × plaster' },
  { item: 'slurry', formula: `${value('plaster')}*(1/2.76+0.38/0.998)`, words: 'plaster × (1/2.76 + 0.38/0.998)' },
  {
    item: 'padding sheets',
    formula: `${value('shell area')}*1.1/(2.7432*1.2192)`,
    words: 'area × 1.1 ÷ area of a sheet',
  },
];

const given = (name: string, cell: string | number | null, unit: string): (CellPlan | null)[] => [
  put(name, 'label'),
  put(cell, 'input'),
  put(unit, 'faint'),
];

const jacketSheet = (name: string, system: UnitSystem): SheetPlan => {
  const metric = system === 'metric';
  const size = metric ? METRIC_SIZE : US_SIZE;
  const settings = metric ? 'Shop' : '"us"';
  const [length, weight] = metric ? ['cm', 'kg'] : ['in', 'lb'];
  const plan = spilledTable('PLAN', [...size, null, system], `JACKET.PLAN(B5,B6,B7,B8,B9,${settings})`, HEAD, 3);
  const left: (CellPlan | null)[][] = [
    [put('given', 'heading'), put('value', 'numberHeading'), put('unit', 'heading')],
    given('length', size[0]!, length!),
    given('width', size[1]!, length!),
    given('height', size[2]!, length!),
    given('weight', size[3]!, weight!),
    given('padding', 'felt', 'felt, foam or blank'),
    [],
    [put('for the check', 'heading'), put('value', 'numberHeading'), put('', 'heading')],
    [put('layers', 'label'), calculate(`JACKET.LAYERS(B8,${settings})`, 'result', '0')],
  ];
  const checks: (CellPlan | null)[][] = metric
    ? [
        [],
        [
          put('the same with built-in functions', 'heading'),
          put('value', 'numberHeading'),
          put('difference', 'numberHeading'),
        ],
        ...CHECKS.map(({ item, formula }): (CellPlan | null)[] => [
          put(item, 'label'),
          calculate(formula, 'result', '0.0000'),
          calculate(`ROUND(B${14 + 1 + CHECKS.findIndex((c) => c.item === item)}-${value(item)},9)`, 'result', '0'),
        ]),
        [],
        ...CHECKS.map(({ item, words }): (CellPlan | null)[] => [put(`${item}: ${words}`, 'faint')]),
      ]
    : [];
  const column = [...left, ...checks];
  const rows = Math.max(column.length, plan.length);
  return {
    name,
    widths: [32, 14, 20, 24, 18, 9, 12, 12],
    rows: [
      [put('One jacket', 'title')],
      [put(NOTE, 'faint')],
      [],
      ...Array.from({ length: rows }, (_, i) => {
        const cells = column[i] ?? [];
        return [cells[0] ?? null, cells[1] ?? null, cells[2] ?? null, ...(plan[i] ?? [])];
      }),
    ],
    frozen: { rows: HEAD + 1, columns: 0 },
    validations: [{ type: 'list', values: ['felt', 'foam'], range: 'B9', allowBlank: true }],
    printTo: `H${rows + HEAD}`,
    landscape: false,
  };
};

export const oneJacket = (): BookPlan => {
  const shop = shopSettings('Shop settings', 'metric');
  return {
    file: 'one-jacket.xlsx',
    title: 'One jacket',
    names: [{ name: 'Shop', range: shop.range }],
    sheets: [
      readMe('One jacket', [
        'Type the size and weight of a specimen into the left column: one formula, JACKET.PLAN, gives the whole plan, from layers and plaster to feet, strength and the people to lift it.',
        'Low and high tell how far a number may be off: each uncertain input is moved to the ends of its range, one at a time, and the deviations are added in quadrature.',
        'Under the sizes six of the numbers are worked out again with nothing but built-in functions, from the defaults. The difference must be 0 as long as the shop settings are the defaults.',
        'US units: the same in inches and pounds.',
        'Values: both plans as plain values, for programs without the functions, which cannot show a table that spills from one formula.',
      ]),
      jacketSheet('Jacket', 'metric'),
      jacketSheet('US units', 'us'),
      shop.sheet,
      valuesSheet([
        { title: 'Jacket', rows: answerOf('PLAN', [...METRIC_SIZE, 'felt']) },
        { title: 'US units', rows: answerOf('PLAN', [...US_SIZE, 'felt', 'us']) },
      ]),
    ],
  };
};
