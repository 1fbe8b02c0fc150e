/** Formulas between the form that files store and the form that people type and the engine reads. */

import { functionCalls, localNames } from './formula-names.ts';
import { type Token, tokenise } from './formula-tokens.ts';
import { NEWER_FUNCTIONS } from './newer-functions.ts';
import { isCellText } from './translate-formula.ts';

/** What files put before a function that an add-in supplies. */
const ADD_IN = '_xldudf_';
const LOCAL_NAME = '_xlpm.';
const FORMAT_PREFIX = /^(?:_xlfn\.)?(?:_xlws\.)?(?:_xlpm\.)?/i;
/** Stored form of `A1#`, all that a formula spills, and of `@A1`, the one value of a range. */
const SPILL_AREA = '_xlfn.ANCHORARRAY';
const ONE_VALUE = '_xlfn.SINGLE';

const storedName = (id: string): string => ADD_IN + id.replaceAll('.', '_');

/** The ids by stored name and by typed name, in small letters. Made once for each list. */
interface IdTable {
  readonly byStored: ReadonlyMap<string, string>;
  readonly byTyped: ReadonlyMap<string, string>;
}
const tables = new WeakMap<readonly string[], IdTable>();

function idTable(ids: readonly string[]): IdTable {
  let table = tables.get(ids);
  if (!table) {
    table = {
      byStored: new Map(ids.map((id) => [storedName(id).toLowerCase(), id])),
      byTyped: new Map(ids.map((id) => [id.toLowerCase(), id])),
    };
    tables.set(ids, table);
  }
  return table;
}

/**
 * Stored form to the form people type: `_xldudf_JACKET_PLASTER(` to `JACKET.PLASTER(`, format prefixes taken off.
 *
 * `ids` are full names, such as `JACKET.PLASTER`: dots and underscores are both stored as underscores, so only the list tells them apart.
 * A workbook number before the name (`[2]!_xldudf_…`), left over from a damaged session, goes. Functions of other add-ins stay as they are.
 *
 * @example toEngine('_xldudf_JACKET_SHELL_AREA(A1)', ['JACKET.SHELL_AREA']) // 'JACKET.SHELL_AREA(A1)'
 */
export function toEngine(stored: string, ids: readonly string[]): string {
  if (!/_xl/i.test(stored)) return stored;
  const { byStored } = idTable(ids);
  const tokens = tokenise(stored);
  const out = tokens.map((token) => token.text);
  for (let i = 0; i < tokens.length; i++) {
    if (tokens[i]!.kind !== 'word' || tokens[i + 1]?.text === '!') continue;
    const word = tokens[i]!.text;
    const id = tokens[i + 1]?.text === '(' ? byStored.get(word.toLowerCase()) : undefined;
    if (id !== undefined) {
      out[i] = id;
      if (tokens[i - 1]?.text === '!' && /^\[\d+\]$/.test(tokens[i - 2]?.text ?? '')) out[i - 1] = out[i - 2] = '';
    } else if (word.toLowerCase() === SPILL_AREA.toLowerCase() && spillAreaEnd(tokens, i) !== undefined) {
      out[i] = out[i + 1] = '';
      out[spillAreaEnd(tokens, i)!] = '#';
    } else out[i] = word.replace(FORMAT_PREFIX, '');
  }
  return out.join('');
}

/** The closing bracket of `ANCHORARRAY(…)` when a single cell stands inside, with or without a sheet. */
function spillAreaEnd(tokens: readonly Token[], i: number): number | undefined {
  const isOnSheet = tokens[i + 3]?.text === '!';
  const cell = isOnSheet ? i + 4 : i + 2;
  const isCell = tokens[i + 1]?.text === '(' && isCellText(tokens[cell]?.text ?? '');
  return isCell && tokens[cell + 1]?.text === ')' ? cell + 1 : undefined;
}

/**
 * The way back, for a formula that somebody typed.
 *
 * Our functions get their stored names, newer functions their prefix (`newer`: prefix by name in capital letters), names made by `LET` and
 * `LAMBDA` theirs. `A1#`, `@A1` and `[@Column]` become what the file wants in their place.
 *
 * @example toStored('LET(a,A1,JACKET.PLASTER(a,4))', ['JACKET.PLASTER'])
 * // '_xlfn.LET(_xlpm.a,A1,_xldudf_JACKET_PLASTER(_xlpm.a,4))'
 */
export function toStored(
  formula: string,
  ids: readonly string[],
  newer: ReadonlyMap<string, string> = NEWER_FUNCTIONS,
): string {
  const { byTyped } = idTable(ids);
  const tokens = tokenise(storeMarks(tokenise(formula)));
  const locals = localNames(tokens);
  const out = tokens.map((token, i) => {
    if (token.kind === 'bracket') return storedThisRow(token.text);
    if (token.kind !== 'word' || tokens[i + 1]?.text === '!') return token.text;
    if (locals.has(i)) return LOCAL_NAME + token.text;
    if (tokens[i + 1]?.text !== '(') return token.text;
    const id = byTyped.get(token.text.toLowerCase());
    if (id !== undefined) return storedName(id);
    const name = token.text.toUpperCase();
    const prefix = newer.get(name);
    return prefix === undefined ? token.text : prefix + name;
  });
  return out.join('');
}

/** `[@Column]` of a table, as typed, to `[[#This Row],[Column]]`, as stored. */
function storedThisRow(bracket: string): string {
  if (!bracket.startsWith('[@')) return bracket;
  const column = bracket.slice(2, -1).trim();
  if (column === '') return '[#This Row]';
  return column.startsWith('[') ? `[[#This Row],${column}]` : `[[#This Row],[${column}]]`;
}

/** Puts the marks `#` and `@` into words. */
function storeMarks(tokens: readonly Token[]): string {
  const out = tokens.map((token) => token.text);
  const calls = functionCalls(tokens);
  for (let i = 0; i < tokens.length; i++) {
    if (tokens[i]!.text === '#' && isCellText(tokens[i - 1]?.text ?? '')) {
      const first = tokens[i - 2]?.text === '!' ? i - 3 : i - 1;
      out[first] = `${SPILL_AREA}(${out[first]}`;
      out[i] = ')';
    } else if (tokens[i]!.text === '@') {
      const last = operandEnd(tokens, i + 1, calls);
      if (last === undefined) continue;
      out[i] = `${ONE_VALUE}(`;
      out[last] += ')';
    }
  }
  return out.join('');
}

/** Last token of the reference, name or call that starts at `i`. */
function operandEnd(
  tokens: readonly Token[],
  i: number,
  calls: ReadonlyMap<number, { readonly close: number }>,
): number | undefined {
  const at = tokens[i + 1]?.text === '!' ? i + 2 : i;
  if (tokens[at]?.kind !== 'word') return undefined;
  const call = calls.get(at);
  if (call) return call.close;
  if (tokens[at + 1]?.kind === 'bracket') return at + 1;
  return tokens[at + 1]?.text === ':' && tokens[at + 2]?.kind === 'word' ? at + 2 : at;
}
