/**
 * Every default of the calculation: value in SI, range, basis and source.
 *
 * `resolveSettings` turns what a shop has set into the full record that calculations take. It reads no units: sizes are metres, masses
 * kilograms, whatever the user's system.
 */

import { type Amount, amount, type Fault, type Quantity, type Result, wrong } from './result.ts';
import { glassReinforcedStrength } from './strength/flexural-strength.ts';

/** How a number is known. */
export type Basis = 'published' | 'derived' | 'common practice' | 'assumption' | 'memory';

/** A numeric range. `from` and `to` are allowed themselves, `above` and `below` are not. */
export interface Range {
  readonly from?: number;
  readonly above?: number;
  readonly to?: number;
  readonly below?: number;
}

/** The ends between which a default plausibly lies: absolute values, or factors on it. */
export interface Plausible {
  readonly low: number;
  readonly high: number;
  readonly relative: boolean;
  readonly basis: Basis;
}

interface Common {
  /** Name as people write it. */
  readonly name: string;
  readonly basis: Basis;
  readonly source: string;
}

export interface NumberSetting extends Common {
  readonly kind: 'number';
  readonly quantity: Quantity;
  /** Default in SI; null where it is blank or follows something else. */
  readonly value: number | null;
  /** What the default follows, in words, where it does. */
  readonly follows?: string;
  readonly range: Range;
  readonly plausible?: Plausible;
  /** 0 means blank, since a host may hand a blank over as 0. */
  readonly zeroIsBlank?: boolean;
}

export interface ChoiceSetting<W extends string> extends Common {
  readonly kind: 'choice';
  readonly words: readonly W[];
  readonly value: W;
}

const choice = <const W extends string>(
  name: string,
  words: readonly W[],
  value: NoInfer<W>,
  basis: Basis,
  source: string,
): ChoiceSetting<W> => ({ kind: 'choice', name, words, value, basis, source });

type Extra = Partial<Pick<NumberSetting, 'follows' | 'plausible' | 'zeroIsBlank'>>;

/** A number with a default of its own. */
const number = (
  name: string,
  quantity: Quantity,
  value: number,
  range: Range,
  basis: Basis,
  source: string,
  extra: Extra = {},
): NumberSetting & { readonly value: number } => ({
  kind: 'number',
  name,
  quantity,
  value,
  range,
  basis,
  source,
  ...extra,
});

/** A number whose default follows another setting: always known once all settings are read. */
const following = (
  name: string,
  quantity: Quantity,
  follows: string,
  range: Range,
  basis: Basis,
  source: string,
  extra: Extra = {},
): NumberSetting & { readonly value: null; readonly known: true } => ({
  kind: 'number',
  name,
  quantity,
  value: null,
  known: true,
  follows,
  range,
  basis,
  source,
  ...extra,
});

/** A number that is blank unless the shop sets it, or that follows the specimen. */
const blank = (
  name: string,
  quantity: Quantity,
  range: Range,
  basis: Basis,
  source: string,
  extra: Extra = {},
): NumberSetting & { readonly value: null; readonly known: false } => ({
  kind: 'number',
  name,
  quantity,
  value: null,
  known: false,
  range,
  basis,
  source,
  ...extra,
});

const between = (low: number, high: number, basis: Basis): Plausible => ({ low, high, relative: false, basis });
const factor = (low: number, high: number, basis: Basis): Plausible => ({ low, high, relative: true, basis });

const POSITIVE: Range = { above: 0 };
const ZERO_UP: Range = { from: 0 };
const SHARE: Range = { from: 0, to: 1 };

const PRICE_SOURCE = 'the price of one pack, from your own supplier';
const price = (name: string) => blank(name, 'money', ZERO_UP, 'assumption', PRICE_SOURCE, { zeroIsBlank: true });

