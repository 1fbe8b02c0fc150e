/**
 * Cautions about the very numbers of a cell: which of them is beyond its limit, what the limit is, where it comes from, and what to do.
 *
 * Figures come in SI. Nothing here says that anything is safe: no caution means only that none of these limits was passed.
 */

import { MOST_PADDING_PRESSURE } from '../calculation/feet/padding-pressure.ts';
import { BODY_REACH, CLOSE_REACH, type Crew, crew, PAIR_SHARE, TRIO_SHARE } from '../calculation/handling/crew.ts';
import {
  PLASTER_RESPIRABLE_OSHA,
  PLASTER_TOTAL_NIOSH,
  PLASTER_TOTAL_OSHA,
  SILICA_RESPIRABLE_OSHA,
} from '../calculation/handling/dust-limit.ts';
import { isFault, type Quantity } from '../calculation/result.ts';
import { SETTINGS, type SettingKey, type Settings } from '../calculation/settings.ts';
import { LIGHT_STORAGE } from '../calculation/strength/shelf-load.ts';
import type { CautionId } from './cautions.ts';

/** Temperature from which skin is harmed if the touch lasts [°C]. Published safety guide for art teachers. */
export const HARM_TEMPERATURE = 45;

/** Lifting index from which the risk rises for some people [1]. DHHS (NIOSH) Publication 94-110. */
export const LIFT_INDEX_LIMIT = 1;

/** Lifting index from which the risk rises for nearly all people [1]. DHHS (NIOSH) Publication 94-110. */
export const HIGH_LIFT_INDEX = 3;

/** Factor at which the stress is as high as the material bears [1]. Exact: allowed over stress. */
export const BREAKING_FACTOR = 1;

/** Relative slack, so that a factor just at its target reaches it after roundings. */
const SLACK = 1e-12;

/** Something that is lifted. */
export interface Load {
  /** What it is: `wet weight`. */
  readonly name: string;
  /** [kg]; undefined where only the number of people is known. */
  readonly weight?: number;
  /** Size away from the body [m]. Left out: held close. */
  readonly width?: number;
  /** People that it needs. Left out: worked out from the weight. */
  readonly crew?: Crew;
}

/** What is known of a cell, a plan or a row. SI. What is left out is not looked at. */
export interface Figures {
  readonly load?: Load;
  /** The specimen alone [kg], against the most that the layers are meant for. */
  readonly specimenWeight?: number;
  readonly margin?: number;
  readonly tipAngle?: number;
  readonly stable?: boolean;
  readonly safetyFactor?: number;
  /** The way that fails first. */
  readonly weakest?: string;
  readonly safetyFactorWhenMade?: number;
  /** Why no rib, or no number of layers, is enough. */
  readonly tooWeak?: string;
  readonly mixTemperature?: number;
  readonly footPressure?: number;
  readonly paddingPressure?: number;
  readonly shelfLoad?: number;
  readonly liftIndex?: number;
  /** Why nobody should lift here at all. */
  readonly noLift?: string;
  readonly exposure?: number;
  /** Lengths and weights are in a unit that the function was not told. */
  readonly unitUnknown?: boolean;
}

export interface LiveCaution {
  /** Which of the six cautions it is. */
  readonly id: CautionId;
  /** What is beyond its limit, in a word or two: `wet weight`. */
  readonly about: string;
  /** The figure in a sentence. */
  readonly figure: string;
  readonly limit: string;
  /** Where the limit comes from, and how that is known. */
  readonly source: string;
  readonly todo: string;
  /** How far beyond its limit [1], to find the worst of several. Infinite where there is no figure. */
  readonly excess: number;
}

/** Says a number of SI in the units of the sheet. */
export type Say = (value: number, quantity: Quantity) => string;

type Look = (figures: Figures, settings: Settings, say: Say) => LiveCaution | undefined;

