/**
 * Formulas whose answer this engine is known to get wrong, so that nobody takes it for the spreadsheet program's own.
 *
 * A cell with such a formula keeps the value that the spreadsheet program gave it.
 */

import { bare, type Token, tokens } from './formula-text.ts';

/** Whether the engine has a function of that name, in capitals. */
export type Knows = (name: string) => boolean;

/** Built-in functions that answer differently from spreadsheet programs, with what is different. Found by comparison, engine version 0.25.1. */
const FAULTY: ReadonlyMap<string, string> = new Map([
  ['SEARCHB', 'wildcards are not understood here'],
  ['CONVERT', 'the result is rounded here'],
  ['SECOND', 'seconds are cut off here, not rounded'],
  ['HYPERLINK', 'links are not made here'],
  ['ANCHORARRAY', 'a reference to a whole spill (A1#) is not understood here'],
]);

/** Functions whose answer is another one each time or on each computer. A value that was calculated once is kept. */
const NEVER_THE_SAME: ReadonlySet<string> = new Set([
  'NOW',
  'TODAY',
  'RAND',
  'RANDBETWEEN',
  'RANDARRAY',
  'INFO',
  'CELL',
]);

/** Functions that turn a number into a day of the calendar or back. Here they count days from 1900. */
const CALENDAR: ReadonlySet<string> = new Set([
  ...['DATE', 'DATEDIF', 'DATEVALUE', 'DAY', 'DAYS360', 'EDATE', 'EOMONTH', 'ISOWEEKNUM', 'MONTH', 'NETWORKDAYS'],
  ...['NETWORKDAYS.INTL', 'TEXT', 'VALUE', 'WEEKDAY', 'WEEKNUM', 'WORKDAY', 'WORKDAY.INTL', 'YEAR', 'YEARFRAC'],
  ...['ACCRINT', 'ACCRINTM', 'AMORDEGRC', 'AMORLINC', 'COUPDAYBS', 'COUPDAYS', 'COUPDAYSNC', 'COUPNCD', 'COUPNUM'],
  ...['COUPPCD', 'DISC', 'DURATION', 'INTRATE', 'MDURATION', 'ODDFPRICE', 'ODDFYIELD', 'ODDLPRICE', 'ODDLYIELD'],
  ...['PRICE', 'PRICEDISC', 'PRICEMAT', 'RECEIVED', 'YIELD', 'YIELDDISC', 'YIELDMAT'],
]);

/** Where a file holds a newer function, its name has one of these in front. */
const FILE_PREFIX = /^(?:_xlfn\.|_xlws\.|_xlpm\.)+/i;

/** A function's name as the engine knows it: capitals, without what files put in front. */
export const functionName = (token: string): string => token.replace(/^.*!/, '').replace(FILE_PREFIX, '').toUpperCase();

/** The pieces that are not space. */
const pieces = (formula: string): Token[] => tokens(bare(formula)).filter((token) => token.kind !== 'space');

/** Names that the formula itself gives to something, with LET or LAMBDA, and may call like a function. */
const ownNames = (all: readonly Token[]): Set<string> =>
  new Set(all.filter((token) => token.kind === 'name').map((token) => functionName(token.text)));

/** Functions in a formula that the engine does not know, in capitals. Names the formula gives itself are no functions. */
export function unknownFunctions(formula: string, knows: Knows): string[] {
  const all = pieces(formula);
  const own = ownNames(all);
  return calledNames(all).filter((name) => !knows(name) && !own.has(name));
}

const calledNames = (all: readonly Token[]): string[] =>
  all.filter((token) => token.kind === 'function').map((token) => functionName(token.text));

/** Why a formula cannot be relied on here in a workbook that counts its days from 1904. */
export function countedFrom1904(formula: string): string | undefined {
  const name = calledNames(pieces(formula)).find((called) => CALENDAR.has(called));
  return name === undefined ? undefined : `${name}: this workbook counts days from 1904, which is not understood here`;
}

