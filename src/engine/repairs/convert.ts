/** CONVERT, with all digits: units, their size in the first unit of their kind, and whether thousands and parts of them have a prefix. */

import { type BaseValueObject, ErrorType, type IFunctionService, NumberValueObject } from '@univerjs/engine-formula';
import { errorIn, faulty, numberOf, OneByOne, textOf } from './amend.ts';

interface Unit {
  readonly kind: string;
  readonly size: number;
  readonly prefixed: boolean;
  /** What is added before the size counts, as temperatures need it. */
  readonly offset: number;
  /** 2 for areas, 3 for volumes: a prefix counts that often. */
  readonly power: number;
}

const METRE_PER_INCH = 0.0254;
const METRE_PER_FOOT = 0.3048;
const METRE_PER_YARD = 0.9144;
const METRE_PER_MILE = 1609.344;
const METRE_PER_NAUTICAL_MILE = 1852;
const METRE_PER_SURVEY_FOOT = 1200 / 3937;
const METRE_PER_LIGHT_YEAR = 9_460_730_472_580_800;
const METRE_PER_ANGSTROM = 1e-10;
const METRE_PER_PICA_POINT = METRE_PER_INCH / 72;
const GRAM_PER_POUND = 453.59237;
const GRAM_PER_ATOMIC_UNIT = 1.66053906892e-24;
const STANDARD_GRAVITY = 9.80665;
const LITRE_PER_GALLON = 3.785411784;
const LITRE_PER_IMPERIAL_GALLON = 4.54609;
const JOULE_PER_CALORIE = 4.184;
const JOULE_PER_TABLE_CALORIE = 4.1868;
const JOULE_PER_BTU = 1055.05585262;
const JOULE_PER_ELECTRONVOLT = 1.602176634e-19;
const NEWTON_PER_POUND = (GRAM_PER_POUND / 1000) * STANDARD_GRAVITY;
const WATT_PER_HORSEPOWER = 550 * METRE_PER_FOOT * NEWTON_PER_POUND;
const LITRE_PER_CUBIC_METRE = 1000;