const capital = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}`;

/** How a limit is known that is a setting. */
const settingSource = (key: SettingKey, settings: Settings): string =>
  settings.given[key] !== undefined
    ? `${SETTINGS[key].name} set by you`
    : `${SETTINGS[key].source} (${SETTINGS[key].basis})`;

/** A number in its unit, or as it stands where the unit is not known. */
const told = ({ unitUnknown }: Figures, say: Say, value: number, quantity: Quantity, whose: string): string =>
  unitUnknown ? `${say(value, quantity).split(' ')[0]} (in the unit of ${whose})` : say(value, quantity);

/** What is done about a load that is too much for one person. */
const aboutCrew = (people: Crew): string =>
  people === 'hoist'
    ? 'Weigh it first, then use a hoist that is rated for more than this. Above three people no share is published.'
    : `Weigh it first, then lift with at least ${people} people who are about equally strong, and one who calls.`;

const lifting: Look = (figures, settings, say) => {
  const { load } = figures;
  if (!load) return undefined;
  const { name, weight, width } = load;
  const { onePersonLimit } = settings;
  const people = load.crew ?? (weight === undefined ? 1 : crew(weight, onePersonLimit, width ?? null));
  if (isFault(people) || people === 1) return undefined;
  const one =
    width === undefined ? onePersonLimit : onePersonLimit * Math.min(1, CLOSE_REACH / (BODY_REACH + width / 2));
  const held = width === undefined ? 'held close' : `with a load ${say(width, 'length')} wide`;
  const figure =
    weight === undefined
      ? `${capital(name)}: more than one person can lift.`
      : `${capital(name)} about ${told(figures, say, weight, 'mass', 'the weight')}: ${people === 'hoist' ? 'a hoist' : `${people} people`}${figures.unitUnknown ? ' if that is in kg' : ''}.`;
  return {
    id: 'lifting',
    about: name,
    figure,
    limit: `${say(one, 'mass')} for one person ${held}, ${say(2 * onePersonLimit * PAIR_SHARE, 'mass')} for two together, ${say(3 * onePersonLimit * TRIO_SHARE, 'mass')} for three.`,
    source: `One person: ${settingSource('onePersonLimit', settings)}. Teams: HSE L23, Manual handling (published).`,
    todo: aboutCrew(people),
    excess: weight === undefined ? Number.POSITIVE_INFINITY : weight / one,
  };
};

const heavySpecimen: Look = ({ specimenWeight }, settings, say) => {
  const most = settings.mostLayersWeight;
  if (specimenWeight === undefined || specimenWeight <= most) return undefined;
  return {
    id: 'lifting',
    about: 'weight of the specimen',
    figure: `The specimen alone weighs ${say(specimenWeight, 'mass')}.`,
    limit: `${say(most, 'mass')}, for which the most layers are meant.`,
    source: `${capital(settingSource('mostLayersWeight', settings))}.`,
    todo: 'Have the jacket and its support designed by an engineer.',
    excess: specimenWeight / most,
  };
};

const STAND =
  'Set the feet farther apart or lower, or lay it on a pallet. Try it on its feet over padding before it is stored.';

const margin: Look = (figures, _settings, say) => {
  if (figures.margin === undefined || figures.margin > 0) return undefined;
  return {
    id: 'turning',
    about: 'margin',
    figure: `Margin ${told(figures, say, figures.margin, 'length', 'the feet')}: the balance point is not inside of the three feet, so the jacket tips.`,
    limit: 'Above 0.',
    source: 'Statics of a rigid body (derived).',
    todo: STAND,
    excess: Number.POSITIVE_INFINITY,
  };
};

const tipping: Look = ({ margin: inside, tipAngle, stable }, settings, say) => {
  // Where it tips at rest, the margin says so.
  if (inside !== undefined && !(inside > 0)) return undefined;
  const least = settings.leastTilt;
  const stands = tipAngle === undefined ? stable !== false : tipAngle >= least;
  if (stands) return undefined;
  return {
    id: 'turning',
    about: 'tip angle',
    figure:
      tipAngle === undefined ? 'It does not stand at the least tilt.' : `Tip angle about ${say(tipAngle, 'angle')}.`,
    limit: `${say(least, 'angle')} at least.`,
    source: `${capital(settingSource('leastTilt', settings))}.`,
    todo: STAND,
    excess: tipAngle === undefined || tipAngle <= 0 ? Number.POSITIVE_INFINITY : least / tipAngle,
  };
};

const weak: Look = ({ safetyFactor, weakest }, settings, say) => {
  const target = settings.targetSafetyFactor;
  if (safetyFactor === undefined || safetyFactor >= target * (1 - SLACK)) return undefined;
  return {
    id: 'lifting',
    about: 'safety factor',
    figure: `Safety factor about ${say(safetyFactor, 'ratio')}${weakest ? `, weakest ${weakest}` : ''}.`,
    limit: `${say(target, 'ratio')} at least.`,
    source: `${capital(settingSource('targetSafetyFactor', settings))}.`,
    todo: 'Lay up more layers (LAYERS_NEEDED says how many), or carry it on a pallet.',
    excess: target / safetyFactor,
  };
};

const weakWhenMade: Look = ({ safetyFactorWhenMade: factor }, _settings, say) => {
  if (factor === undefined || factor >= BREAKING_FACTOR) return undefined;
  return {
    id: 'turning',
    about: 'safety factor when made',
    figure: `Safety factor about ${say(factor, 'ratio')} on the day it is made, wet.`,
    limit: `${say(BREAKING_FACTOR, 'ratio')}, where the stress is as high as the shell bears.`,
    source: 'Strength over stress (derived); soaked gypsum keeps about half of its strength (published).',
    todo: 'Let it dry before it is turned or lifted.',
    excess: BREAKING_FACTOR / factor,
  };
};

const noRib: Look = ({ tooWeak }, settings, say) => {
  if (tooWeak === undefined) return undefined;
  return {
    id: 'lifting',
    about: 'strength',
    figure: `${capital(tooWeak)}.`,
    limit: `Safety factor ${say(settings.targetSafetyFactor, 'ratio')} at least.`,
    source: `${capital(settingSource('targetSafetyFactor', settings))}.`,
    todo: 'Use more layers, higher feet or a pallet before it is lifted.',
    excess: Number.POSITIVE_INFINITY,
  };
};

const heat: Look = ({ mixTemperature }, _settings, say) => {
  if (mixTemperature === undefined || mixTemperature <= HARM_TEMPERATURE) return undefined;
  return {
    id: 'heat',
    about: 'mix temperature',
    figure: `A thick mix can reach ${say(mixTemperature, 'temperature')} at most; a thin shell stays cooler.`,
    limit: `About ${say(HARM_TEMPERATURE, 'temperature')}: skin is harmed if the touch lasts.`,
    source: 'A published safety guide for art teachers (published).',
    todo: 'Never cast round a hand or any part of the body, wear gloves, and leave thick mixes until they have cooled.',
    excess: mixTemperature / HARM_TEMPERATURE,
  };
};

const FOAM_SOURCE = 'Creep of polyethylene foam below 10 % in 1000 hours at 1 to 2 psi (memory).';

const footPressure: Look = ({ footPressure: pressure }, _settings, say) => {
  if (pressure === undefined || pressure <= MOST_PADDING_PRESSURE) return undefined;
  return {
    id: 'turning',
    about: 'foot pressure',
    figure: `A foot presses with about ${say(pressure, 'bearing')}.`,
    limit: `${say(MOST_PADDING_PRESSURE, 'bearing')} where the feet stand on polyethylene foam.`,
    source: FOAM_SOURCE,
    todo: 'Stand it on wood or metal, put a board under the feet or make them larger: foam slowly gives way, and the jacket leans.',
    excess: pressure / MOST_PADDING_PRESSURE,
  };
};

const paddingPressure: Look = ({ paddingPressure: pressure }, _settings, say) => {
  if (pressure === undefined || pressure <= MOST_PADDING_PRESSURE) return undefined;
  return {
    id: 'turning',
    about: 'pressure on the padding',
    figure: `The specimen presses on its padding with about ${say(pressure, 'bearing')}.`,
    limit: `${say(MOST_PADDING_PRESSURE, 'bearing')}; under more the padding slowly gives way.`,
    source: FOAM_SOURCE,
    todo: 'Use a firmer padding, and see that the specimen lies on its whole underside.',
    excess: pressure / MOST_PADDING_PRESSURE,
  };
};

const shelf: Look = ({ shelfLoad }, _settings, say) => {
  if (shelfLoad === undefined || shelfLoad <= LIGHT_STORAGE) return undefined;
  return {
    id: 'lifting',
    about: 'shelf load',
    figure: `The jacket loads its shelf with about ${say(shelfLoad, 'shelfLoad')}.`,
    limit: `${say(LIGHT_STORAGE, 'shelfLoad')}, for floors of light storage; the maker's plate of the shelf comes first.`,
    source: 'ASCE 7, light storage (published).',
    todo: 'Use a place that is rated for it; above this the floor itself is a question for a licensed engineer.',
    excess: shelfLoad / LIGHT_STORAGE,
  };
};

