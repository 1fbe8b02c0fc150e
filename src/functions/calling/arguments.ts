/**
 * The kinds of arguments that worksheet functions take, each defined with zod.
 *
 * The schema says what is allowed; the guard that checks a cell is made from it, once, at the first call: a plain comparison is many times
 * faster than a parse, and a test holds the two against each other.
 */
import * as z from 'zod';
import type { Quantity } from '../../calculation/result.ts';
import { type Argument, type Cell, isCellError, type Rows } from './cell.ts';
import { nearestName, plainName, quoted, shownPlain } from './names.ts';
import { isUnitSystem } from './read-settings.ts';
import { clipped } from './reasons.ts';
import { toSi, type UnitSystem, unitName } from './units.ts';

/** What an argument takes: one value or a range with one result a cell; a whole range; one single value. */
export type Takes = 'cells' | 'range' | 'one';

/** A reason in plain words: the argument's value cannot be used. */
export class Refusal {
  readonly reason: string;
  constructor(reason: string) {
    this.reason = clipped(reason);
  }
}

/** Everything that is known of one argument. `T` is what the calculation receives. */
export interface ArgumentKind<T> {
  readonly takes: Takes;
  /** What it is, as a phrase after "type": «the longest size». */
  readonly what: string;
  readonly schema: z.ZodType;
  readonly quantity?: Quantity;
  /** Words that are allowed, where it takes one of a few. */
  readonly words?: readonly string[];
  readonly optional: boolean;
  /** 0 is a value here, so a 0 does not make a row blank. */
  readonly zeroAllowed: boolean;
  readonly repeating?: boolean;
  /** Type in the metadata of the host. */
  readonly type: 'number' | 'string' | 'boolean' | 'any';
  /** One cell, or for `range` all rows, to the value that the calculation takes. Never called with blanks for `cells` and `one`. */
  readonly read: (given: Cell | Rows, name: string, system: UnitSystem) => T | Refusal;
}

/** The same argument, but it may be left out. */
export const optional = <T>(kind: ArgumentKind<T>): ArgumentKind<T | undefined> => ({ ...kind, optional: true });

/** The same argument, but it takes one single value instead of one a cell. */
export const single = <T>(kind: ArgumentKind<T>): ArgumentKind<T> => ({ ...kind, takes: 'one' });

type NumberGuard = (x: number) => boolean;

/** What a zod number schema notes of its checks, as far as numbers of this product have any. */
type NumberCheck =
  | { readonly check: 'greater_than' | 'less_than'; readonly value: number; readonly inclusive: boolean }
  | { readonly check: 'number_format'; readonly format: string };

const passes = (check: NumberCheck, x: number): boolean => {
  if (check.check === 'number_format') return Number.isInteger(x);
  if (check.inclusive && x === check.value) return true;
  return check.check === 'greater_than' ? x > check.value : x < check.value;
};

/** A comparison made from what a zod number schema allows. */
export const guardOf = (schema: z.ZodType): NumberGuard => {
  const { checks = [] } = schema.def as unknown as { checks?: readonly { _zod: { def: NumberCheck } }[] };
  const rules = checks.map((one) => one._zod.def);
  return (x) => rules.every((rule) => passes(rule, x));
};

const lazily = <T>(make: () => T): (() => T) => {
  let made: T | undefined;
  return () => {
    made ??= make();
    return made;
  };
};

/** «TRUE», «"abc"», «-3». */
export const shownCell = (cell: Cell): string => {
  if (cell === null || cell === '') return 'blank';
  if (typeof cell === 'string') return quoted(cell);
  if (isCellError(cell)) return cell.code;
  return shownPlain(cell);
};

const asText = (cell: Cell, name: string): Refusal | undefined =>
  typeof cell === 'string' && isUnitSystem(plainName(cell))
    ? new Refusal(
        `${name} is ${quoted(cell)}; put one more comma before it, so that it stands in the place of settings`,
      )
    : undefined;

const LENGTHS: ReadonlySet<Quantity | undefined> = new Set<Quantity | undefined>(['length', 'thickness']);

