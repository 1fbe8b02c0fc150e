/** Cell values between the file and the product. */

import { serialDate } from './dates.ts';
import type { RawCell } from './sheet-rows.ts';
import { decodeEscapes, escapeText } from './text-escapes.ts';
import type { BookValue } from './types.ts';

/** What values of a workbook refer to. */
export interface ValueContext {
  /** The texts that cells share, read when the first is asked for. */
  readonly strings: () => readonly string[];
  readonly date1904: boolean;
}

/**
 * Errors that the file format knows (ECMA-376 part 1, 18.18.11 with `#GETTING_DATA`). The newer ones, such as `#SPILL!`, are stored as `#VALUE!`
 * with a note beside it that we don't write.
 */
const STORED_ERRORS: ReadonlySet<string> = new Set([
  '#NULL!',
  '#DIV/0!',
  '#VALUE!',
  '#REF!',
  '#NAME?',
  '#NUM!',
  '#N/A',
  '#GETTING_DATA',
]);

export function readValue(cell: RawCell, context: ValueContext): BookValue {
  const { value, type } = cell;
  if (type === 'inlineStr') return cell.inline === null ? null : decodeEscapes(cell.inline);
  if (type === 'str') return value === null ? null : decodeEscapes(value);
  if (value === null || value.trim() === '') return null;
  switch (type) {
    case 's':
      return context.strings()[Number(value)] ?? null;
    case 'b':
      return value.trim() === '1' || value.trim() === 'true';
    case 'e':
      return { error: value.trim() };
    case 'd':
      return serialDate(value.trim(), context.date1904) ?? value;
    default: {
      const number = Number(value);
      return Number.isNaN(number) ? value : number;
    }
  }
}

/** The value as the file can hold it. */
export function storableValue(value: BookValue): BookValue {
  if (typeof value === 'number') {
    if (!(Math.abs(value) < Infinity)) return { error: '#NUM!' };
    return value === 0 ? 0 : value;
  }
  if (typeof value === 'object' && value !== null && !STORED_ERRORS.has(value.error)) return { error: '#VALUE!' };
  return value;
}

export const sameValue = (a: BookValue, b: BookValue): boolean =>
  typeof a === 'object' && a !== null && typeof b === 'object' && b !== null ? a.error === b.error : a === b;

/**
 * The elements that hold a value, and the type to write into the cell's tag.
 *
 * `isResult`: the text came out of a formula; typed text is stored in place, so that the list of shared texts stays as it is.
 */
export function writeValue(value: BookValue, isResult: boolean, prefix: string): { type: string | null; xml: string } {
  const v = (text: string | number): string => `<${prefix}v>${text}</${prefix}v>`;
  if (value === null) return { type: null, xml: '' };
  if (typeof value === 'number') return { type: null, xml: v(value) };
  if (typeof value === 'boolean') return { type: 'b', xml: v(value ? 1 : 0) };
  if (typeof value === 'object') return { type: 'e', xml: v(escapeText(value.error)) };
  if (isResult) return { type: 'str', xml: v(escapeText(value)) };
  const keep = /^\s|\s$|[\n\t]/.test(value) ? ' xml:space="preserve"' : '';
  return { type: 'inlineStr', xml: `<${prefix}is><${prefix}t${keep}>${escapeText(value)}</${prefix}t></${prefix}is>` };
}