export const SETTINGS = {
  shape: choice(
    'shape',
    ['ellipsoid', 'box', 'cylinder'],
    'ellipsoid',
    'assumption',
    'rounded specimens; use box for slabs and blocks, cylinder for shafts',
  ),
  reliefFactor: number(
    'relief factor',
    'ratio',
    1,
    { from: 1, to: 3 },
    'assumption',
    'factor on the surface; 1.2 to 1.5 for skulls and the like',
  ),
  padding: choice('padding', ['felt', 'foam'], 'felt', 'common practice', 'polyester felt or polyethylene foam'),
  paddingThickness: number(
    'padding thickness',
    'thickness',
    6.35e-3,
    ZERO_UP,
    'common practice',
    'common practice, no source: 1/4 in',
  ),
  paddingDensity: following(
    'padding density',
    'bulkDensity',
    'padding',
    ZERO_UP,
    'published',
    'trade grades: felt 42 oz/yd² at 3/8 in, foam 2.2 lb/ft³',
    { plausible: factor(0.8, 1.2, 'assumption') },
  ),
  paddingSheetLength: number('padding sheet length', 'length', 2.7432, POSITIVE, 'memory', 'trade stock size 108 in'),
  paddingSheetWidth: number('padding sheet width', 'length', 1.2192, POSITIVE, 'memory', 'trade stock size 48 in'),
  flange: number('flange', 'length', 0.05, ZERO_UP, 'assumption', 'no published width was found', {
    plausible: between(0.04, 0.07, 'assumption'),
  }),
  layerThickness: number(
    'layer thickness',
    'thickness',
    1.5e-3,
    { from: 0.3e-3, to: 10e-3 },
    'assumption',
    'near the published 1/4 in of hand lay-up over four layers',
    { plausible: between(1.2e-3, 2e-3, 'assumption') },
  ),
  clothWeight: number(
    'cloth weight',
    'clothWeight',
    0.203434484849,
    ZERO_UP,
    'published',
    'glass cloth of 6 oz/yd², published tables of weights',
    { plausible: factor(0.95, 1.05, 'memory') },
  ),
  glassDensity: number('glass density', 'bulkDensity', 2540, POSITIVE, 'memory', 'E-glass'),
  rollWidth: number('roll width', 'length', 1.27, POSITIVE, 'memory', 'trade stock width 50 in'),
  pieceSize: number('piece size', 'length', 0.42, POSITIVE, 'assumption', 'three pieces across the roll'),
  lap: number('lap', 'length', 0.05, ZERO_UP, 'assumption', 'how far a piece laps over the next', {
    plausible: between(0.03, 0.08, 'assumption'),
  }),
  waste: number('waste', 'fraction', 0.1, SHARE, 'assumption', 'offcuts, spills and what stays in the bucket', {
    plausible: between(0.05, 0.2, 'assumption'),
  }),
  plaster: choice(
    'plaster',
    ['casting plaster', 'gypsum cement', 'dental stone'],
    'gypsum cement',
    'common practice',
    'common practice, no source: gypsum cement with glass cloth',
  ),
  waterRatio: following(
    'water ratio',
    'ratio',
    'plaster',
    { above: 0.18618, to: 2 },
    'published',
    'tables of consistency: casting plaster 70, gypsum cement 38, dental stone 30 parts of water to 100 of plaster',
    { plausible: factor(0.9, 1.1, 'published') },
  ),
  calibration: number(
    'calibration',
    'ratio',
    1,
    POSITIVE,
    'assumption',
    'plaster used over plaster estimated; see CALIBRATE',
  ),
  calibrationLow: blank('calibration low', 'ratio', ZERO_UP, 'assumption', 'low end of CALIBRATE', {
    zeroIsBlank: true,
  }),
  calibrationHigh: blank('calibration high', 'ratio', ZERO_UP, 'assumption', 'high end of CALIBRATE', {
    zeroIsBlank: true,
  }),
  finishCoat: number('finish coat', 'thickness', 1e-3, ZERO_UP, 'assumption', 'smooth coat of plaster outside', {
    plausible: between(0.5e-3, 2e-3, 'assumption'),
  }),
  coverLayers: number(
    'cover layers',
    'count',
    1,
    ZERO_UP,
    'common practice',
    'common practice, no source: one last layer holds the patches',
  ),
  leastLayers: number(
    'least layers',
    'count',
    4,
    POSITIVE,
    'common practice',
    'common practice, no source: 4 to 6 for small specimens',
  ),
  mostLayers: number(
    'most layers',
    'count',
    16,
    POSITIVE,
    'common practice',
    'common practice, no source: up to about 16 for large heavy ones',
  ),
  leastLayersWeight: number(
    'least layers weight',
    'mass',
    2,
    POSITIVE,
    'assumption',
    'specimen weight up to which the least layers do',
  ),
  mostLayersWeight: number(
    'most layers weight',
    'mass',
    500,
    POSITIVE,
    'assumption',
    'specimen weight from which the most layers apply',
  ),
  bucket: number('bucket', 'liquidVolume', 8e-3, POSITIVE, 'assumption', 'slurry mixed at once'),
  workingTime: number(
    'working time',
    'minutes',
    40,
    POSITIVE,
    'common practice',
    'common practice, no source: about 40 minutes; the maker’s data sheet comes first',
  ),
  layingRate: blank(
    'laying rate',
    'layingRate',
    ZERO_UP,
    'assumption',
    'area of one layer laid up in a minute; when given it also limits a mix',
    { zeroIsBlank: true },
  ),
  edgeStripWidth: number(
    'edge strip width',
    'length',
    0.1016,
    ZERO_UP,
    'common practice',
    'common practice, no source: 4 in',
  ),
  edgeStripLayers: number('edge strip layers', 'count', 2, ZERO_UP, 'assumption', 'strips of cloth on the flange'),
  footSize: blank(
    'foot size',
    'length',
    POSITIVE,
    'assumption',
    '10 cm, or a third of the shorter of length and width if that is less',
    { follows: 'the specimen' },
  ),
  footHeight: blank('foot height', 'length', ZERO_UP, 'assumption', 'as high as the foot is wide', {
    follows: 'foot size',
  }),
  footPatches: number(
    'foot patches',
    'count',
    6,
    ZERO_UP,
    'common practice',
    'common practice, no source: 5 or 6 to a foot',
  ),
  footPatchSize: blank(
    'foot patch size',
    'length',
    ZERO_UP,
    'common practice',
    'common practice, no source: 6 in on a foot of 4 in',
    { follows: '1.5 × foot size' },
  ),
  tipPatches: number(
    'tip patches',
    'count',
    5,
    ZERO_UP,
    'common practice',
    'common practice, no source: 4 or 5 smaller ones on the tip',
  ),
  tipPatchSize: blank('tip patch size', 'length', ZERO_UP, 'assumption', 'as wide as the foot', {
    follows: 'foot size',
  }),
  longRatio: number('long ratio', 'ratio', 3, POSITIVE, 'assumption', 'length to width from which the feet move in'),
  longHeavyWeight: number(
    'long heavy weight',
    'mass',
    25,
    ZERO_UP,
    'assumption',
    'weight of the whole from which the feet of a long jacket move in',
  ),
  foamWeight: number('foam weight', 'mass', 25, ZERO_UP, 'assumption', 'specimen weight from which foam suits better'),
  shapeUncertainty: number(
    'shape uncertainty',
    'fraction',
    0.15,
    SHARE,
    'assumption',
    'how far a surface from three sizes may be off',
  ),
  leastTilt: number(
    'least tilt',
    'angle',
    10,
    { from: 0, below: 90 },
    'published',
    'IEC 60601-1, stability in transport; here a yardstick, not a rule for jackets',
  ),
  boltSpacing: number('bolt spacing', 'length', 0.2, POSITIVE, 'assumption', 'no published spacing was found'),
  flexuralStrength: following(
    'flexural strength',
    'strength',
    'water ratio',
    { from: 0.5e6, to: 100e6 },
    'published',
    'published minimum flexural yield of glass-reinforced gypsum (ASTM C947), 1200 psi; less for wetter mixes by the porosity fit',
    { plausible: factor(0.7, 1.3, 'published') },
  ),
  condition: choice('condition', ['dry', 'wet'], 'dry', 'assumption', 'wet on the day it is made, dry afterwards'),
  wetStrengthFactor: number(
    'wet strength factor',
    'fraction',
    0.5,
    { above: 0, to: 1 },
    'published',
    'Gypsum & Lime 13 (1954): saturated gypsum keeps about half of its strength',
  ),
  targetSafetyFactor: number(
    'target safety factor',
    'ratio',
    2,
    POSITIVE,
    'assumption',
    'on the minimum yield; lifting gear has its own rules',
  ),
  ribWidth: number('rib width', 'length', 0.05, POSITIVE, 'assumption', 'width of the foam core'),
  ribLayers: number('rib layers', 'count', 4, POSITIVE, 'assumption', 'layers over the foam core'),
  onePersonLimit: number(
    'one-person limit',
    'mass',
    23,
    POSITIVE,
    'published',
    'load constant of the revised NIOSH lifting equation, Publication 94-110; local rules come first',
  ),
  roomTemperature: number(
    'room temperature',
    'temperature',
    20,
    { from: 1, to: 50 },
    'assumption',
    'a heated workshop',
  ),
  roomHumidity: number(
    'room humidity',
    'fraction',
    0.5,
    { from: 0.05, to: 0.99 },
    'assumption',
    'relative humidity of the room',
  ),
  airSpeed: number('air speed', 'airSpeed', 0.1, ZERO_UP, 'assumption', 'still room air'),
  clayThickness: number(
    'clay thickness',
    'thickness',
    3.175e-3,
    POSITIVE,
    'common practice',
    'common practice, no source: about 1/8 in',
  ),
  clayDensity: number('clay density', 'density', 1750, POSITIVE, 'memory', 'oil modelling clay, 1.6 to 1.9 kg/L'),
  sealerCoats: number('sealer coats', 'count', 1, POSITIVE, 'assumption', 'coats of a thin sealing solution'),
  sealerCoverage: number(
    'sealer coverage',
    'coverage',
    8000,
    POSITIVE,
    'assumption',
    'thin solution of a sealing resin on dry gypsum',
  ),
  preparationTime: number('preparation time', 'hours', 1, ZERO_UP, 'assumption', 'before the first mix'),
  trimTime: number('trim time', 'hours', 1, ZERO_UP, 'assumption', 'trimming the flange'),
  settingTime: number(
    'setting time',
    'hours',
    1,
    ZERO_UP,
    'common practice',
    'common practice, no source: about an hour',
  ),
  plasterPack: number('plaster pack', 'mass', 22.6796185, POSITIVE, 'assumption', 'a bag of 50 lb'),
  clothPack: number('cloth pack', 'clothLength', 45.72, POSITIVE, 'assumption', 'a roll of 50 yd'),
  feltPack: number('felt pack', 'count', 1, POSITIVE, 'assumption', 'sheets in a pack'),
  foamPack: number('foam pack', 'count', 1, POSITIVE, 'assumption', 'sheets in a pack'),
  sealerPack: number('sealer pack', 'liquidVolume', 3.785411784e-3, POSITIVE, 'assumption', 'a US gallon'),
  boltPack: number('bolt pack', 'count', 50, POSITIVE, 'assumption', 'bolts in a box'),
  plasterPrice: price('plaster price'),
  clothPrice: price('cloth price'),
  feltPrice: price('felt price'),
  foamPrice: price('foam price'),
  sealerPrice: price('sealer price'),
  boltPrice: price('bolt price'),
} as const;

