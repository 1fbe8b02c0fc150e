/**
 * Formulas whose answer this engine is known to get wrong, so that nobody takes it for the spreadsheet program's own.
 *
 * A cell with such a formula keeps the value that the spreadsheet program gave it.
 */

import { forEngine } from './for-engine.ts';
import { bare, functionName, type Token, tokens } from './formula-text.ts';

/** Whether the engine has a function of that name, in capitals. */
export type Knows = (name: string) => boolean;

/** Built-in functions that answer differently from spreadsheet programs, with what is different. Found by comparison, engine version 0.25.1. */
const FAULTY: ReadonlyMap<string, string> = new Map<string, string>([]);

const CHANGES = 'the answer changes with time or place, so it is kept as it was';
const LAMBDA_BY_NAME = 'a LAMBDA kept under a name cannot be called here';
const NO_SUCH_FUNCTION = 'there is no such function here';
const ODD_SPILL = 'a # behind anything but a cell is not understood here';
const OTHER_BOOK = 'another workbook is not read here';
const SEVERAL_SHEETS = 'a reference across several sheets is not understood here';
const UNION = 'references joined by a comma are not understood here';
const MEETING = 'the part that two names or tables share (a space between them) is not understood here';

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

/** What is not calculated here, for people to read: functions by their name, ways of writing by an example. */
export interface NotChecked {
  readonly what: string;
  readonly reason: string;
}

/** The whole list. What a workbook does beside it, such as to point at a sheet that is not there, is said where it happens. */
export const NOT_CHECKED: readonly NotChecked[] = [
  ...Array.from(FAULTY, ([what, reason]) => ({ what, reason })),
  ...Array.from(NEVER_THE_SAME, (what) => ({ what, reason: CHANGES })),
  { what: 'LET(f,LAMBDA(x,x+1),f(2))', reason: LAMBDA_BY_NAME },
  { what: 'SUM((A1:A2,C1))', reason: UNION },
  { what: 'SUM(lengths widths)', reason: MEETING },
  { what: 'SUM(January:March!A1)', reason: SEVERAL_SHEETS },
  { what: "'[other.xlsx]Data'!A1", reason: OTHER_BOOK },
  { what: 'INDEX(A1:A9,2)#', reason: ODD_SPILL },
  { what: 'TRIMRANGE(A1:A9)', reason: NO_SUCH_FUNCTION },
];

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
  const text = forEngine(formula);
  const all = pieces(text);
  for (const [i, token] of all.entries()) {
    const reason = token.kind === 'function' ? faultyCall(all, i) : faultyPiece(all, i);
    if (reason !== undefined) return reason;
  }
  const unknown = calledNames(all).find((name) => !knows(name));
  if (unknown === undefined) return faultyMeeting(text);
  return ownNames(all).has(unknown) ? `${unknown}: ${LAMBDA_BY_NAME}` : `${unknown}: ${NO_SUCH_FUNCTION}`;
}

function faultyCall(all: readonly Token[], i: number): string | undefined {
  const name = functionName(all[i]!.text);
  if (NEVER_THE_SAME.has(name)) return `${name}: ${CHANGES}`;
  const fault = FAULTY.get(name);
  if (fault !== undefined) return `${name}: ${fault}`;
  return undefined;
}

function faultyPiece(all: readonly Token[], i: number): string | undefined {
  const { kind, text } = all[i]!;
  if (isFaultyCall(all, i)) return LAMBDA_BY_NAME;
  if (text === '#' && kind === 'operator') return ODD_SPILL;
  if (kind === 'reference' && /^\[|\[[^\]]*\].*!|^'[^']*\[/.test(text)) return OTHER_BOOK;
  if (kind === 'reference' && /^[^'!]*:[^!]*!|^'[^']*:[^']*'!/.test(text)) return SEVERAL_SHEETS;
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
    else if (token.text === ',' && calls.at(-1) === false) return UNION;
    else if (
      token.kind === 'space' &&
      before !== undefined &&
      next !== undefined &&
      isReference(before) &&
      startsReference(next)
    )
      return MEETING;
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