const LIFT_SOURCE = 'DHHS (NIOSH) Publication 94-110 (published); local rules come first.';

const index: Look = ({ liftIndex, noLift }, _settings, say) => {
  if (noLift !== undefined)
    return {
      id: 'lifting',
      about: 'lift',
      figure: `${capital(noLift)}.`,
      limit: 'The recommended weight limit is 0 here.',
      source: LIFT_SOURCE,
      todo: 'Nobody lifts here by hand: change the lift or use a hoist.',
      excess: Number.POSITIVE_INFINITY,
    };
  if (liftIndex === undefined || liftIndex <= LIFT_INDEX_LIMIT) return undefined;
  const high = liftIndex > HIGH_LIFT_INDEX;
  return {
    id: 'lifting',
    about: 'lifting index',
    figure: `Lifting index about ${say(liftIndex, 'ratio')}.`,
    limit: `${LIFT_INDEX_LIMIT}, above which the risk rises for some people${high ? `; ${HIGH_LIFT_INDEX}, above which it rises for nearly all` : ''}.`,
    source: LIFT_SOURCE,
    todo: high
      ? 'Do not lift it alone: use a hoist, or a team that has been counted with CREW.'
      : 'Hold it closer, lift less often, share it with a second person or use a hoist.',
    excess: liftIndex / LIFT_INDEX_LIMIT,
  };
};

