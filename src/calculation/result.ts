/**
 * What a calculation answers: a value, or a fault that says why there is none.
 *
 * Nothing in `calculation` throws for bad input. A fault is data until a face of the product turns it into
 * the error value of its host.
 */
export type Result<T> = T | Fault;

/** `value`: the input is wrong. `none`: the input is right, but no answer exists. `overflow`: not a finite number. */
export type FaultCode = 'value' | 'none' | 'overflow';

/** Names of the physical quantities. What units they are shown in is decided outside of `calculation`. */
export type Quantity =
  | 'length' // m, shown in cm or in
  | 'thickness' // m, shown in mm or in
  | 'area' // m², of specimens and shells
  | 'clayArea' // m², of clay pockets
  | 'mass' // kg
  | 'bodyVolume' // m³, of specimens
  | 'liquidVolume' // m³, of slurry, buckets and sealer
  | 'clothLength' // m, on the roll
  | 'clothWeight' // kg/m²
  | 'bulkDensity' // kg/m³, of padding and glass
  | 'density' // kg/m³, of specimens and clay, shown in kg/L
  | 'bearing' // Pa, pressure under feet and on padding
  | 'strength' // Pa
  | 'shelfLoad' // Pa
  | 'moment' // N·m
  | 'temperature' // °C
  | 'angle' // degrees
  | 'hours' // h
  | 'minutes' // min
  | 'perMinute' // 1/min
  | 'layingRate' // m²/min of one layer
  | 'coverage' // m²/m³, of sealer
  | 'airSpeed' // m/s
  | 'dust' // mg/m³
  | 'fraction' // 1
  | 'ratio' // 1
  | 'percent' // parts per hundred
  | 'count' // whole number
  | 'money'; // the user's own

/** A number inside a fault's text, kept in SI until the text is written out in somebody's units. */
export interface Amount {
  readonly value: number;
  readonly quantity: Quantity;
}

/**
 * Why there is no answer.
 *
 * `field` is the argument or setting at fault. `problem` says what is wrong and what to do instead, in plain words; `{name}` in it
 * stands for the amount of that name.
 */
export class Fault {
  readonly code: FaultCode;
  readonly field: string;
  readonly problem: string;
  readonly amounts: Readonly<Record<string, Amount>>;

  constructor(code: FaultCode, field: string, problem: string, amounts: Readonly<Record<string, Amount>> = {}) {
    this.code = code;
    this.field = field;
    this.problem = problem;
    this.amounts = amounts;
  }
}

/** The input is wrong: `field` with what was expected. */
export const wrong = (field: string, problem: string, amounts?: Readonly<Record<string, Amount>>): Fault =>
  new Fault('value', field, problem, amounts);

/** The input is right, but there is no answer. */
export const noAnswer = (problem: string, amounts?: Readonly<Record<string, Amount>>): Fault =>
  new Fault('none', '', problem, amounts);

/** A number in a fault's text. */
export const amount = (value: number, quantity: Quantity): Amount => ({ value, quantity });

export const isFault = (x: unknown): x is Fault => x instanceof Fault;

/** True for a finite number above 0. Written so that NaN fails. */
export const isPositive = (x: number): boolean => x > 0 && x < Infinity;

/** True for a finite number of 0 or more. Written so that NaN fails. */
export const isAtLeastZero = (x: number): boolean => x >= 0 && x < Infinity;

/** The fault of a size, weight or count that is not finite and above 0. */
export const mustBePositive = (field: string): Fault => wrong(field, 'must be a number above 0');

/** The fault of a value that is not finite and at least 0. */
export const mustNotBeNegative = (field: string): Fault => wrong(field, 'must be 0 or more');

/** A result that must be a finite number: overflow becomes a fault. */
export const finite = (x: number): Result<number> =>
  x > -Infinity && x < Infinity ? x : new Fault('overflow', '', 'the result is too large to be a number');
