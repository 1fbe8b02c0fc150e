/** Numbers as help pages print them. */
import type { Quantity } from '../../calculation/result.ts';
import type { Answer, OutCell } from '../../functions/calling/cell.ts';
import { isCellError } from '../../functions/calling/cell.ts';
import { type UnitSystem, unitName } from '../../functions/calling/units.ts';

/** Significant digits of a printed result. Cells keep all of theirs. */
export const DIGITS = 6;

export const plain = (x: number, digits: number = DIGITS): string => String(Number(x.toPrecision(digits)));

/** Quantities that are said without a unit. */
const BARE: ReadonlySet<Quantity> = new Set<Quantity>(['fraction', 'ratio', 'count', 'money', 'percent']);

/** Unit after a number, or nothing. */
export const unitAfter = (quantity: Quantity | undefined, system: UnitSystem): string =>
  quantity && !BARE.has(quantity) ? ` ${unitName(quantity, system)}` : '';

/** «cm (us: in)», or nothing where there is no unit. */
export const unitsOf = (quantity: Quantity | undefined): string => {
  if (!quantity || BARE.has(quantity)) return '';
  const [metric, us] = [unitName(quantity, 'metric'), unitName(quantity, 'us')];
  return metric === us ? metric : `${metric} (us: ${us})`;
};

export const cellText = (cell: OutCell): string => {
  if (isCellError(cell)) return cell.code;
  if (typeof cell === 'number') return plain(cell);
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return cell;
};

export const asRows = (answer: Answer): OutCell[][] => (Array.isArray(answer) ? answer : [[answer]]);
