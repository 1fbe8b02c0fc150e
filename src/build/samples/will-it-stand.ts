/** Will it stand, and will it hold: three feet, scale readings, strength of the lower half, a long bone measured with a tape. Invented specimens. */
import { type BookPlan, type CellPlan, calculate, put, type SheetPlan, withUnit } from './book.ts';
import { MUSEUM, SPECIMENS } from './museum.ts';
import { readMe, shopSettings } from './parts.ts';

type Row = readonly (CellPlan | null)[];

const NOTE = `${MUSEUM}: invented specimen. Estimates for planning: try before it is stored.`;

const asked = (name: string, value: number | string, unit: string): Row => [
  put(name, 'label'),
  put(value, 'input'),
  put(unit, 'faint'),
];

const answered = (name: string, formula: string, format: string | undefined, note: string, spills?: string): Row => [
  put(name, 'label'),
  calculate(formula, 'result', format, spills),
  spills?.includes(':C') ? put(null, 'result', format) : null,
  put(note, 'faint'),
];

/** Rows 4 to 12: what is given. Formulas below name these cells. */
const standing = (): SheetPlan => {
  const rows: Row[] = [
    [put('Where the feet go', 'title')],
    [put(NOTE, 'faint')],
    [put('given', 'heading'), put('value', 'numberHeading'), put('unit', 'heading'), put('', 'heading')],
    asked('length', 90, 'cm'), // 4
    asked('width', 34, 'cm'), // 5
    asked('height', 26, 'cm'), // 6
    asked('weight of the specimen', 51, 'kg'), // 7
    asked('scale reading, foot 1', 21.5, 'kg'), // 8
    asked('scale reading, foot 2', 32, 'kg'), // 9
    asked('scale reading, foot 3', 22.5, 'kg'), // 10
    [],
    [put('result', 'heading'), put('value', 'numberHeading'), put('', 'numberHeading'), put('what it says', 'heading')], // 12
    answered(
      'layers laid',
      'JACKET.LAYERS(B7,Shop)+1',
      '0',
      'the layers of the specimen and one that covers the patches',
    ), // 13
    answered('shell area', 'JACKET.SHELL_AREA(B4,B5,B6,Shop)', withUnit(2, 'm²'), 'both halves with their flanges'), // 14
    answered('weight of the whole', 'JACKET.WEIGHT(B14,B13,B7,Shop)', withUnit(1, 'kg'), 'jacket and specimen, dry'), // 15
    answered(
      'feet: x and y',
      'JACKET.FEET(B4,B5,B15,,Shop)',
      withUnit(1, 'cm'),
      'from the middle of the jacket, x along the length, y across',
      'B16:C18',
    ), // 16
    [put('', 'label'), put(null, 'result', withUnit(1, 'cm')), put(null, 'result', withUnit(1, 'cm'))],
    [put('', 'label'), put(null, 'result', withUnit(1, 'cm')), put(null, 'result', withUnit(1, 'cm'))],
    answered(
      'balance point: x and y',
      'JACKET.BALANCE(B16:C18,B8:B10)',
      withUnit(1, 'cm'),
      'from the three scale readings',
      'B19:C19',
    ), // 19
    answered(
      'margin',
      'JACKET.MARGIN(B16:C18,B19:C19)',
      withUnit(1, 'cm'),
      'least distance of the balance point to an edge between two feet',
    ), // 20
    answered(
      'height of the balance point',
      '10+JACKET.THICKNESS(B13,Shop)/10+0.635+B6/2',
      withUnit(1, 'cm'),
      'foot 10 cm, shell, padding and half of the height',
    ), // 21
    answered('tip angle', 'JACKET.TIP_ANGLE(B16:C18,B19:C19,B21)', withUnit(1, '°'), 'how far it may tilt'), // 22
    answered(
      'stable',
      'IF(JACKET.STABLE(B16:C18,B19:C19,B21,Shop),"yes","no")',
      undefined,
      'whether that reaches the least tilt of 10 degrees',
    ), // 23
    answered(
      'load on each foot',
      'JACKET.FOOT_LOADS(B16:C18,B19:C19,B15)',
      withUnit(1, 'kg'),
      'one row a foot',
      'B24:B26',
    ), // 24
    [put('', 'label'), put(null, 'result', withUnit(1, 'kg'))],
    [put('', 'label'), put(null, 'result', withUnit(1, 'kg'))],
    answered(
      'pressure under the hardest pressed foot',
      'JACKET.FOOT_PRESSURE(MAX(B24:B26),10,10)',
      withUnit(1, 'kPa'),
      'foot of 10 by 10 cm',
    ), // 27
    answered(
      'safety factor of the lower half',
      'JACKET.SAFETY_FACTOR(B4,B5,B6,B15,B13,Shop)',
      '0.0',
      'least of three ways to fail; the target is 2',
    ), // 28
    answered(
      'rib height',
      'JACKET.RIB_HEIGHT(B4,B5,B6,B15,B13,Shop)',
      withUnit(1, 'cm'),
      '0: bending along the length needs no rib',
    ), // 29
    answered('people to lift it', 'JACKET.CREW(B15,B5+12)', '0', 'by weight and width; local rules come first'), // 30
  ];
  return {
    name: 'Feet',
    widths: [38, 14, 12, 70],
    rows,
    frozen: { rows: 3, columns: 1 },
    landscape: true,
    printTo: `D${rows.length}`,
    headingRow: 3,
  };
};

/** Stations and girths of an invented thigh bone [cm]. */
const TAPE: readonly (readonly [number, number])[] = [
  [0, 74],
  [8, 66],
  [20, 46],
  [38, 38],
  [58, 36],
  [78, 41],
  [92, 58],
  [104, 72],
  [112, 69],
];

