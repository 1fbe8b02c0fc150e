/** A season of invented jackets: every specimen planned, everything summed in packs and money, and what was really used fed back. */
import type { SheetChart } from 'hucre';
import { SETTINGS } from '../../calculation/settings.ts';
import type { Answer, Argument } from '../../functions/calling/cell.ts';
import { address, type BookPlan, type CellPlan, CLAY, calculate, put, type SheetPlan, withUnit } from './book.ts';
import { MUSEUM, SPECIMENS } from './museum.ts';
import { readMe, shopSettings } from './parts.ts';
import { answerOf, valuesSheet } from './spilled-table.ts';

const NOTE = `${MUSEUM}: invented specimens, invented prices. Estimates for planning: weigh before you lift.`;

/** Twenty jackets for the season. */
const CHOSEN = SPECIMENS.filter((_, i) => i % 2 === 0);
const FRAGILE = /tooth|skull|egg|slab|hand|foot/;
const HIGH_RELIEF = /vertebra|skull|pelvis/;

const HEADINGS = ['number', 'element', 'length', 'width', 'height', 'weight', 'fragile', 'relief'];
/** Row of the headings, counted from 1. */
const HEAD = 4;
const last = HEAD + CHOSEN.length;

const season = (): SheetPlan => ({
  name: 'Season',
  widths: [10, 28, 9, 9, 9, 10, 10, 10],
  rows: [
    [put('Specimens of the season', 'title')],
    [put(NOTE, 'faint')],
    [put('Sizes in cm, weights in kg.', 'faint')],
    HEADINGS.map((name, i) => put(name, i >= 2 && i <= 5 ? 'numberHeading' : 'heading')),
    ...CHOSEN.map((s) => [
      put(s.number, 'input'),
      put(s.element, 'input'),
      ...s.size.map((x) => put(x, 'input')),
      put(s.weight, 'input'),
      put(FRAGILE.test(s.element), 'input'),
      put(HIGH_RELIEF.test(s.element) ? 'high' : 'low', 'input'),
    ]),
  ],
  frozen: { rows: HEAD, columns: 2 },
  tables: [
    {
      name: 'Season',
      displayName: 'Season',
      range: `A${HEAD}:H${last}`,
      columns: HEADINGS.map((name) => ({ name })),
      style: 'TableStyleLight1',
      showAutoFilter: true,
      showRowStripes: false,
    },
  ],
  validations: [
    { type: 'list', values: ['high', 'low'], range: `H${HEAD + 1}:H${last}`, allowBlank: true },
    { type: 'decimal', operator: 'greaterThan', formula1: '0', range: `C${HEAD + 1}:F${last}`, allowBlank: true },
  ],
  printTo: `H${last}`,
  headingRow: HEAD,
});

/** The season as COLLECTION reads it. */
const TABLE: Argument = [
  HEADINGS,
  ...CHOSEN.map((s) => [
    s.number,
    s.element,
    ...s.size,
    s.weight,
    FRAGILE.test(s.element),
    HIGH_RELIEF.test(s.element) ? 'high' : 'low',
  ]),
];

const planned = (): Answer[][] => answerOf('COLLECTION', [TABLE, settingsRows()]);

const DECIMALS: Readonly<Record<string, string>> = {
  layers: '0',
  'shell area': withUnit(2, 'm²'),
  plaster: withUnit(1, 'kg'),
  water: withUnit(1, 'kg'),
  mixes: '0',
  cloth: withUnit(1, 'm'),
  'felt sheets': '0.00',
  'foam sheets': '0.00',
  sealer: withUnit(2, 'L'),
  bolts: '0',
  weight: withUnit(1, 'kg'),
  'wet weight': withUnit(1, 'kg'),
  margin: withUnit(1, 'cm'),
  'tip angle': withUnit(0, '°'),
  'safety factor': '0.0',
  'rib height': withUnit(1, 'cm'),
  crew: '0',
};

/** Plaster of each jacket, from a table whose headings stand in row `heading`, counted from 1. */
const plasterChart = (sheet: string, heading: number, row: number): SheetChart => {
  const column = address(0, (planned()[0] as string[]).indexOf('plaster')).replace('1', '');
  const rows = (letter: string) => `'${sheet}'!$${letter}$${heading + 1}:$${letter}$${heading + CHOSEN.length}`;
  return {
    type: 'bar',
    title: 'Plaster for each jacket, kg',
    series: [{ name: 'plaster', values: rows(column), categories: rows('B'), color: CLAY }],
    legend: false,
    anchor: { from: { row, col: 1 }, to: { row: row + 28, col: 10 } },
  };
};