export type SettingKey = keyof typeof SETTINGS;
export type SettingDefinition = NumberSetting | ChoiceSetting<string>;

type ValueOf<D> = D extends ChoiceSetting<infer W> ? W : D extends { readonly known: false } ? number | null : number;

/** What a shop has set, in SI. Anything left out keeps its default. */
export type Given = { readonly [K in SettingKey]?: ValueOf<(typeof SETTINGS)[K]> };

/** All settings with their values in SI, and beside them what was given by hand. */
export type Settings = { readonly [K in SettingKey]: ValueOf<(typeof SETTINGS)[K]> } & { readonly given: Given };

/** Density of a padding [kg/m³]. Trade grades: felt 42 oz/yd² at 3/8 in, foam 2.2 lb/ft³. */
export const PADDING_DENSITY = {
  felt: 149.506,
  foam: 35.2406,
} as const;

/** Water by mass per mass of plaster [kg/kg]. Published tables of consistency. */
export const WATER_RATIO = {
  'casting plaster': 0.7,
  'gypsum cement': 0.38,
  'dental stone': 0.3,
} as const;

export type Plaster = keyof typeof WATER_RATIO;
export type Padding = keyof typeof PADDING_DENSITY;
export type Shape = (typeof SETTINGS.shape.words)[number];

