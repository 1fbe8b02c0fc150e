/** Functions of texts. */

import {
  BaseFunction,
  type BaseValueObject,
  ErrorType,
  type IFunctionService,
  NumberValueObject,
  StringValueObject,
} from '@univerjs/engine-formula';
import {
  amend,
  asArray,
  asValue,
  errorIn,
  faulty,
  lifted,
  mapped,
  numberOf,
  numberText,
  OneByOne,
  table,
  textOf,
} from './amend.ts';
import { looksFor } from './wildcards.ts';

/** Where a pattern starts in a text, letter case aside. */
function search(wanted: BaseValueObject, within: BaseValueObject, start?: BaseValueObject): BaseValueObject {
  const error = errorIn(start === undefined ? [wanted, within] : [wanted, within, start]);
  if (error !== undefined) return error;
  const text = textOf(within);
  const from = start === undefined ? 1 : Math.floor(numberOf(start));
  if (!(from >= 1 && from <= Math.max(1, text.length))) return faulty(ErrorType.VALUE);
  const pattern = looksFor(textOf(wanted));
  pattern.lastIndex = from - 1;
  const found = pattern.exec(text);
  return found === null ? faulty(ErrorType.VALUE) : NumberValueObject.create(found.index + 1);
}

/** What a link shows: its name, else its address. The link itself is not made, since nobody should be led away by a calculation. */
const linkText = (address: BaseValueObject, name: BaseValueObject = address): BaseValueObject => {
  const error = errorIn([address, name]);
  if (error !== undefined) return error;
  return name.isNull() ? NumberValueObject.create(0) : name;
};

const asText = (value: BaseValueObject): BaseValueObject =>
  value.isBoolean() || value.isNumber() ? StringValueObject.create(textOf(value)) : value;

const trueOrFalse = (value: BaseValueObject): BaseValueObject => (value.isBoolean() ? asText(value) : value);

/** Which arguments are texts, so that a number or a truth value is taken as it is written: all from the first one given on, or the ones given. */
const TEXTS: Readonly<Record<string, readonly number[] | 'all'>> = {
  CONCATENATE: 'all',
  CONCAT: 'all',
  TEXTJOIN: 'all',
  EXACT: 'all',
  LEN: [0],
  LEFT: [0],
  RIGHT: [0],
  MID: [0],
  UPPER: [0],
  LOWER: [0],
  PROPER: [0],
  CLEAN: [0],
  REPT: [0],
  FIND: [0, 1],
  SUBSTITUTE: [0, 1, 2],
  REPLACE: [0, 3],
};

function repairNumbersAsText(service: IFunctionService): void {
  for (const [name, places] of Object.entries(TEXTS)) {
    // The second argument of TEXTJOIN is a truth value.
    const isText = (i: number): boolean => (places === 'all' ? !(name === 'TEXTJOIN' && i === 1) : places.includes(i));
    amend(
      service,
      name,
      (shipped) =>
        (...values) =>
          shipped(...values.map((value, i) => (isText(i) ? mapped(asValue(value), asText) : value))),
    );
  }
}

/** Rounds as people do, by the digits that a number shows: 1.005 is 1.01. */
function rounded(x: number, places: number): number {
  const text = numberText(Math.abs(x));
  if (text.includes('E')) return x;
  return Math.sign(x) * Number(`${Math.round(Number(`${text}e${places}`))}e${-places}`);
}