const plans = (): SheetPlan => {
  const table = planned();
  const names = table[0] as string[];
  const area = `A${HEAD}:${address(HEAD - 1 + table.length - 1, names.length - 1)}`;
  const isText = (name: string) => DECIMALS[name] === undefined;
  return {
    name: 'Plans',
    widths: names.map((name) => (name === 'element' ? 28 : name === 'note' ? 40 : 11)),
    rows: [
      [put('What each jacket needs', 'title')],
      [put(NOTE, 'faint')],
      [put('One formula for all rows, in the first cell of the headings.', 'faint')],
      names.map((name, c): CellPlan => {
        const look = isText(name) ? 'heading' : 'numberHeading';
        return c === 0 ? calculate('JACKET.COLLECTION(Season[#All],Shop)', look, undefined, area) : put(null, look);
      }),
      ...table.slice(1).map(() => names.map((name) => put(null, isText(name) ? 'text' : 'result', DECIMALS[name]))),
    ],
    frozen: { rows: HEAD, columns: 2 },
    landscape: true,
    printTo: address(HEAD + table.length - 2, names.length - 1),
    headingRow: HEAD,
    charts: [plasterChart('Plans', HEAD, last + 2)],
  };
};

const BUDGET_ROWS = [
  'plaster',
  'cloth',
  'felt sheets',
  'foam sheets',
  'sealer',
  'bolts',
  'total',
  'rows counted',
  'rows blank',
];

const budget = (): SheetPlan => ({
  name: 'Budget',
  widths: [18, 12, 10, 10, 12, 12],
  rows: [
    [put('What to order for the season', 'title')],
    [put(NOTE, 'faint')],
    [
      put(
        'Packs are whole; what is left over stays for the next season. A price that is blank leaves the cost blank, never 0.',
        'faint',
      ),
    ],
    Array.from({ length: 6 }, (_, c) => {
      const look = c === 0 || c === 2 ? 'heading' : 'numberHeading';
      return c === 0
        ? calculate(
            'JACKET.BUDGET(JACKET.COLLECTION(Season[#All],Shop),Shop)',
            look,
            undefined,
            `A${HEAD}:F${HEAD + BUDGET_ROWS.length}`,
          )
        : put(null, look);
    }),
    ...BUDGET_ROWS.map((name) =>
      ['', '0.0', '', '0', '0.0', '0.00'].map((format, c) =>
        put(null, c === 0 ? 'label' : 'result', format && (name.startsWith('rows') ? '0' : format)),
      ),
    ),
    [],
    [put('plaster, by the sum of the plans', 'label'), calculate(`SUM(${sumOf('plaster')})`, 'result', '0.0')],
    [put('cloth, by the sum of the plans', 'label'), calculate(`SUM(${sumOf('cloth')})`, 'result', '0.0')],
  ],
  frozen: { rows: HEAD, columns: 1 },
  printTo: `F${HEAD + BUDGET_ROWS.length + 3}`,
});

const sumOf = (name: string): string => {
  const column = address(0, (planned()[0] as string[]).indexOf(name)).replace('1', '');
  return `Plans!${column}${HEAD + 1}:${column}${last}`;
};

/** Plaster estimated then and weighed afterwards [kg]: invented. */
const USED: readonly (readonly [string, string, number, number])[] = [
  ['INV 021', 'femur, left', 13.4, 14.2],
  ['INV 028', 'tibia', 10.9, 11.9],
  ['INV 035', 'ilium', 15.8, 16.1],
  ['INV 042', 'skull, crushed flat', 13.1, 15],
  ['INV 049', 'shell, turtle', 13.2, 13.9],
  ['INV 056', 'rib, middle', 6.2, 6.6],
];

const usedFirst = HEAD + 1;
const usedLast = HEAD + USED.length;

