/** A collection sheet of forty invented specimens with what their jackets need, three ways: spilled from a table, row by row, in US units. */
import { fromSi, toSi, type UnitSystem } from '../../functions/calling/units.ts';
import { address, type BookPlan, type CellPlan, calculate, put, type SheetPlan, withUnit } from './book.ts';
import { MUSEUM, SPECIMENS, type Specimen } from './museum.ts';
import { readMe, shopSettings } from './parts.ts';

interface Units {
  readonly system: UnitSystem;
  readonly area: string;
  readonly mass: string;
  readonly cloth: string;
}

const METRIC: Units = { system: 'metric', area: 'm²', mass: 'kg', cloth: 'm' };
const US: Units = { system: 'us', area: 'ft²', mass: 'lb', cloth: 'yd' };

/** Sizes as somebody with an inch tape would write them: to a quarter of an inch, and pounds to a tenth. */
const inUnits = ({ size, weight }: Specimen, system: UnitSystem): number[] => {
  if (system === 'metric') return [...size, weight];
  const inches = size.map((cm) =>
    Math.max(0.25, Math.round(fromSi(toSi(cm, 'length', 'metric'), 'length', 'us') * 4) / 4),
  );
  return [...inches, Math.max(0.1, Math.round(fromSi(weight, 'mass', 'us') * 10) / 10)];
};

const INPUTS = ['number', 'element', 'length', 'width', 'height', 'weight'];
const RESULTS = [
  'layers',
  'layers laid',
  'shell area',
  'plaster',
  'water',
  'mixes',
  'cloth',
  'padding sheets',
  'dry weight',
];
/** The first inputs are text. */
const TEXT_COLUMNS = 2;
/** Rows above the headings. */
const ABOVE = 4;
const first = ABOVE + 1;
/** Rows of the table that are left blank, for specimens to come. */
const BLANK_ROWS = 8;
const last = ABOVE + SPECIMENS.length + BLANK_ROWS;
/** Results begin after the inputs and one empty column. */
const RESULT_COLUMN = INPUTS.length + 1;

const formats = (u: Units): (string | undefined)[] => [
  '0',
  '0',
  withUnit(2, u.area),
  withUnit(1, u.mass),
  withUnit(1, u.mass),
  '0',
  withUnit(1, u.cloth),
  '0.00',
  withUnit(1, u.mass),
];

/** Columns whose sum is worth having. */
const SUMMED = new Set(['plaster', 'water', 'mixes', 'cloth', 'padding sheets']);

const headRows = (title: string, units: Units): (CellPlan | null)[][] => [
  [put(title, 'title')],
  [put(`${MUSEUM}: invented specimens. Weights are estimates for planning: weigh before you lift.`, 'faint')],
  [
    ...Array.from({ length: RESULT_COLUMN }, () => null),
    ...RESULTS.map((name, i) => {
      const column = address(0, RESULT_COLUMN + i).replace('1', '');
      // Twice as far down as the specimens reach, so that new rows are summed too.
      return SUMMED.has(name)
        ? calculate(`SUM(${column}${first}:${column}${2 * last})`, 'total', formats(units)[i])
        : name === 'shell area'
          ? put('sums', 'faint')
          : null;
    }),
  ],
  [],
];

const inputCells = (s: Specimen, system: UnitSystem): CellPlan[] => [
  put(s.number, 'input'),
  put(s.element, 'input'),
  ...inUnits(s, system).map((x) => put(x, 'input')),
];

const WIDTHS = [10, 26, 8, 8, 8, 9, 3, 8, 8, 11, 11, 11, 8, 10, 10, 11];

const sheetOf = (
  name: string,
  title: string,
  units: Units,
  table: string,
  results: (row: number) => (CellPlan | null)[],
): SheetPlan => ({
  name,
  widths: WIDTHS,
  rows: [
    ...headRows(title, units).slice(0, ABOVE - 1),
    [
      ...INPUTS.map((name, i) => put(name, i < TEXT_COLUMNS ? 'heading' : 'numberHeading')),
      null,
      ...RESULTS.map((name) => put(name, 'numberHeading')),
    ],
    ...SPECIMENS.map((s, i) => [...inputCells(s, units.system), null, ...results(first + i)]),
    ...Array.from({ length: BLANK_ROWS }, (_, i) => [
      ...INPUTS.map(() => put(null, 'input')),
      null,
      ...results(first + SPECIMENS.length + i),
    ]),
  ],
  frozen: { rows: ABOVE, columns: 2 },
  tables: [
    {
      name: table,
      displayName: table,
      range: `A${ABOVE}:F${last}`,
      columns: INPUTS.map((column) => ({ name: column })),
      style: 'TableStyleLight1',
      showAutoFilter: true,
      showRowStripes: false,
    },
  ],
  heights: new Map([[ABOVE - 1, 30]]),
  landscape: true,
  printTo: `${address(0, WIDTHS.length - 1).replace('1', '')}${last}`,
  headingRow: ABOVE,
});