/** The refusal of a cell that holds no number. */
const noNumber = (cell: Cell, name: string, quantity: Quantity | undefined): Refusal => {
  if (isCellError(cell)) return new Refusal(`${name} is the error ${cell.code}; mend that cell first`);
  if (typeof cell === 'boolean') return new Refusal(`${name} is ${shownPlain(cell)}; type a number`);
  if (typeof cell === 'string') {
    const measure = LENGTHS.has(quantity) ? ', or use JACKET.MEASURE' : '';
    return asText(cell, name) ?? new Refusal(`${name} is text; type a number${measure}`);
  }
  return new Refusal(`${name} is ${shownCell(cell)}; type a finite number`);
};

interface NumberOptions {
  /** 0 is allowed. */
  readonly zero?: boolean;
  /** Any finite number is allowed, also below 0. */
  readonly signed?: boolean;
  /** The published units of the system are handed on as they are, without going through SI. */
  readonly asTyped?: boolean;
}

const numberSchema = ({ zero, signed }: NumberOptions): z.ZodType =>
  signed ? z.number() : zero ? z.number().nonnegative() : z.number().positive();

const numberCell = (schema: z.ZodType, quantity: Quantity, options: NumberOptions) => {
  const guard = lazily(() => guardOf(schema));
  const allowed = options.signed ? 'a number' : options.zero ? 'a number, 0 or more' : 'a number above 0';
  return (cell: Cell, name: string, system: UnitSystem): number | Refusal => {
    if (typeof cell !== 'number' || !(cell > -Infinity && cell < Infinity)) return noNumber(cell, name, quantity);
    if (!guard()(cell)) return new Refusal(`${name} is ${cell}; type ${allowed}`);
    return options.asTyped ? cell : toSi(cell, quantity, system);
  };
};

/** A number with a unit: one value or one a cell. */
export const quantity = (of: Quantity, what: string, options: NumberOptions = {}): ArgumentKind<number> => {
  const schema = numberSchema(options);
  const read = numberCell(schema, of, options);
  return {
    takes: 'cells',
    what,
    schema,
    quantity: of,
    optional: false,
    zeroAllowed: options.zero === true || options.signed === true,
    type: 'any',
    read: (cell, name, system) => read(cell as Cell, name, system),
  };
};

/** Cells of a range in reading order: left to right, then down. */
const inOrder = (rows: Rows): Cell[] => rows.flat();

const asRows = (given: Cell | Rows): Rows => (Array.isArray(given) ? (given as Rows) : [[given as Cell]]);

/** A whole range of numbers, in reading order. A blank cell is null: what that means is for the calculation to say. */
export const numbers = (of: Quantity, what: string, options: NumberOptions = {}): ArgumentKind<(number | null)[]> => {
  const cell = numberSchema(options);
  const read = numberCell(cell, of, options);
  return {
    takes: 'range',
    what,
    schema: z.array(z.array(cell)),
    quantity: of,
    optional: false,
    zeroAllowed: options.zero === true || options.signed === true,
    type: 'any',
    read: (given, name, system) => {
      const values: (number | null)[] = [];
      for (const [i, one] of inOrder(asRows(given)).entries()) {
        if (one === null || one === '') {
          values.push(null);
          continue;
        }
        const value = read(one, `${name}: cell ${i + 1}`, system);
        if (value instanceof Refusal) return value;
        values.push(value);
      }
      return values;
    },
  };
};

/** Rows of numbers of a fixed shape, such as three feet with x and y. */
export const grid = (rows: number, columns: number, of: Quantity, what: string): ArgumentKind<number[][]> => {
  const read = numberCell(z.number(), of, { signed: true });
  return {
    takes: 'range',
    what,
    schema: z.array(z.array(z.number()).length(columns)).length(rows),
    quantity: of,
    optional: false,
    zeroAllowed: true,
    type: 'any',
    read: (given, name, system) => {
      const cells = asRows(given);
      const width = cells[0]?.length ?? 0;
      if (cells.length === 1 && width === 1) {
        const only = cells[0]![0]!;
        const misplaced = asText(only, name);
        if (misplaced) return misplaced;
      }
      if (cells.length !== rows || width !== columns)
        return new Refusal(
          `${name} must be ${counted(rows, 'row')} of ${counted(columns, 'cell')}, not ${counted(cells.length, 'row')} of ${counted(width, 'cell')}`,
        );
      const out: number[][] = [];
      for (const row of cells) {
        const line: number[] = [];
        for (const cell of row) {
          if (cell === null || cell === '')
            return new Refusal(`${name} has a blank cell; type ${what} in ${unitName(of, system)}`);
          const value = read(cell, name, system);
          if (value instanceof Refusal) return value;
          line.push(value);
        }
        out.push(line);
      }
      return out;
    },
  };
};