/** Kind by kind, each unit by the names it goes under. */
const SIZES: Readonly<Record<string, Readonly<Record<string, number>>>> = {
  mass: {
    g: 1,
    u: GRAM_PER_ATOMIC_UNIT,
    lbm: GRAM_PER_POUND,
    ozm: GRAM_PER_POUND / 16,
    grain: GRAM_PER_POUND / 7000,
    sg: (NEWTON_PER_POUND / METRE_PER_FOOT) * 1000,
    'cwt shweight': GRAM_PER_POUND * 100,
    'uk_cwt lcwt hweight': GRAM_PER_POUND * 112,
    stone: GRAM_PER_POUND * 14,
    ton: GRAM_PER_POUND * 2000,
    'uk_ton LTON brton': GRAM_PER_POUND * 2240,
  },
  distance: {
    m: 1,
    in: METRE_PER_INCH,
    ft: METRE_PER_FOOT,
    yd: METRE_PER_YARD,
    mi: METRE_PER_MILE,
    Nmi: METRE_PER_NAUTICAL_MILE,
    survey_mi: METRE_PER_SURVEY_FOOT * 5280,
    ang: METRE_PER_ANGSTROM,
    ell: METRE_PER_INCH * 45,
    ly: METRE_PER_LIGHT_YEAR,
    'parsec pc': (149_597_870_700 * 648_000) / Math.PI,
    'Picapt Pica': METRE_PER_PICA_POINT,
    pica: METRE_PER_INCH / 6,
  },
  time: { 'sec s': 1, 'mn min': 60, hr: 3600, 'day d': 86_400, yr: 31_557_600 },
  pressure: {
    'Pa p': 1,
    'atm at': 101_325,
    mmHg: 133.322,
    psi: NEWTON_PER_POUND / METRE_PER_INCH ** 2,
    Torr: 101_325 / 760,
  },
  force: { N: 1, 'dyn dy': 1e-5, lbf: NEWTON_PER_POUND, pond: STANDARD_GRAVITY / 1000 },
  energy: {
    J: 1,
    e: 1e-7,
    c: JOULE_PER_CALORIE,
    cal: JOULE_PER_TABLE_CALORIE,
    'eV ev': JOULE_PER_ELECTRONVOLT,
    'HPh hh': WATT_PER_HORSEPOWER * 3600,
    'Wh wh': 3600,
    flb: METRE_PER_FOOT * NEWTON_PER_POUND,
    'BTU btu': JOULE_PER_BTU,
  },
  power: { 'W w': 1, 'HP h': WATT_PER_HORSEPOWER, PS: 75 * STANDARD_GRAVITY },
  magnetism: { T: 1, ga: 1e-4 },
  volume: {
    'l L lt': 1,
    tsp: LITRE_PER_GALLON / 768,
    tspm: 0.005,
    tbs: LITRE_PER_GALLON / 256,
    oz: LITRE_PER_GALLON / 128,
    cup: LITRE_PER_GALLON / 16,
    'pt us_pt': LITRE_PER_GALLON / 8,
    uk_pt: LITRE_PER_IMPERIAL_GALLON / 8,
    qt: LITRE_PER_GALLON / 4,
    uk_qt: LITRE_PER_IMPERIAL_GALLON / 4,
    gal: LITRE_PER_GALLON,
    uk_gal: LITRE_PER_IMPERIAL_GALLON,
    barrel: LITRE_PER_GALLON * 42,
    bushel: METRE_PER_INCH ** 3 * 2150.42 * LITRE_PER_CUBIC_METRE,
    'm3 m^3': LITRE_PER_CUBIC_METRE,
    'in3 in^3': METRE_PER_INCH ** 3 * LITRE_PER_CUBIC_METRE,
    'ft3 ft^3': METRE_PER_FOOT ** 3 * LITRE_PER_CUBIC_METRE,
    'yd3 yd^3': METRE_PER_YARD ** 3 * LITRE_PER_CUBIC_METRE,
    'mi3 mi^3': METRE_PER_MILE ** 3 * LITRE_PER_CUBIC_METRE,
    'ang3 ang^3': METRE_PER_ANGSTROM ** 3 * LITRE_PER_CUBIC_METRE,
    'ly3 ly^3': METRE_PER_LIGHT_YEAR ** 3 * LITRE_PER_CUBIC_METRE,
    'Nmi3 Nmi^3': METRE_PER_NAUTICAL_MILE ** 3 * LITRE_PER_CUBIC_METRE,
    'Picapt3 Picapt^3 Pica3 Pica^3': METRE_PER_PICA_POINT ** 3 * LITRE_PER_CUBIC_METRE,
    'GRT regton': METRE_PER_FOOT ** 3 * 100 * LITRE_PER_CUBIC_METRE,
    MTON: METRE_PER_FOOT ** 3 * 40 * LITRE_PER_CUBIC_METRE,
  },
  area: {
    'm2 m^2': 1,
    'in2 in^2': METRE_PER_INCH ** 2,
    'ft2 ft^2': METRE_PER_FOOT ** 2,
    'yd2 yd^2': METRE_PER_YARD ** 2,
    'mi2 mi^2': METRE_PER_MILE ** 2,
    'Nmi2 Nmi^2': METRE_PER_NAUTICAL_MILE ** 2,
    'ang2 ang^2': METRE_PER_ANGSTROM ** 2,
    'ly2 ly^2': METRE_PER_LIGHT_YEAR ** 2,
    'Picapt2 Picapt^2 Pica2 Pica^2': METRE_PER_PICA_POINT ** 2,
    ha: 10_000,
    ar: 100,
    uk_acre: METRE_PER_FOOT ** 2 * 43_560,
    us_acre: METRE_PER_SURVEY_FOOT ** 2 * 43_560,
    Morgen: 2500,
  },
  information: { bit: 1, byte: 8 },
  speed: {
    'm/s m/sec': 1,
    'm/h m/hr': 1 / 3600,
    mph: METRE_PER_MILE / 3600,
    kn: METRE_PER_NAUTICAL_MILE / 3600,
    admkn: (6080 * METRE_PER_FOOT) / 3600,
  },
};

