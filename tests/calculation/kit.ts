/** What the tests of calculations share: settings, comparisons, bad numbers. */

import { expect } from 'vitest';
import { Fault, type FaultCode, isFault, type Result } from '../../src/calculation/result.ts';
import { type Given, resolveSettings, type Settings } from '../../src/calculation/settings.ts';

/** Settings with a few changes; a change that is refused fails the test. */
export const settings = (given: Given = {}): Settings => {
  const all = resolveSettings(given);
  if (isFault(all)) throw new Error(`${all.field} ${all.problem}`);
  return all;
};

/** The value of a result; a fault fails the test. */
export const known = <T>(result: Result<T>): T => {
  if (isFault(result)) throw new Error(`${result.code}: ${result.field} ${result.problem}`);
  return result;
};

/** Asserts a number within a relative tolerance, whose reason stands beside the call. */
export const expectNear = (result: Result<number>, expected: number, tolerance: number): void => {
  const value = known(result);
  expect(Math.abs(value - expected), `${value} should be near ${expected}`).toBeLessThanOrEqual(
    tolerance * Math.abs(expected),
  );
};

/** Asserts a fault of a code, and the argument it names. */
export const expectFault = (result: unknown, code: FaultCode, field?: string): void => {
  expect(result).toBeInstanceOf(Fault);
  const fault = result as Fault;
  expect(fault.code).toBe(code);
  if (field !== undefined) expect(fault.field).toBe(field);
};

/** Numbers that are no size, weight or count. */
export const NOT_POSITIVE = [0, -0, -1, Number.NaN, Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];

/** Numbers that are not 0 or more. */
export const NEGATIVE = NOT_POSITIVE.filter((x) => x !== 0);

/** Asserts that each argument in turn is refused under its own name where it is not above 0. */
export const expectPositiveArguments = (
  call: (...args: number[]) => unknown,
  good: readonly number[],
  fields: readonly string[],
): void => {
  for (const [i, field] of fields.entries())
    for (const bad of NOT_POSITIVE) expectFault(call(...good.with(i, bad)), 'value', field);
};

/** Rounding errors of a few operations, relative. */
export const ROUNDING = 1e-12;

/** The example values have ten digits and come from a calculation with a felt density rounded elsewhere, relative. */
export const EXAMPLE = 1e-6;

/** Seed of all random inputs, so that a failure can be had again. */
export const SEED = 20060401;
