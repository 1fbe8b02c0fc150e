/** Addresses such as `B7` and areas such as `B7:D9`. */

import { COLUMNS, ROWS } from './limits.ts';

/** Rows and columns, 1-based, both ends included. */
export interface Area {
  readonly top: number;
  readonly left: number;
  readonly bottom: number;
  readonly right: number;
}

/** Letters of a column: 1 is `A`, 27 is `AA`. */
export function columnName(column: number): string {
  let name = '';
  for (let rest = column; rest > 0; rest = Math.floor((rest - 1) / 26))
    name = String.fromCharCode(65 + ((rest - 1) % 26)) + name;
  return name;
}

export const addressOf = (row: number, column: number): string => columnName(column) + row;

/** Row and column of an address in capital letters and without `$`; undefined for anything else. */
export function parseAddress(address: string): { row: number; column: number } | undefined {
  let column = 0;
  let i = 0;
  for (; i < address.length; i++) {
    const code = address.charCodeAt(i);
    if (code < 65 || code > 90) break;
    column = column * 26 + code - 64;
  }
  let row = 0;
  const digits = i;
  for (; i < address.length; i++) {
    const code = address.charCodeAt(i);
    if (code < 48 || code > 57) return undefined;
    row = row * 10 + code - 48;
  }
  const isCell = column >= 1 && column <= COLUMNS && row >= 1 && row <= ROWS && address.charCodeAt(digits) !== 48;
  return isCell ? { row, column } : undefined;
}

export function parseArea(ref: string): Area | undefined {
  const colon = ref.indexOf(':');
  const from = parseAddress(colon < 0 ? ref : ref.slice(0, colon));
  const to = colon < 0 ? from : parseAddress(ref.slice(colon + 1));
  if (!from || !to || from.row > to.row || from.column > to.column) return undefined;
  return { top: from.row, left: from.column, bottom: to.row, right: to.column };
}

export const areaText = ({ top, left, bottom, right }: Area): string =>
  top === bottom && left === right ? addressOf(top, left) : `${addressOf(top, left)}:${addressOf(bottom, right)}`;

export const isInside = (area: Area, row: number, column: number): boolean =>
  row >= area.top && row <= area.bottom && column >= area.left && column <= area.right;