/** Why the answer to a formula cannot be relied on here, or nothing if it can. */
export function notCheckedReason(formula: string, knows: Knows): string | undefined {
  const all = pieces(formula);
  for (const [i, token] of all.entries()) {
    const reason = token.kind === 'function' ? faultyCall(all, i) : faultyPiece(all, i);
    if (reason !== undefined) return reason;
  }
  const unknown = calledNames(all).find((name) => !knows(name));
  if (unknown === undefined) return faultyMeeting(formula);
  return ownNames(all).has(unknown)
    ? `${unknown}: a LAMBDA kept under a name cannot be called here`
    : `${unknown}: there is no such function here`;
}

function faultyCall(all: readonly Token[], i: number): string | undefined {
  const name = functionName(all[i]!.text);
  const first = all[i + 2];
  if (NEVER_THE_SAME.has(name)) return `${name}: the answer changes with time or place, so it is kept as it was`;
  const fault = FAULTY.get(name);
  if (fault !== undefined) return `${name}: ${fault}`;
  const firstIsPlainText = first?.kind === 'text' && all[i + 3]?.kind === 'separator';
  if (name === 'SEARCH' && !(firstIsPlainText && !/[*?~]/.test(first.text)))
    return 'SEARCH: wildcards are not understood here';
  if (name === 'IF' && firstIsPlainText && !/^"(true|false)"$/i.test(first.text))
    return 'IF: a text as the condition is not refused here';
  return undefined;
}

function faultyPiece(all: readonly Token[], i: number): string | undefined {
  const { kind, text } = all[i]!;
  const before = all[i - 1];
  const next = all[i + 1];
  if (isFaultyCall(all, i)) return 'a LAMBDA kept under a name cannot be called here';
  if (text === '#' && kind === 'operator') return 'a reference to a whole spill (A1#) is not understood here';
  const isPrefix =
    before === undefined || before.kind === 'operator' || before.kind === 'separator' || /[({]/.test(before.text);
  const takesMinusBadly = next !== undefined && (['text', 'name'].includes(next.kind) || next.text === '{');
  if (kind === 'operator' && text === '-' && isPrefix && takesMinusBadly)
    return 'a minus in front of a text, a name or an array is not understood here; put brackets around what follows it';
  if (kind === 'operator' && text === '@') return 'the sign @ in front of a reference is not understood here';
  if (kind === 'reference' && /^\[|\[[^\]]*\].*!|^'[^']*\[/.test(text)) return 'another workbook is not read here';
  if (kind === 'reference' && /^[^'!]*:[^!]*!|^'[^']*:[^']*'!/.test(text))
    return 'a reference across several sheets is not understood here';
  if (kind === 'structured' && /#Totals/i.test(text)) return 'the totals row of a table is not understood here';
  return undefined;
}

const ENDS_A_REFERENCE = /[\p{L}\p{N}_\])]$/u;

/** References that meet with a space (what they share) or a comma outside of a call (both together). */
function faultyMeeting(formula: string): string | undefined {
  const all = tokens(bare(formula));
  const calls: boolean[] = [];
  for (const [i, token] of all.entries()) {
    const before = all[i - 1];
    const next = all[i + 1];
    if (token.text === '(') calls.push(before?.kind === 'function' || before?.text === ')');
    else if (token.text === '{') calls.push(true);
    else if (token.text === ')' || token.text === '}') calls.pop();
    else if (token.text === ',' && calls.at(-1) === false)
      return 'references joined by a comma are not understood here';
    else if (
      token.kind === 'space' &&
      before !== undefined &&
      next !== undefined &&
      isReference(before) &&
      startsReference(next)
    )
      return 'the part that two references share (a space between them) is not understood here';
  }
  return undefined;
}

/** `(f)(2)`: only a LAMBDA that stands right there is called, anything else is passed over. */
function isFaultyCall(all: readonly Token[], i: number): boolean {
  if (all[i]!.text !== '(' || all[i - 1]?.text !== ')') return false;
  let depth = 0;
  for (let at = i - 1; at >= 0; at -= 1) {
    if (all[at]!.text === ')') depth += 1;
    if (all[at]!.text === '(') depth -= 1;
    if (depth === 0) return all[at - 1] === undefined || functionName(all[at - 1]!.text) !== 'LAMBDA';
  }
  return true;
}

const isReference = (token: Token): boolean =>
  ['reference', 'name', 'structured'].includes(token.kind) || (token.text === ')' && ENDS_A_REFERENCE.test(token.text));
const startsReference = (token: Token): boolean => ['reference', 'name', 'structured', 'function'].includes(token.kind);
