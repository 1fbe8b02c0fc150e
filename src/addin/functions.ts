/** Hands the worksheet functions to the spreadsheet host. Nothing here waits for the host to be ready. */
import { type Argument, type CallNotes, isCellError } from '../functions/calling/cell.ts';
import type { WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';
import { type MakeError, toArgument, toHostError, toHostRows } from './host-values.ts';

/** What the host adds after the arguments of every call. */
interface Invocation {
  readonly parameterAddresses?: readonly unknown[];
}

/**
 * The host's error class. It exists only once the host's own script has loaded all its parts, so it is looked up when a call needs it.
 */
const makeError: MakeError = (code, message) =>
  typeof CustomFunctions !== 'undefined' && CustomFunctions.Error
    ? new CustomFunctions.Error(code, message)
    : new Error(message ?? code);

/** The arguments of a call as one list: those of a repeating parameter come as a list of their own. */
const unpacked = (f: WorksheetFunction, given: readonly unknown[]): Argument[] => {
  const repeats = f.arguments.at(-1)?.repeating === true;
  const fixed = repeats ? f.arguments.length - 1 : given.length;
  const rest = given.slice(fixed).flatMap((list) => (Array.isArray(list) ? list : list == null ? [] : [list]));
  return [...given.slice(0, fixed), ...rest].map(toArgument);
};

/**
 * Which arguments are references, from the addresses that the host tells. What it answers for typed values is nowhere written down, so a call
 * without any address says nothing.
 */
const notesOf = (invocation: Invocation | undefined): CallNotes | undefined => {
  if (!Array.isArray(invocation?.parameterAddresses)) return undefined;
  const fromCells = invocation.parameterAddresses
    .flat()
    .map((address) => typeof address === 'string' && address !== '');
  return fromCells.includes(true) ? { fromCells } : undefined;
};

/** Arguments after the last one that was given are left out, not blank: the host fills them up with null. */
const trimmed = (args: Argument[]): Argument[] => {
  let length = args.length;
  while (length > 0 && args[length - 1] === null) length -= 1;
  return args.slice(0, length);
};

/**
 * A worksheet function as the host calls it. The host always adds one object after the arguments, so the last thing handed over is never an argument.
 *
 * @returns rows; a call that comes to one single error throws that error, which is how the host shows its reason
 */
export const callable =
  (f: WorksheetFunction, make: MakeError = makeError) =>
  (...handed: unknown[]): unknown[][] => {
    const args = trimmed(unpacked(f, handed.slice(0, -1)));
    const answer = f.call(args, notesOf(handed.at(-1) as Invocation | undefined));
    if (isCellError(answer)) throw toHostError(answer, make);
    return toHostRows(answer, make);
  };

/** The part of the host that takes functions. */
export interface Associates {
  associate(id: string, run: (...handed: unknown[]) => unknown): void;
}

/** Hands over every function of the registry. */
export const associateAll = (host: Associates): void => {
  for (const f of functions) host.associate(f.id, callable(f));
};