const definitions = Object.entries(SETTINGS) as [SettingKey, SettingDefinition][];

/** Says what a range allows, and what came instead. */
const rangeFault = (d: NumberSetting, value: number): Fault => {
  const { from, above, to, below } = d.range;
  const amounts: Record<string, Amount> = { value: amount(value, d.quantity) };
  const parts: string[] = [];
  if (from !== undefined) {
    parts.push(from === 0 ? '0 or more' : 'at least {from}');
    amounts.from = amount(from, d.quantity);
  }
  if (above !== undefined) {
    parts.push(above === 0 ? 'above 0' : 'above {above}');
    amounts.above = amount(above, d.quantity);
  }
  if (to !== undefined) {
    parts.push('at most {to}');
    amounts.to = amount(to, d.quantity);
  }
  if (below !== undefined) {
    parts.push('below {below}');
    amounts.below = amount(below, d.quantity);
  }
  return wrong(d.name, `must be ${parts.join(' and ')}, not {value}`, amounts);
};

/** Relative slack, so that a limit typed in other units still is the limit: 10 mm is 0.3937 in only to some digits. */
const SLACK = 1e-9;

const inRange = ({ from, above, to, below }: Range, x: number): boolean =>
  x > -Infinity &&
  x < Infinity &&
  (from === undefined || x >= from - Math.abs(from) * SLACK) &&
  (above === undefined || x > above) &&
  (to === undefined || x <= to + Math.abs(to) * SLACK) &&
  (below === undefined || x < below);