/** Limits of dust, the lowest first. */
const DUSTS: readonly (readonly [limit: number, dust: string])[] = [
  [SILICA_RESPIRABLE_OSHA, 'fine crystalline silica'],
  [PLASTER_RESPIRABLE_OSHA, 'the fine part of plaster dust'],
  [PLASTER_TOTAL_NIOSH, 'all plaster dust as recommended'],
  [PLASTER_TOTAL_OSHA, 'all plaster dust'],
];

const dust: Look = ({ exposure }, _settings, say) => {
  if (exposure === undefined) return undefined;
  const passed = DUSTS.filter(([limit]) => exposure > limit);
  if (passed.length === 0) return undefined;
  const last = passed.at(-1)!;
  return {
    id: 'dust',
    about: 'exposure to dust',
    figure: `Exposure about ${say(exposure, 'dust')} over 8 hours.`,
    limit: `Passed: ${passed.map(([limit, what]) => `${say(limit, 'dust')} for ${what}`).join(', ')}.`,
    source: 'OSHA, 29 CFR 1910.1000 table Z-1 and 1910.1053; NIOSH recommended exposure limit (published).',
    todo:
      passed.length === 1
        ? 'Find out whether the dust holds silica. Work wet or under exhaust, and wear a respirator that has been fitted to you.'
        : 'Work wet or under exhaust, wear a respirator that has been fitted to you, and have the air measured.',
    excess: exposure / last[0],
  };
};

/** What is looked at, the most pressing first. */
const LOOKS: readonly Look[] = [
  margin,
  tipping,
  weak,
  noRib,
  weakWhenMade,
  lifting,
  index,
  heavySpecimen,
  shelf,
  footPressure,
  paddingPressure,
  heat,
  dust,
];

/**
 * The cautions that these figures call for, the most pressing first.
 *
 * @param figures of a cell, a plan or a row, in SI
 * @param settings in force
 * @param say how numbers are written in the units of the sheet
 * @returns none where no limit is passed; that is no promise of safety
 * Example: a wet weight of 40 kg: lifting, `a hoist`.
 */
export const liveCautions = (figures: Figures, settings: Settings, say: Say): readonly LiveCaution[] =>
  LOOKS.flatMap((look) => look(figures, settings, say) ?? []);
