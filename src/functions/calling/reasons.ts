/** Turns faults into the error values of a host, with a reason of at most 250 characters in the units in force. */
import type { Fault, FaultCode } from '../../calculation/result.ts';
import { CellError, type ErrorCode } from './cell.ts';
import { spoken, type UnitSystem } from './units.ts';

/** Longest reason that hosts carry. */
export const LONGEST_REASON = 250;

const CODES: Readonly<Record<FaultCode, ErrorCode>> = { value: '#VALUE!', none: '#N/A', overflow: '#NUM!' };

export const clipped = (text: string): string =>
  text.length > LONGEST_REASON ? `${text.slice(0, LONGEST_REASON - 1)}…` : text;

/** The sentence of a fault: the field, then what is wrong and what to do instead. */
export const reasonOf = (fault: Fault, system: UnitSystem): string => {
  const problem = fault.problem.replace(/\{(\w+)\}/g, (whole, name: string) => {
    const given = fault.amounts[name];
    return given ? spoken(given.value, given.quantity, system) : whole;
  });
  return clipped(fault.field ? `${fault.field} ${problem}` : problem);
};

export const errorOf = (fault: Fault, system: UnitSystem): CellError =>
  new CellError(CODES[fault.code], reasonOf(fault, system));

export const valueError = (reason: string): CellError => new CellError('#VALUE!', clipped(reason));
