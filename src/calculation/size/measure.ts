import { INCH } from '../constants.ts';
import { type Fault, finite, isFault, type Result, wrong } from '../result.ts';

/** Inches in a foot. Definition. */
export const INCHES_PER_FOOT = 12;

/** Centimetres in a metre. Definition. */
export const CENTIMETRES_PER_METRE = 100;

/** Millimetres in a metre. Definition. */
export const MILLIMETRES_PER_METRE = 1000;

type Unit = 'in' | 'ft' | 'mm' | 'cm' | 'm';

const SPELLINGS: Readonly<Record<string, Unit>> = {
  in: 'in',
  inch: 'in',
  inches: 'in',
  '"': 'in',
  ft: 'ft',
  foot: 'ft',
  feet: 'ft',
  "'": 'ft',
  mm: 'mm',
  millimetre: 'mm',
  millimetres: 'mm',
  millimeter: 'mm',
  millimeters: 'mm',
  cm: 'cm',
  centimetre: 'cm',
  centimetres: 'cm',
  centimeter: 'cm',
  centimeters: 'cm',
  m: 'm',
  metre: 'm',
  metres: 'm',
  meter: 'm',
  meters: 'm',
};

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const FIELD = 'text';
const unreadable = (): Fault =>
  wrong(FIELD, 'is no size that can be read; type one such as 17 1/2 in, 2 ft 3 in or 44.5 cm');
const withoutUnit = (): Fault => wrong(FIELD, 'has a number without a unit; add one, such as 17.5 in or 44.5 cm');
const unknownUnit = (): Fault => wrong(FIELD, 'has a unit that is not known; use in, ft, mm, cm or m');

/** The many marks that people and programs write, brought to a few. */
const plain = (text: string): string =>
  text
    .toLowerCase()
    .replace(/[½⅓⅔¼¾⅕⅖⅗⅘⅙⅚⅐⅛⅜⅝⅞⅑⅒]/g, (mark) => ` ${FRACTIONS[mark]}`)
    .replace(/[⁄∕]/g, '/')
    .replace(/[′’‘´ʹʼ]/g, "'")
    .replace(/[″”“ʺ]|''/g, '"')
    .replace(/[‐‑–]/g, '-')
    .trim();

/** A number, a word with a full stop that may follow it, or a mark. */
const TOKEN = /\s*(?:(?<number>\d+(?:[.,]\d+)?|[.,]\d+)|(?<word>[a-z]+)\.?|(?<mark>["'/-]))/gy;

/** No size has more parts than feet and inches with a mixed number: 2 ft - 3 - 1 / 2 in. */
const MOST_TOKENS = 9;

/** The parts of a text; undefined where something in it is no part of a size. */
const tokens = (text: string): string[] | undefined => {
  const found: string[] = [];
  let end = 0;
  for (const match of text.matchAll(TOKEN)) {
    const { number, word, mark } = match.groups!;
    found.push((number?.replace(',', '.') ?? word ?? mark)!);
    end = match.index + match[0].length;
    if (found.length > MOST_TOKENS) return undefined;
  }
  return end === text.length ? found : undefined;
};

const isNumber = (token: string | undefined): token is string => token !== undefined && /^[\d.]/.test(token);
const isWhole = (token: string | undefined): token is string => isNumber(token) && !token.includes('.');

interface Amount {
  readonly value: number;
  /** Written as a whole number, without a fraction. */
  readonly whole: boolean;
  /** Where the next part stands. */
  readonly next: number;
}

/** Reads 17.5, 1/2, 17 1/2 or 17-1/2 from a place on. */
const readNumber = (parts: readonly string[], at: number): Amount | undefined => {
  const first = parts[at];
  if (!isNumber(first)) return undefined;
  const fractionAt = (from: number): number | undefined => {
    const [top, slash, bottom] = parts.slice(from, from + 3);
    return isWhole(top) && slash === '/' && isWhole(bottom) && Number(bottom) > 0
      ? Number(top) / Number(bottom)
      : undefined;
  };
  const alone = fractionAt(at);
  if (alone !== undefined) return { value: alone, whole: false, next: at + 3 };
  if (isWhole(first)) {
    const from = parts[at + 1] === '-' ? at + 2 : at + 1;
    const fraction = fractionAt(from);
    if (fraction !== undefined && fraction < 1)
      return { value: Number(first) + fraction, whole: false, next: from + 3 };
  }
  return { value: Number(first), whole: isWhole(first), next: at + 1 };
};

/** The unit at a place, or why there is none. */
const readUnit = (parts: readonly string[], at: number): Unit | Fault => {
  const token = parts[at];
  if (token === undefined) return withoutUnit();
  if (Object.hasOwn(SPELLINGS, token)) return SPELLINGS[token]!;
  return /^[a-z]/.test(token) ? unknownUnit() : unreadable();
};

const toMetres = (value: number, unit: Unit): number => {
  switch (unit) {
    case 'in':
      return value * INCH;
    case 'ft':
      return value * INCHES_PER_FOOT * INCH;
    case 'mm':
      return value / MILLIMETRES_PER_METRE;
    case 'cm':
      return value / CENTIMETRES_PER_METRE;
    case 'm':
      return value;
  }
};

/** The inches that follow whole feet, up to the end of the text [in]. */
const readInches = (parts: readonly string[], from: number): Result<number> => {
  const inches = readNumber(parts, parts[from] === '-' ? from + 1 : from);
  if (!inches) return unreadable();
  const unit = readUnit(parts, inches.next);
  if (isFault(unit)) return unit;
  if (unit !== 'in' || inches.next + 1 !== parts.length) return unreadable();
  if (!(inches.value < INCHES_PER_FOOT)) return wrong(FIELD, 'has 12 inches or more after the feet; carry them over');
  return inches.value;
};

/**
 * Length from text with its unit.
 *
 * Reads `17 1/2 in`, `17½ in`, `17-1/2"`, `1' 5 1/2"`, `2 ft 3 in`, `.5 in`, `44.5 cm`, `44,5 cm`, `445 mm`, `1.2 m`; straight and curly
 * marks; units as they are abbreviated or spelled out. A comma is a decimal mark, never one of thousands.
 *
 * @param text what was written
 * @returns length [m]; a number without a unit is refused
 * Limits: above 0; one unit, or whole feet and inches below 12. Source: international inch, agreement of 1959; definitions.
 * Example: 17 1/2 in, 0.4445 m.
 */
export const measure = (text: string): Result<number> => {
  const parts = tokens(plain(text));
  if (!parts || parts.length === 0) return unreadable();
  const amount = readNumber(parts, 0);
  if (!amount) return unreadable();
  const unit = readUnit(parts, amount.next);
  if (isFault(unit)) return unit;
  let metres = toMetres(amount.value, unit);
  if (amount.next + 1 < parts.length) {
    if (unit !== 'ft' || !amount.whole) return unreadable();
    const inches = readInches(parts, amount.next + 1);
    if (isFault(inches)) return inches;
    metres = toMetres(amount.value * INCHES_PER_FOOT + inches, 'in');
  }
  return metres > 0 ? finite(metres) : wrong(FIELD, 'must be above 0');
};