/** Decimals that a number format shows, or nothing where it is not one of plain digits. */
function decimalsOf(format: string, x: number): number | undefined {
  const bare = format.replace(/"[^"]*"|\\.|\[[^\]]*\]|[_*]./g, '');
  const sections = bare.split(';');
  const section = (x < 0 ? sections[1] : x === 0 ? sections[2] : sections[0]) ?? sections[0]!;
  const digits = /^[^0#?]*([0#?,]*)(?:\.([0#?]*))?(,*)[^0#?]*$/.exec(section);
  if (digits === null || /[a-z/@]/i.test(section)) return undefined;
  const [, whole = '', decimals = '', thousands = ''] = digits;
  const thousandths = (/,*$/.exec(whole)?.[0].length ?? 0) + thousands.length;
  return decimals.length + 2 * (section.split('%').length - 1) - 3 * thousandths;
}

/** A number that a format shows with the digits that it rounds to. */
function roundedFor(format: BaseValueObject): (value: BaseValueObject) => BaseValueObject {
  return (value) => {
    if (!value.isNumber() || !format.isString()) return trueOrFalse(value);
    const x = Number(value.getValue());
    const places = decimalsOf(String(format.getValue()), x);
    return places === undefined ? value : NumberValueObject.create(rounded(x, places));
  };
}

const LAST_CHARACTER = 255;

/** Characters 128 to 159 of the code page that spreadsheet programs use; the numbers of five are not taken. */
const OLD_CHARACTERS = '€\u0081‚ƒ„…†‡ˆ‰Š‹Œ\u008dŽ\u008f\u0090‘’“”•–—˜™š›œ\u009džŸ';
const FIRST_OLD_CHARACTER = 128;

function character(code: BaseValueObject): BaseValueObject {
  if (code.isError()) return code;
  const number = Math.trunc(numberOf(code));
  if (!(number >= 1 && number <= LAST_CHARACTER)) return faulty(ErrorType.VALUE);
  return StringValueObject.create(OLD_CHARACTERS[number - FIRST_OLD_CHARACTER] ?? String.fromCharCode(number));
}

function codeOf(text: BaseValueObject): BaseValueObject {
  if (text.isError()) return text;
  const [first] = textOf(text);
  if (first === undefined) return faulty(ErrorType.VALUE);
  const old = OLD_CHARACTERS.indexOf(first);
  const code = old >= 0 ? old + FIRST_OLD_CHARACTER : first.charCodeAt(0);
  return NumberValueObject.create(code <= LAST_CHARACTER && first.length === 1 ? code : '?'.charCodeAt(0));
}

/** Spaces at the ends and doubled ones go. Other kinds of space stay. */
const trim = (text: BaseValueObject): BaseValueObject =>
  text.isError() ? text : StringValueObject.create(textOf(text).replace(/ +/g, ' ').replace(/^ | $/g, ''));

const DEFAULT_DECIMALS = 2;

const delimitersOf = (value: BaseValueObject | undefined): string[] => {
  if (value === undefined || value.isNull()) return [];
  const array = asArray(value);
  return array === undefined ? [textOf(value)] : (array.getArrayValue().flat() as BaseValueObject[]).map(textOf);
};

/** Parts of a text between delimiters; empty ones go where that is asked for. */
function parts(text: string, delimiters: readonly string[], anyCase: boolean, dropEmpty: boolean): string[] {
  if (delimiters.length === 0) return [text];
  const found = text.split(anyOf(delimiters, anyCase ? 'i' : ''));
  return dropEmpty ? found.filter((part) => part !== '') : found;
}

const isSet = (value: BaseValueObject | undefined): boolean =>
  value !== undefined && !value.isNull() && numberOf(single(value)) !== 0;

const single = (value: BaseValueObject): BaseValueObject => asArray(value)?.get(0, 0) ?? value;

const escaped = (text: string): string => text.replace(/[\\^$.*+?()[\]{}|]/g, '\\$&');

/** Any of the delimiters, the longest that fits. */
const anyOf = (delimiters: readonly string[], flags: string): RegExp =>
  new RegExp(
    [...delimiters]
      .sort((a, b) => b.length - a.length)
      .map(escaped)
      .join('|'),
    flags,
  );

/** Where the delimiter of a number stands, counted from the end where the number is below 0. */
function delimiterAt(
  text: string,
  delimiters: readonly string[],
  which: number,
  anyCase: boolean,
  toEnd: boolean,
): readonly [start: number, end: number] | undefined {
  const found = Array.from(text.matchAll(anyOf(delimiters, anyCase ? 'gi' : 'g')), (match) => {
    return [match.index, match.index + match[0].length] as const;
  });
  const at = which > 0 ? which - 1 : found.length + which;
  if (toEnd && at === found.length) return [text.length, text.length];
  return toEnd && at === -1 ? [0, 0] : found[at];
}

/** TEXTBEFORE and TEXTAFTER. */
class TextAround extends BaseFunction {
  override minParams = 2;
  override maxParams = 6;
  readonly #before: boolean;

  constructor(name: string, before: boolean) {
    super(name);
    this.#before = before;
  }

  override calculate(...[texts, delimiters, number, anyCase, toEnd, none]: BaseValueObject[]): BaseValueObject {
    const given = [delimiters, number, anyCase, toEnd].filter((value) => value !== undefined);
    const error = errorIn(given.map(single));
    if (error !== undefined) return error;
    const which = number === undefined || number.isNull() ? 1 : Math.trunc(numberOf(single(number)));
    if (Number.isNaN(which) || which === 0) return faulty(ErrorType.VALUE);
    const by = delimitersOf(delimiters);
    return mapped(texts!, (value) => {
      if (value.isError()) return value;
      const text = textOf(value);
      const place = delimiterAt(text, by, which, isSet(anyCase), isSet(toEnd));
      if (place === undefined) return none === undefined || none.isNull() ? faulty(ErrorType.NA) : single(none);
      return StringValueObject.create(this.#before ? text.slice(0, place[0]) : text.slice(place[1]));
    });
  }
}

class TextSplit extends BaseFunction {
  override minParams = 2;
  override maxParams = 6;

  override calculate(...[text, columns, rows, dropEmpty, anyCase, padding]: BaseValueObject[]): BaseValueObject {
    const given = [text, columns, rows, dropEmpty, anyCase].filter((value) => value !== undefined);
    const error = errorIn(given.map(single));
    if (error !== undefined) return error;
    const [acrossBy, downBy] = [delimitersOf(columns), delimitersOf(rows)];
    if (acrossBy.length + downBy.length === 0 || [...acrossBy, ...downBy].includes('')) return faulty(ErrorType.VALUE);
    const split = (part: string, by: readonly string[]) => parts(part, by, isSet(anyCase), isSet(dropEmpty));
    const cells = split(textOf(single(text!)), downBy).map((line) => split(line, acrossBy));
    const width = Math.max(...cells.map((line) => line.length));
    if (!(width >= 1)) return faulty(ErrorType.CALC);
    const pad = padding === undefined || padding.isNull() ? faulty(ErrorType.NA) : single(padding);
    const full = cells.map((line) =>
      Array.from({ length: width }, (_, i) => {
        const part = line[i];
        return part === undefined ? pad : StringValueObject.create(part);
      }),
    );
    return full.length === 1 && width === 1 ? full[0]![0]! : table(full);
  }
}

const IN_BRACKETS = /^\s*\(([^()]*)\)\s*$/;

/**
 * As shipped SEARCH knows no wildcards, HYPERLINK makes a link that can be clicked, numbers as text have up to 17 digits, TEXT and FIXED round 1.005 down, TEXT leaves
 * TRUE a truth value, TRIM takes every kind of space, CHAR and CODE know another code page, DOLLAR ends with a space, TEXTSPLIT and its like make
 * numbers of parts, and VALUE does not read "(5)".
 */
export function repairTexts(service: IFunctionService): void {
  repairNumbersAsText(service);
  service.registerExecutors(
    new OneByOne('SEARCH', 2, 3, search),
    new OneByOne('SEARCHB', 2, 3, search),
    new OneByOne('HYPERLINK', 1, 2, linkText),
    new OneByOne('TRIM', 1, 1, trim),
    new OneByOne('CHAR', 1, 1, character),
    new OneByOne('CODE', 1, 1, codeOf),
    new TextSplit('TEXTSPLIT'),
    new TextAround('TEXTBEFORE', true),
    new TextAround('TEXTAFTER', false),
  );
  amend(
    service,
    'TEXT',
    (shipped) =>
      (...values) =>
        lifted(values, (value, format) =>
          format === undefined ? shipped(value!) : shipped(roundedFor(format)(value!), format),
        ),
  );
  amend(
    service,
    'FIXED',
    (shipped) =>
      (...values) =>
        lifted(values, (value, decimals, ...rest) => {
          const given = [value!, ...(decimals === undefined ? [] : [decimals]), ...rest];
          const x = value!.isError() ? Number.NaN : numberOf(value!);
          const places = decimals === undefined ? DEFAULT_DECIMALS : Math.trunc(numberOf(decimals));
          if (errorIn(given) !== undefined || Number.isNaN(x) || Number.isNaN(places)) return shipped(...given);
          return shipped(NumberValueObject.create(rounded(x, places)), ...given.slice(1));
        }),
  );
  amend(
    service,
    'DOLLAR',
    (shipped) =>
      (...values) =>
        mapped(shipped(...values), (text) =>
          text.isString() ? StringValueObject.create(String(text.getValue()).trimEnd()) : text,
        ),
  );
  amend(
    service,
    'VALUE',
    (shipped) => (value) =>
      mapped(value, (one) => {
        const inside = one.isString() ? IN_BRACKETS.exec(String(one.getValue()))?.[1] : undefined;
        return shipped(inside === undefined ? one : StringValueObject.create(`-${inside}`));
      }),
  );
}