const longBone = (): SheetPlan => {
  const first = 5;
  const last = first + TAPE.length - 1;
  const tape = `A${first}:A${last},B${first}:B${last}`;
  const results: [string, string, string][] = [
    ['surface area', `JACKET.GIRTH_AREA(${tape},Shop)`, withUnit(3, 'm²')],
    ['body volume', `JACKET.GIRTH_VOLUME(${tape},Shop)`, withUnit(1, 'L')],
    ['weight as fossil bone', 'JACKET.SPECIMEN_WEIGHT(E6,"fossil bone",Shop)', withUnit(1, 'kg')],
    ['balance point from the first station', `JACKET.GIRTH_BALANCE(${tape})`, withUnit(1, 'cm')],
    ['shell area of both halves', `JACKET.GIRTH_SHELL_AREA(${tape},Shop)`, withUnit(3, 'm²')],
    ['layers', 'JACKET.LAYERS(E7,Shop)', '0'],
    ['plaster, cover layer counted', 'JACKET.PLASTER(E9,E10+1,Shop)', withUnit(1, 'kg')],
    ['moment on supports a fifth from each end', `JACKET.BENDING(A${last},E7,A${last}/5,Shop)`, withUnit(1, 'N·m')],
    ['moment on supports at the ends', `JACKET.BENDING(A${last},E7,0,Shop)`, withUnit(1, 'N·m')],
  ];
  const rows: Row[] = [
    [put('A long bone measured with a tape', 'title')],
    [put(NOTE, 'faint')],
    [],
    [
      put('station, cm', 'numberHeading'),
      put('girth, cm', 'numberHeading'),
      null,
      put('result', 'heading'),
      put('value', 'numberHeading'),
    ],
    ...TAPE.map(([station, girth], i): Row => {
      const result = results[i];
      return [
        put(station, 'input'),
        put(girth, 'input'),
        null,
        ...(result ? [put(result[0], 'label'), calculate(result[1], 'result', result[2])] : []),
      ];
    }),
  ];
  return {
    name: 'Long bone',
    widths: [14, 14, 4, 42, 16],
    rows,
    frozen: { rows: 4, columns: 0 },
    printTo: `E${rows.length}`,
    headingRow: 4,
  };
};

/** Heavy, long, flat and small ones. */
const CHOSEN = ['149', '191', '205', '268', '303', '310', '352', '366', '100'];

const holding = (): SheetPlan => {
  const columns = [
    'number',
    'element',
    'length',
    'width',
    'height',
    'weight',
    'layers laid',
    'whole',
    'safety factor',
    'safety factor, wet',
    'rib height',
    'people',
    'what is doubtful',
  ];
  const rows: Row[] = [
    [put('Is the lower half strong enough?', 'title')],
    [
      put(
        `${MUSEUM}: invented specimens. Estimates for planning: static, no impact, no creep. The target is 2.`,
        'faint',
      ),
    ],
    [],
    columns.map((name, i) => put(name, i < 2 || i === 12 ? 'heading' : 'numberHeading')),
    ...CHOSEN.map((number, i): Row => {
      const s = SPECIMENS.find((one) => one.number === `INV ${number}`)!;
      const r = 5 + i;
      const half = `C${r},D${r},E${r},H${r},G${r}`;
      return [
        put(s.number, 'input'),
        put(s.element, 'input'),
        ...s.size.map((x) => put(x, 'input')),
        put(s.weight, 'input'),
        calculate(`JACKET.LAYERS(F${r},Shop)+1`, 'result', '0'),
        calculate(
          `JACKET.WEIGHT(JACKET.SHELL_AREA(C${r},D${r},E${r},Shop),G${r},F${r},Shop)`,
          'result',
          withUnit(1, 'kg'),
        ),
        calculate(`JACKET.SAFETY_FACTOR(${half},Shop)`, 'result', '0.0'),
        calculate(`JACKET.SAFETY_FACTOR(${half},{"condition","wet"})`, 'result', '0.0'),
        calculate(`JACKET.RIB_HEIGHT(${half},Shop)`, 'result', withUnit(1, 'cm')),
        calculate(`JACKET.CREW(H${r},D${r}+12,Shop)`, 'result', '0'),
        calculate(`JACKET.CHECK("SAFETY_FACTOR",${half})`, 'text'),
      ];
    }),
  ];
  return {
    name: 'Strength',
    widths: [10, 22, 8, 8, 8, 9, 8, 11, 9, 9, 9, 8, 60],
    rows,
    frozen: { rows: 4, columns: 2 },
    heights: new Map([[3, 30]]),
    landscape: true,
    printTo: `M${rows.length}`,
    headingRow: 4,
  };
};

export const willItStand = (): BookPlan => {
  const shop = shopSettings('Shop settings', 'metric');
  return {
    file: 'will-it-stand.xlsx',
    title: 'Will it stand, and will it hold?',
    names: [{ name: 'Shop', range: shop.range }],
    sheets: [
      readMe('Will it stand, and will it hold?', [
        'Feet: where three feet go under a jacket, where the balance point is by three scale readings, how far the jacket may tilt, what each foot carries, and whether the lower half is strong enough.',
        'Long bone: a bone measured with a tape at stations, its surface, volume, weight and balance point. Supports a fifth from each end take most of the bending away.',
        'Strength: the safety factor of the lower half for specimens of many shapes, dry and on the day it is made, and what is doubtful about the numbers.',
        'Shop settings: named Shop, the last argument of every formula.',
      ]),
      standing(),
      longBone(),
      holding(),
      shop.sheet,
    ],
  };
};