/** A whole table, cells as they are. */
export const table = (what: string): ArgumentKind<Rows> => ({
  takes: 'range',
  what,
  schema: z.array(z.array(z.any())),
  optional: false,
  zeroAllowed: true,
  type: 'any',
  read: (given) => asRows(given),
});

/** Free text. */
export const text = (what: string): ArgumentKind<string> => ({
  takes: 'cells',
  what,
  schema: z.string(),
  optional: false,
  zeroAllowed: false,
  type: 'any',
  read: (cell, name) =>
    typeof cell === 'string' ? cell : new Refusal(`${name} is ${shownCell(cell as Cell)}; type ${what} as text`),
});

/** One of a few words. */
export const word = <const W extends string>(words: readonly W[], what: string): ArgumentKind<W> => ({
  takes: 'cells',
  what,
  schema: z.enum(words as readonly [W, ...W[]]),
  words,
  optional: false,
  zeroAllowed: false,
  type: 'any',
  read: (cell, name) => {
    if (typeof cell !== 'string') return new Refusal(`${name} is ${shownCell(cell as Cell)}; type ${listed(words)}`);
    const typed = plainName(cell) as W;
    if (words.includes(typed)) return typed;
    return (
      asText(cell, name) ??
      new Refusal(`${name} is ${quoted(cell)}; type ${listed(words)}; did you mean ${nearestName(cell, words)}?`)
    );
  },
});

/** TRUE or FALSE. Words that mean them may be given too. */
export const flag = (what: string, yes?: string, no?: string): ArgumentKind<boolean> => ({
  takes: 'cells',
  what,
  schema: z.boolean(),
  ...(yes !== undefined && no !== undefined ? { words: [yes, no] } : {}),
  optional: false,
  zeroAllowed: false,
  type: 'any',
  read: (cell, name) => {
    if (typeof cell === 'boolean') return cell;
    const typed = typeof cell === 'string' ? plainName(cell) : undefined;
    if (typed !== undefined && yes !== undefined && no !== undefined) {
      if (typed === yes) return true;
      if (typed === no) return false;
      return new Refusal(`${name} is ${quoted(cell as string)}; type ${yes} or ${no}, or TRUE or FALSE`);
    }
    return new Refusal(`${name} is ${shownCell(cell as Cell)}; type TRUE or FALSE`);
  },
});

/** A number or text: the calculation decides. */
export const numberOrText = (of: Quantity, what: string): ArgumentKind<number | string> => {
  const read = numberCell(z.number().positive(), of, {});
  return {
    takes: 'cells',
    what,
    schema: z.union([z.number().positive(), z.string()]),
    quantity: of,
    optional: false,
    zeroAllowed: false,
    type: 'any',
    read: (cell, name, system) =>
      typeof cell === 'string' ? (asText(cell, name) ?? cell) : read(cell as Cell, name, system),
  };
};

/** Anything at all, any number of times: only the last argument of a function may be this. */
export const anything = (what: string): ArgumentKind<readonly Argument[]> => ({
  takes: 'range',
  what,
  schema: z.any(),
  optional: true,
  zeroAllowed: true,
  repeating: true,
  type: 'any',
  read: (given) => [given],
});

/** «3 rows», «1 row». */
export const counted = (n: number, thing: string): string => `${n} ${thing}${n === 1 ? '' : 's'}`;

/** «good, fair or poor». */
export const listed = (words: readonly string[]): string => words.join(', ').replace(/, ([^,]*)$/, ' or $1');