const sizes = (table: string): string => `${table}[length],${table}[width],${table}[height]`;

/** The layers of the specimen and the one that covers the patches; blank where the row is blank. */
const laid = (layers: string): string => `IF(${layers}="","",${layers}+1)`;

/** One formula for each column, spilled from the table, so that new rows of the table are calculated too. */
const spilled = (units: Units): (CellPlan | null)[] => {
  const named = `n,JACKET.LAYERS(Specimens[weight],Shop),laid,${laid('n')},area,JACKET.SHELL_AREA(${sizes('Specimens')},Shop)`;
  const formulas = [
    'JACKET.LAYERS(Specimens[weight],Shop)',
    `LET(n,JACKET.LAYERS(Specimens[weight],Shop),${laid('n')})`,
    `JACKET.SHELL_AREA(${sizes('Specimens')},Shop)`,
    `LET(${named},JACKET.PLASTER(area,laid,Shop))`,
    `LET(${named},JACKET.WATER(JACKET.PLASTER(area,laid,Shop),Shop))`,
    `LET(${named},JACKET.MIXES(area,laid,Shop))`,
    `LET(${named},JACKET.CLOTH(area,laid,Shop))`,
    `JACKET.PADDING(JACKET.SHELL_AREA(${sizes('Specimens')},Shop),Shop)`,
    `LET(${named},JACKET.WEIGHT(area,laid,Specimens[weight],Shop))`,
  ];
  return formulas.map((formula, i) => {
    const column = address(0, RESULT_COLUMN + i).replace('1', '');
    return calculate(formula, 'result', formats(units)[i], `${column}${first}:${column}${last}`);
  });
};

/** One short formula for each cell of a row. */
const byRow = (row: number, units: Units, settings: string): CellPlan[] => {
  const sizesHere = `C${row},D${row},E${row}`;
  const formulas = [
    `JACKET.LAYERS(F${row},${settings})`,
    laid(`H${row}`),
    `JACKET.SHELL_AREA(${sizesHere},${settings})`,
    `JACKET.PLASTER(J${row},I${row},${settings})`,
    `JACKET.WATER(K${row},${settings})`,
    `JACKET.MIXES(J${row},I${row},${settings})`,
    `JACKET.CLOTH(J${row},I${row},${settings})`,
    `JACKET.PADDING(J${row},${settings})`,
    `JACKET.WEIGHT(J${row},I${row},F${row},${settings})`,
  ];
  return formulas.map((formula, i) => calculate(formula, 'result', formats(units)[i]));
};

/** Cells below a spilled formula: only their look is laid out. */
const below = (units: Units): CellPlan[] => formats(units).map((format) => put(null, 'result', format));

export const collectionRows = (): BookPlan => {
  const shop = shopSettings('Shop settings', 'metric');
  return {
    file: 'collection-rows.xlsx',
    title: 'A collection sheet with what its jackets need',
    names: [{ name: 'Shop', range: shop.range }],
    sheets: [
      readMe('A collection sheet with what its jackets need', [
        'The sizes and weights of forty specimens stand in a table. Beside it, formulas of the namespace JACKET say how many layers a storage jacket wants, how much plaster and water in how many mixes, how much glass cloth and padding to buy, and what jacket and specimen will weigh.',
        'Spilled: one formula at the head of each column fills the whole column. The last rows of the table are blank and so are their results: type a new specimen there, and its results appear beside it.',
        'Row by row: the same with one short formula in each cell, to be copied down.',
        'US units: the same in inches, pounds, square feet and yards, with “us” in the place of the settings.',
        'Shop settings: padding, plaster, thickness of a layer, bucket and more. They are named Shop, and every formula takes Shop as its last argument.',
        'Layers laid are the layers of the specimen and one more, which covers the patches of the feet. Feet and edge strips are not counted here.',
      ]),
      sheetOf('Spilled', 'Spilled from the table', METRIC, 'Specimens', (row) =>
        row === first ? spilled(METRIC) : below(METRIC),
      ),
      sheetOf('Row by row', 'One formula in each cell', METRIC, 'SpecimensByRow', (row) => byRow(row, METRIC, 'Shop')),
      sheetOf('US units', 'In inches and pounds', US, 'SpecimensInInches', (row) => byRow(row, US, '"us"')),
      shop.sheet,
    ],
  };
};
