/** Numbers as the pane says them: never without their unit. */
import type { Quantity } from '../calculation/result.ts';
import { type Cell, isCellError } from '../functions/calling/cell.ts';
import { fromSi, type UnitSystem, unitName } from '../functions/calling/units.ts';

/** Significant digits of an estimate in a sentence. Cells keep all digits. */
const ESTIMATE_DIGITS = 3;
/** Significant digits of what somebody has typed, so that they know it again. */
const TYPED_DIGITS = 6;

const plain = (x: number, digits: number): string => {
  const size = Math.abs(x);
  if (size !== 0 && (size >= 1e9 || size < 1e-4)) return x.toPrecision(digits).replace(/\.?0+e/, 'e');
  return String(size >= 10 ** digits ? Math.round(x) : Number(x.toPrecision(digits)));
};

/** What follows a number of a quantity. A count needs no unit: the words beside it say what is counted. */
const unitAfter = (quantity: Quantity, system: UnitSystem): string => {
  if (quantity === 'count') return '';
  if (quantity === 'ratio') return ' (ratio)';
  if (quantity === 'money') return ' in your money';
  return ` ${unitName(quantity, system)}`;
};

const withUnit = (shown: number, quantity: Quantity, system: UnitSystem, digits: number): string =>
  quantity === 'fraction' ? `${plain(shown * 100, digits)} %` : plain(shown, digits) + unitAfter(quantity, system);

/** A number in the unit of the sheet, as it was typed. */
export const typed = (value: number, quantity: Quantity | undefined, system: UnitSystem): string =>
  quantity ? withUnit(value, quantity, system, TYPED_DIGITS) : plain(value, TYPED_DIGITS);

/** A result in the unit of the sheet, rounded as an estimate is. Counts are whole and stay so. */
export const estimate = (value: number, quantity: Quantity, system: UnitSystem): string =>
  withUnit(value, quantity, system, quantity === 'count' ? TYPED_DIGITS : ESTIMATE_DIGITS);

/** A setting, which is kept in SI. */
export const setting = (value: number | string | null, quantity: Quantity | undefined, system: UnitSystem): string => {
  if (value === null) return 'blank';
  if (typeof value === 'string') return value;
  return quantity ? typed(fromSi(value, quantity, system), quantity, system) : plain(value, TYPED_DIGITS);
};

/** Whether an estimate was rounded on its way into words. */
export const isRounded = (value: number, quantity: Quantity): boolean =>
  Number(plain(value, quantity === 'count' ? TYPED_DIGITS : ESTIMATE_DIGITS)) !== value;

/** One cell in words. */
export const cellWords = (cell: Cell, quantity: Quantity | undefined, system: UnitSystem): string => {
  if (cell === null || cell === '') return 'blank';
  if (isCellError(cell)) return cell.code;
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return typeof cell === 'number' ? typed(cell, quantity, system) : cell;
};
