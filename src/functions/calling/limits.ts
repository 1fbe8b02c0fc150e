/** Limits of validity that a calculation keeps beside itself, as a worksheet function tells and checks them. */
import type { Limit as CalculationLimit } from '../../calculation/limits.ts';
import type { Settings } from '../../calculation/settings.ts';
import type { Limit } from '../define.ts';

/**
 * The limits of a calculation for a definition.
 *
 * @param limits as the calculation has them
 * @param input what the calculation takes, from the values of a call
 */
export const limitsFrom = <V, A extends readonly unknown[]>(
  limits: readonly CalculationLimit<A>[],
  input: (values: V, settings: Settings) => Readonly<A>,
): Limit<V>[] =>
  limits.map(({ text, holds }) => ({ text, holds: (values, settings) => holds(...(input(values, settings) as A)) }));
