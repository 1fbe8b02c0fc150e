/** The two unit systems: what each quantity is shown in, and the exact way to and from SI. */
import type { Quantity } from '../../calculation/result.ts';

export type UnitSystem = 'metric' | 'us';

export const UNIT_SYSTEMS: readonly UnitSystem[] = ['metric', 'us'];

interface Unit {
  /** Name as it stands in tables and texts. */
  readonly name: string;
  /** One unit in SI, or how many units make one in SI: whichever of the two is exact in decimals. */
  readonly inSi?: number;
  readonly perSi?: number;
  /** What is added to SI degrees; only temperatures have it. */
  readonly zero?: number;
}

/** International inch [m]. Exact: agreement of 1959. */
export const INCH = 0.0254;
/** International foot [m]. Exact: agreement of 1959. */
export const FOOT = 0.3048;
/** International yard [m]. Exact: agreement of 1959. */
export const YARD = 0.9144;
/** International pound [kg]. Exact: agreement of 1959. */
export const POUND = 0.45359237;
/** US liquid gallon [m³]. Exact: 231 cubic inches. */
export const GALLON = 0.003785411784;
/** Standard acceleration of gravity [m/s²], for pressures in pounds-force. Exact: CGPM 1901. */
export const STANDARD_GRAVITY = 9.80665;

const QUART = GALLON / 4;
const OUNCE = POUND / 16;
const POUND_FORCE = POUND * STANDARD_GRAVITY;
const FAHRENHEIT_DEGREE = 5 / 9;
const FAHRENHEIT_ZERO = 32;

const one = (name: string): Unit => ({ name, perSi: 1 });
const same = (unit: Unit): Record<UnitSystem, Unit> => ({ metric: unit, us: unit });

export const UNITS: Readonly<Record<Quantity, Readonly<Record<UnitSystem, Unit>>>> = {
  length: { metric: { name: 'cm', perSi: 100 }, us: { name: 'in', inSi: INCH } },
  thickness: { metric: { name: 'mm', perSi: 1000 }, us: { name: 'in', inSi: INCH } },
  area: { metric: one('m²'), us: { name: 'ft²', inSi: FOOT * FOOT } },
  clayArea: { metric: { name: 'cm²', perSi: 1e4 }, us: { name: 'in²', inSi: INCH * INCH } },
  mass: { metric: one('kg'), us: { name: 'lb', inSi: POUND } },
  bodyVolume: { metric: { name: 'L', perSi: 1000 }, us: { name: 'ft³', inSi: FOOT ** 3 } },
  liquidVolume: { metric: { name: 'L', perSi: 1000 }, us: { name: 'US qt', inSi: QUART } },
  clothLength: { metric: one('m'), us: { name: 'yd', inSi: YARD } },
  clothWeight: { metric: { name: 'g/m²', perSi: 1000 }, us: { name: 'oz/yd²', inSi: OUNCE / (YARD * YARD) } },
  bulkDensity: { metric: one('kg/m³'), us: { name: 'lb/ft³', inSi: POUND / FOOT ** 3 } },
  density: same({ name: 'kg/L', inSi: 1000 }),
  bearing: { metric: { name: 'kPa', inSi: 1000 }, us: { name: 'psi', inSi: POUND_FORCE / (INCH * INCH) } },
  strength: { metric: { name: 'MPa', inSi: 1e6 }, us: { name: 'psi', inSi: POUND_FORCE / (INCH * INCH) } },
  shelfLoad: { metric: { name: 'kPa', inSi: 1000 }, us: { name: 'lb/ft²', inSi: POUND_FORCE / (FOOT * FOOT) } },
  moment: { metric: one('N·m'), us: { name: 'lbf·ft', inSi: POUND_FORCE * FOOT } },
  temperature: { metric: one('°C'), us: { name: '°F', inSi: FAHRENHEIT_DEGREE, zero: FAHRENHEIT_ZERO } },
  angle: same(one('degrees')),
  hours: same(one('hours')),
  minutes: same(one('min')),
  perMinute: same(one('per minute')),
  layingRate: { metric: one('m²/min'), us: { name: 'ft²/min', inSi: FOOT * FOOT } },
  coverage: { metric: { name: 'm²/L', inSi: 1000 }, us: { name: 'ft²/US qt', inSi: (FOOT * FOOT) / QUART } },
  airSpeed: { metric: one('m/s'), us: { name: 'ft/min', inSi: FOOT / 60 } },
  dust: same(one('mg/m³')),
  fraction: same(one('fraction')),
  ratio: same(one('ratio')),
  percent: same(one('parts per 100')),
  count: same(one('count')),
  money: same(one('money')),
};

/** Name of the unit in which a quantity is shown. */
export const unitName = (quantity: Quantity, system: UnitSystem): string => UNITS[quantity][system].name;

/** From the unit of a system to SI. */
export const toSi = (value: number, quantity: Quantity, system: UnitSystem): number => {
  const { inSi, perSi, zero } = UNITS[quantity][system];
  const shifted = zero === undefined ? value : value - zero;
  return perSi !== undefined ? shifted / perSi : shifted * inSi!;
};

/** From SI to the unit of a system. */
export const fromSi = (value: number, quantity: Quantity, system: UnitSystem): number => {
  const { inSi, perSi, zero } = UNITS[quantity][system];
  const scaled = perSi !== undefined ? value * perSi : value / inSi!;
  return zero === undefined ? scaled : scaled + zero;
};

/** Quantities whose unit is not spoken: "3 layers" is said as "3". */
const SILENT: ReadonlySet<Quantity> = new Set(['fraction', 'ratio', 'percent', 'count', 'money']);

/** A number with its unit as texts say it: at most four significant digits, whole numbers in full. */
export const spoken = (value: number, quantity: Quantity, system: UnitSystem): string => {
  const shown = fromSi(value, quantity, system);
  if (!Number.isFinite(shown)) return 'a number out of range';
  const whole = Math.abs(shown) < 1e15 && Math.abs(shown - Math.round(shown)) < 1e-9 * Math.max(1, Math.abs(shown));
  // Rounding up can leave the range of numbers.
  const short = whole ? Math.round(shown) : Number(shown.toPrecision(4));
  const text = String(Number.isFinite(short) ? short : shown);
  return SILENT.has(quantity) ? text : `${text} ${unitName(quantity, system)}`;
};
