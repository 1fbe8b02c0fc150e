/** Relative slack, so that an exact multiple stays one after its units were converted: 2.0320000000000005/0.2032 is 10. */
const SLACK = 1e-9;

/**
 * The least whole number that is enough: ⌈x⌉, with one part in 10⁹ taken off first against rounding errors.
 *
 * @param x what is needed, in units of one piece [1]
 * @returns whole number [1]; not finite where x is not
 * Limits: x of 0 or more. Source: definition. Example: 9.2 needs 10.
 */
export const wholeUp = (x: number): number => Math.ceil(x * (1 - SLACK));