const used = (): SheetPlan => ({
  name: 'Really used',
  widths: [10, 26, 20, 20, 4, 34, 12, 12, 12],
  rows: [
    [put('What was really used', 'title')],
    [put(`${MUSEUM}: invented jackets of the last season. Weigh what you use and note it here.`, 'faint')],
    [],
    [
      ...['number', 'element'].map((name) => put(name, 'heading')),
      ...['plaster estimated, kg', 'plaster used, kg'].map((name) => put(name, 'numberHeading')),
      null,
      put('used over estimated', 'heading'),
      ...['factor', 'low', 'high'].map((name) => put(name, 'numberHeading')),
    ],
    ...USED.map(([number, element, estimated, really], i): (CellPlan | null)[] => [
      put(number, 'input'),
      put(element, 'input'),
      put(estimated, 'input', '0.0'),
      put(really, 'input', '0.0'),
      null,
      ...(i === 0
        ? [
            put('all of them, with a 95 % interval', 'label'),
            calculate(
              `JACKET.CALIBRATE(C${usedFirst}:C${2 * usedLast},D${usedFirst}:D${2 * usedLast})`,
              'result',
              '0.000',
              `G${usedFirst}:I${usedFirst}`,
            ),
            put(null, 'result', '0.000'),
            put(null, 'result', '0.000'),
          ]
        : i === 1
          ? [
              put('the same with built-in functions', 'label'),
              calculate(`SUM(D${usedFirst}:D${2 * usedLast})/SUM(C${usedFirst}:C${2 * usedLast})`, 'result', '0.000'),
            ]
          : i === 2
            ? [put('jackets it rests on', 'label'), calculate(`COUNT(D${usedFirst}:D${2 * usedLast})`, 'result', '0')]
            : []),
    ]),
  ],
  frozen: { rows: HEAD, columns: 2 },
  landscape: true,
  printTo: `I${usedLast}`,
});

/** Invented prices of one pack, in any money. */
const PRICES = {
  plasterPrice: 38,
  clothPrice: 210,
  feltPrice: 64,
  foamPrice: 31,
  sealerPrice: 45,
  boltPrice: 18,
} as const;

/** The settings that the shop sheet holds, as a formula reads them. */
const settingsRows = (): Argument => {
  const [factor, low, high] = answerOf('CALIBRATE', [
    USED.map(([, , estimated]) => [estimated]),
    USED.map(([, , , really]) => [really]),
  ])[0] as number[];
  return [
    ['calibration', factor!],
    ['calibration low', low!],
    ['calibration high', high!],
    ...Object.entries(PRICES).map(([key, price]): [string, number] => [
      SETTINGS[key as keyof typeof PRICES].name,
      price,
    ]),
  ];
};

const fed = (cell: string): CellPlan => calculate(`IFERROR('Really used'!${cell}${usedFirst},"")`, 'input', '0.000');

export const seasonBudget = (): BookPlan => {
  const shop = shopSettings('Shop settings', 'metric', {
    calibration: fed('G'),
    calibrationLow: fed('H'),
    calibrationHigh: fed('I'),
    ...PRICES,
  });
  return {
    file: 'season-budget.xlsx',
    title: 'A season’s budget',
    names: [{ name: 'Shop', range: shop.range }],
    sheets: [
      readMe('A season’s budget', [
        'Season: the specimens that get a jacket this season, in a table with the columns that a collection sheet has anyway. Columns may stand in any order; those that the formulas do not know are left alone.',
        'Plans: one formula, JACKET.COLLECTION, gives a row for each specimen: padding, layers, plaster, water, mixes, cloth, sheets, sealer, bolts, weights, feet, strength and the people to lift it. A row that cannot be planned says why in its note.',
        'Budget: one formula, JACKET.BUDGET, sums the season, rounds up to packs, and tells cost and what is left over. The prices in the shop settings are invented.',
        'Really used: note what a jacket really took. JACKET.CALIBRATE gives the factor, and the shop settings use it for the next estimate.',
        'Values: plans and budget as plain values, for programs without the functions, which cannot show a table that spills from one formula.',
      ]),
      season(),
      plans(),
      budget(),
      used(),
      shop.sheet,
      valuesSheet(
        [
          { title: 'Plans', rows: planned() },
          { title: 'Budget', rows: answerOf('BUDGET', [planned() as Argument, settingsRows()]) },
        ],
        [plasterChart('Values', 5, CHOSEN.length + 24)],
      ),
    ],
  };
};
