/** Which figures of a call, of a plan or of a row of a collection are held against limits. */

import { margin } from '../calculation/feet/margin.ts';
import { type Feet, MIDDLE, type Point } from '../calculation/feet/points.ts';
import { tipAngle } from '../calculation/feet/tip-angle.ts';
import type { Crew } from '../calculation/handling/crew.ts';
import { isFault, type Result } from '../calculation/result.ts';
import type { Settings } from '../calculation/settings.ts';
import { safetyFactor } from '../calculation/strength/safety-factor.ts';
import type { Figures, Load } from './live-cautions.ts';

/** What is known of one call. */
export interface Call {
  /** Name of the function. */
  readonly id: string;
  /** Its arguments by name, in SI; undefined where they are not known. */
  readonly values?: Readonly<Record<string, unknown>>;
  /** What it gives: a number in SI, words, TRUE or FALSE, or rows; undefined where there is no answer. */
  readonly result?: unknown;
  /** Why there is no answer although the input is right. */
  readonly noAnswer?: string;
}

const number = (x: unknown): number | undefined => (typeof x === 'number' && Number.isFinite(x) ? x : undefined);

const known = <T>(result: Result<T>): T | undefined => (isFault(result) ? undefined : result);

const isCrew = (x: unknown): x is Crew => x === 1 || x === 2 || x === 3 || x === 'hoist';

/** Without what is undefined, as optional fields want it. */
const defined = <T extends object>(fields: { readonly [K in keyof T]: T[K] | undefined }): T =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as T;

const load = (name: string, weight: unknown, width?: unknown, crew?: unknown): Figures => ({
  load: defined<Load>({
    name,
    weight: number(weight),
    width: number(width),
    crew: isCrew(crew) ? crew : undefined,
  }),
});

const LOADS: Readonly<Record<string, string>> = {
  WEIGHT: 'dry weight',
  WET_WEIGHT: 'wet weight',
  SPECIMEN_WEIGHT: 'weight of the specimen',
};

/** Functions whose number is itself a figure. */
const NUMBERS: Readonly<Record<string, keyof Figures>> = {
  MARGIN: 'margin',
  TIP_ANGLE: 'tipAngle',
  SAFETY_FACTOR: 'safetyFactor',
  MIX_TEMPERATURE: 'mixTemperature',
  FOOT_PRESSURE: 'footPressure',
  PADDING_PRESSURE: 'paddingPressure',
  SHELF_LOAD: 'shelfLoad',
  LIFT_INDEX: 'liftIndex',
  EXPOSURE: 'exposure',
};

/** Functions that know no units. */
const UNIT_UNKNOWN: ReadonlySet<string> = new Set(['MARGIN', 'TURN_WEIGHT', 'FOOT_LOADS', 'BALANCE', 'TIP_ANGLE']);

const pointOf = (balance: unknown): Point => (Array.isArray(balance) ? (balance[0] as Point) : MIDDLE);

/** The way with the least factor in the table of STRENGTH. */
const weakest = (result: unknown): Figures => {
  if (!Array.isArray(result)) return {};
  const ways = (result as unknown[][]).slice(1).filter((row) => number(row[3]) !== undefined);
  const [first, ...rest] = ways;
  if (!first) return {};
  const least = rest.reduce((a, b) => ((b[3] as number) < (a[3] as number) ? b : a), first);
  return { safetyFactor: least[3] as number, weakest: String(least[0]) };
};

/** The factor of a half, for functions that answer something else about it. */
const halfFactor = (values: Call['values'], settings: Settings): number | undefined => {
  if (!values) return undefined;
  const { length, width, height, total_weight, layers } = values as Record<string, number>;
  return known(safetyFactor(length!, width!, height!, total_weight!, layers!, settings));
};

const standing = ({ id, values, result }: Call): number | undefined => {
  if (id === 'MARGIN') return number(result);
  const feet = (id === 'FEET' ? result : values?.feet) as Feet | undefined;
  const balance = id === 'BALANCE' ? result : values?.balance;
  if (!feet || (id === 'BALANCE' && !Array.isArray(result))) return undefined;
  return known(margin(feet, pointOf(balance)));
};

const own = (call: Call, settings: Settings): Figures => {
  const { id, values, result, noAnswer } = call;
  const asLoad = LOADS[id];
  if (asLoad) return number(result) === undefined ? {} : load(asLoad, result);
  switch (id) {
    case 'CREW':
      return load('load', values?.total_weight, values?.width, result);
    case 'TURN_WEIGHT':
      return number(result) === undefined ? {} : load('weight felt at the lifting edge', result);
    case 'STABLE': {
      const angle =
        values && known(tipAngle(values.feet as Feet, pointOf(values.balance), values.balance_height as number));
      return defined<Figures>({ stable: result as boolean, tipAngle: angle, margin: standing(call) });
    }
    case 'FEET':
    case 'FOOT_LOADS':
    case 'BALANCE':
      return defined<Figures>({ margin: standing(call) });
    case 'TIP_ANGLE':
      return defined<Figures>({ tipAngle: number(result), margin: standing(call) });
    case 'STRENGTH':
      return weakest(result);
    case 'RIB_HEIGHT':
      return defined<Figures>({ tooWeak: noAnswer, safetyFactor: halfFactor(values, settings) });
    case 'LAYERS_NEEDED':
      return defined<Figures>({ tooWeak: noAnswer });
    case 'LIFT_LIMIT':
      return result === 0 ? { noLift: 'the recommended weight limit of this lift is 0' } : {};
    default: {
      const key = NUMBERS[id];
      return key ? { [key]: number(result), ...(id === 'LIFT_INDEX' && noAnswer ? { noLift: noAnswer } : {}) } : {};
    }
  }
};

/**
 * The figures of one call.
 *
 * @param call values and result in SI
 * @param settings in force
 * Example: WET_WEIGHT that gives 40: a load of 40 kg.
 */
export const figuresOf = (call: Call, settings: Settings): Figures => ({
  ...own(call, settings),
  ...(UNIT_UNKNOWN.has(call.id) ? { unitUnknown: true } : {}),
});

/** Values by the names that rows of PLAN and columns of COLLECTION have, in SI. */
export type Named = ReadonlyMap<string, unknown>;

/**
 * The figures of a plan or of a row of a collection.
 *
 * @param named values by their names, in SI; a name that is not there is not looked at
 * @param reasons why a value has no answer, by the same names
 * @param specimenWeight the specimen alone [kg], where it is known
 * Example: crew `hoist` and wet weight 40: a load of 40 kg that wants a hoist.
 */
export const planFigures = (
  named: Named,
  reasons: ReadonlyMap<string, string> = new Map(),
  specimenWeight?: number,
): Figures =>
  defined<Figures>({
    ...(number(named.get('wet weight')) !== undefined || isCrew(named.get('crew'))
      ? load('wet weight', named.get('wet weight'), named.get('outer width'), named.get('crew'))
      : { load: undefined }),
    specimenWeight,
    margin: number(named.get('margin')),
    tipAngle: number(named.get('tip angle')),
    safetyFactor: number(named.get('safety factor')),
    weakest: typeof named.get('weakest') === 'string' ? (named.get('weakest') as string) : undefined,
    safetyFactorWhenMade: number(named.get('safety factor when made')),
    tooWeak: reasons.get('rib height'),
    mixTemperature: number(named.get('mix temperature')),
    footPressure: number(named.get('foot pressure')),
    shelfLoad: number(named.get('shelf load')),
  });
