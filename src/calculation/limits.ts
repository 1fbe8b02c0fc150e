/** Where a calculation is valid: kept as data, so that it can be tested, shown and checked for a given input. */

/**
 * One limit of validity.
 *
 * `text` says in plain words where the calculation may be trusted; `holds` answers it for one input, which has the arguments of the calculation
 * itself. Outside of a limit the calculation still answers: the result is doubtful, not wrong input.
 */
export interface Limit<A extends readonly unknown[]> {
  readonly text: string;
  readonly holds: (...args: A) => boolean;
}