/**
 * The full record of settings for what a shop has set.
 *
 * A default that follows another setting is worked out after all are read: padding density follows padding, water ratio follows
 * plaster, flexural strength follows water ratio.
 *
 * @param given values in SI by key; a key left out keeps its default
 * @returns all settings, or the fault that names the setting, what was expected and what came
 */
export const resolveSettings = (given: Given): Result<Settings> => {
  const all: Record<string, number | string | null | Given> = {};
  const kept: Record<string, number | string> = {};
  for (const [key, d] of definitions) {
    let value = given[key] as number | string | null | undefined;
    if (d.kind === 'number') {
      if (value === 0 && d.zeroIsBlank) value = undefined;
      if (typeof value === 'number') {
        if (!inRange(d.range, value)) return rangeFault(d, value);
        if (d.quantity === 'count' && !Number.isInteger(value))
          return wrong(d.name, 'must be a whole number, not {value}', { value: amount(value, 'ratio') });
      }
    }
    if (value !== undefined && value !== null) kept[key] = value;
    all[key] = value ?? d.value;
  }
  const s = all as { -readonly [K in SettingKey]: Settings[K] } & { given: Given };
  s.given = kept as Given;
  s.paddingDensity ??= PADDING_DENSITY[s.padding];
  s.waterRatio ??= WATER_RATIO[s.plaster];
  s.flexuralStrength ??= glassReinforcedStrength(s.waterRatio);
  return conflict(s) ?? Object.freeze(s);
};

/** Settings that are each in range but do not go together. */
const conflict = (s: Settings): Fault | undefined => {
  const ownThickness = s.clothWeight / s.glassDensity;
  if (!(s.lap < s.pieceSize))
    return wrong('lap', 'must be below the piece size of {piece}, not {lap}', {
      piece: amount(s.pieceSize, 'length'),
      lap: amount(s.lap, 'length'),
    });
  if (!(s.layerThickness > ownThickness))
    return wrong('layer thickness', "must be above the cloth's own {own}, not {layer}", {
      own: amount(ownThickness, 'thickness'),
      layer: amount(s.layerThickness, 'thickness'),
    });
  if (s.leastLayers > s.mostLayers)
    return wrong('least layers', 'must be at most the most layers, {most}, not {least}', {
      most: amount(s.mostLayers, 'count'),
      least: amount(s.leastLayers, 'count'),
    });
  if (!(s.leastLayersWeight < s.mostLayersWeight))
    return wrong('least layers weight', 'must be below the most layers weight of {most}, not {least}', {
      most: amount(s.mostLayersWeight, 'mass'),
      least: amount(s.leastLayersWeight, 'mass'),
    });
  return undefined;
};

/** All defaults. */
export const DEFAULT_SETTINGS: Settings = resolveSettings({}) as Settings;