/** Units that take a prefix. */
const PREFIXED: ReadonlySet<string> = new Set(
  'g u m ang ly parsec pc sec s Pa p atm at mmHg N dyn dy pond J e c cal eV ev Wh wh W w T ga l L lt m3 m^3 m2 m^2 ang3 ang^3 ang2 ang^2 ar bit byte m/s m/sec m/h m/hr K kel'.split(
    ' ',
  ),
);

/** Size of a degree in kelvin, and what is added to degrees before. */
const TEMPERATURES: Readonly<Record<string, readonly [size: number, offset: number]>> = {
  'K kel': [1, 0],
  'C cel': [1, 273.15],
  'F fah': [5 / 9, 459.67],
  Rank: [5 / 9, 0],
  Reau: [1.25, 273.15 / 1.25],
};

const PREFIXES: Readonly<Record<string, number>> = {
  Y: 1e24,
  Z: 1e21,
  E: 1e18,
  P: 1e15,
  T: 1e12,
  G: 1e9,
  M: 1e6,
  k: 1e3,
  h: 1e2,
  da: 1e1,
  e: 1e1,
  d: 1e-1,
  c: 1e-2,
  m: 1e-3,
  u: 1e-6,
  n: 1e-9,
  p: 1e-12,
  f: 1e-15,
  a: 1e-18,
  z: 1e-21,
  y: 1e-24,
};

/** These go with units of information alone. */
const BINARY: Readonly<Record<string, number>> = {
  ki: 2 ** 10,
  Mi: 2 ** 20,
  Gi: 2 ** 30,
  Ti: 2 ** 40,
  Pi: 2 ** 50,
  Ei: 2 ** 60,
  Zi: 2 ** 70,
  Yi: 2 ** 80,
};

const powerOf = (name: string): number => (/2$/.test(name) ? 2 : /3$/.test(name) ? 3 : 1);

const UNITS: ReadonlyMap<string, Unit> = new Map<string, Unit>([
  ...Object.entries(SIZES).flatMap(([kind, units]) =>
    Object.entries(units).flatMap(([names, size]) =>
      names
        .split(' ')
        .map((name) => [name, { kind, size, offset: 0, prefixed: PREFIXED.has(name), power: powerOf(name) }] as const),
    ),
  ),
  ...Object.entries(TEMPERATURES).flatMap(([names, [size, offset]]) =>
    names
      .split(' ')
      .map((name) => [name, { kind: 'temperature', size, offset, prefixed: PREFIXED.has(name), power: 1 }] as const),
  ),
]);

function unitOf(name: string): Unit | undefined {
  const known = UNITS.get(name);
  if (known !== undefined) return known;
  for (const [prefix, factor] of [...Object.entries(BINARY), ...Object.entries(PREFIXES)]) {
    if (!name.startsWith(prefix)) continue;
    const unit = UNITS.get(name.slice(prefix.length));
    if (unit === undefined || !unit.prefixed || (prefix in BINARY && unit.kind !== 'information')) continue;
    return { ...unit, size: unit.size * factor ** unit.power };
  }
  return undefined;
}

/** A number of one unit in another. Undefined where the units are not known or not of one kind. */
export function converted(value: number, from: string, to: string): number | undefined {
  const [source, target] = [unitOf(from), unitOf(to)];
  if (source === undefined || target === undefined || source.kind !== target.kind) return undefined;
  if (from === to) return value;
  if (source.kind !== 'temperature') return (value * source.size) / target.size;
  const kelvin = (value + source.offset) * source.size;
  // Digits that only the way through kelvin brings in.
  return Number((kelvin / target.size - target.offset).toPrecision(14));
}

function convert(value: BaseValueObject, from: BaseValueObject, to: BaseValueObject): BaseValueObject {
  const error = errorIn([value, from, to]);
  if (error !== undefined) return error;
  const number = numberOf(value);
  if (value.isBoolean() || Number.isNaN(number)) return faulty(ErrorType.VALUE);
  const result = converted(number, textOf(from), textOf(to));
  return result === undefined ? faulty(ErrorType.NA) : NumberValueObject.create(result);
}

/** As shipped temperatures are rounded to two places, other units to the few digits that the table of them has, and 'kbyte' and the like are unknown. */
export function repairConvert(service: IFunctionService): void {
  service.registerExecutors(new OneByOne('CONVERT', 3, 3, convert));
}
