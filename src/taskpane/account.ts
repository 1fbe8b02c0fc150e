/** What "this cell" tells of one call: made from the registry and the values of the sheet, without any page. */

import { isFault } from '../calculation/result.ts';
import { SETTINGS, type SettingDefinition } from '../calculation/settings.ts';
import { type Answer, type Argument, type CallNotes, isCellError, isRows } from '../functions/calling/cell.ts';
import { METRIC, readSettings } from '../functions/calling/read-settings.ts';
import type { UnitSystem } from '../functions/calling/units.ts';
import type { Explanation, NamedArgument, WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';
import type { CallPart, Part } from './formula.ts';
import { cellWords, estimate, isRounded, setting } from './numbers.ts';
import { type ActiveCell, type SheetHost, SheetProblem } from './sheet-host.ts';

/** One line of what went in. */
export interface InputLine {
  readonly name: string;
  /** The value in words with its unit, or why it is not shown. */
  readonly value: string;
  /** False where `value` only says why there is none. */
  readonly known: boolean;
  /** How it stands in the formula, where that says more than the value. */
  readonly from: string;
}

/** One setting that the calculation read. */
export interface SettingLine {
  readonly name: string;
  readonly value: string;
  /** Set by hand, or the default. */
  readonly own: boolean;
  /** How the default is known. Empty for what was set by hand. */
  readonly basis: string;
}

/** What a call gave, for those who look at its numbers. */
export interface Answered {
  /** In the units of the sheet. */
  readonly answer: Answer;
  readonly system: UnitSystem;
  /** Values and settings in SI; undefined where the call could not be followed. */
  readonly told: Explanation | undefined;
}

/** What can be told of one call. */
export interface Account {
  readonly call: CallPart;
  readonly f: WorksheetFunction | undefined;
  /** The result in words; undefined where the call fails or could not be followed. */
  readonly result?: string;
  /** Why the call fails. */
  readonly reason?: string;
  /** Why it could not be followed, with what to do instead. */
  readonly notFollowed?: string;
  /** A formula that tells the reason in the sheet itself. */
  readonly checkFormula: string;
  readonly inputs: readonly InputLine[];
  readonly settings: readonly SettingLine[];
  readonly doubts: readonly string[];
  /** Left out where the sheet does not show an answer either. */
  readonly answered?: Answered;
}

interface Followed {
  readonly argument: Argument;
  readonly fromCells: boolean;
}

/** Says that a piece of a formula cannot be worked out here. */
class NotFollowed extends Error {}

/** The value of a piece of a formula. */
const follow = async (piece: Part, host: SheetHost, sheet: string): Promise<Followed> => {
  switch (piece.kind) {
    case 'nothing':
      return { argument: null, fromCells: false };
    case 'value':
      return { argument: piece.value, fromCells: false };
    case 'rows':
      return { argument: piece.rows, fromCells: false };
    case 'reference': {
      const rows = await host.read(piece.text, sheet);
      return { argument: rows.length === 1 && rows[0]!.length === 1 ? rows[0]![0]! : rows, fromCells: true };
    }
    case 'call': {
      const f = functions.find(({ id }) => id === piece.id);
      if (!f) throw new NotFollowed();
      const inner: Followed[] = [];
      for (const one of piece.arguments) inner.push(await follow(one, host, sheet));
      const answer = f.call(
        inner.map(({ argument }) => argument),
        { fromCells: inner.map(({ fromCells }) => fromCells) },
      );
      return { argument: answer, fromCells: false };
    }
    default:
      throw new NotFollowed();
  }
};

const sizeWords = (rows: readonly (readonly unknown[])[]): string =>
  `${rows.length} ${rows.length === 1 ? 'row' : 'rows'} of ${rows[0]!.length} ${rows[0]!.length === 1 ? 'cell' : 'cells'}`;

const inputWords = (argument: Argument, kind: NamedArgument | undefined, system: UnitSystem): string => {
  if (isRows(argument)) return sizeWords(argument);
  if (argument === null && kind?.optional) return 'left out';
  return cellWords(argument as never, kind?.quantity, system);
};

/** The argument's definition at a place of the call: the last one may repeat. */
const kindAt = (f: WorksheetFunction, i: number): NamedArgument | undefined =>
  f.arguments[i] ?? (f.arguments.at(-1)?.repeating ? f.arguments.at(-1) : undefined);

/** For a call over a column: the arguments of the row in which the active cell lies. */
const atCell = (f: WorksheetFunction, args: readonly Argument[], { spillRow, spillColumn }: ActiveCell): Argument[] =>
  args.map((argument, i) =>
    isRows(argument) && kindAt(f, i)?.takes === 'cells' ? (argument[spillRow]?.[spillColumn] ?? argument) : argument,
  );

const basisWords = (d: SettingDefinition): string => {
  const follows = d.kind === 'number' && d.follows ? `follows ${d.follows}; ` : '';
  return `${d.basis}: ${follows}${d.source}`;
};

const resultWords = (f: WorksheetFunction, answer: Answer, system: UnitSystem): string => {
  if (isRows(answer)) return `a table, ${sizeWords(answer)}`;
  if (answer === '') return 'blank, since its row is blank';
  if (typeof answer === 'number' && f.result.kind === 'number') {
    const words = estimate(answer, f.result.quantity, system);
    return isRounded(answer, f.result.quantity) ? `about ${words}` : words;
  }
  return cellWords(answer as never, undefined, system);
};

/** The unit system of a call, as far as its settings say. */
const systemOf = (f: WorksheetFunction, args: readonly Argument[]): UnitSystem => {
  if (!f.takesSettings) return METRIC.system;
  const read = readSettings(args[f.arguments.length - 1]);
  return isFault(read) ? METRIC.system : read.system;
};

const settingLines = (told: Explanation): SettingLine[] =>
  told.used.map((key): SettingLine => {
    const d: SettingDefinition = SETTINGS[key];
    const own = told.settings.given[key] !== undefined;
    return {
      name: d.name,
      value: setting(told.settings[key], d.kind === 'number' ? d.quantity : undefined, told.system),
      own,
      basis: own ? '' : basisWords(d),
    };
  });

const argumentsText = (call: CallPart): string => call.arguments.map(({ text }) => text).join(',');

/** What the sheet shows for a call that cannot be followed but is its whole formula, if its unit is known at least. */
const shownBySheet = (
  f: WorksheetFunction,
  followed: readonly (Followed | string)[],
  { value }: ActiveCell,
): Answered | undefined => {
  const settings = f.takesSettings ? followed[f.arguments.length - 1] : undefined;
  if (typeof settings === 'string' || value === null || isCellError(value)) return undefined;
  const read = f.takesSettings ? readSettings(settings?.argument) : METRIC;
  return isFault(read) ? undefined : { answer: value, system: read.system, told: undefined };
};

/**
 * Everything that can be told of one call in the active cell.
 *
 * @param whole whether the call is all of the cell's formula
 */
export const accountOf = async (
  call: CallPart,
  host: SheetHost,
  cell: ActiveCell,
  whole: boolean,
): Promise<Account> => {
  const f = functions.find(({ id }) => id === call.id);
  const checkFormula = `=JACKET.CHECK("${call.id}"${call.arguments.length ? `,${argumentsText(call)}` : ''})`;
  const nothing = { call, f, checkFormula, inputs: [], settings: [], doubts: [] };
  if (!f) return { ...nothing, reason: `there is no function ${call.id}; look for its name below Find a function` };
  const followed: (Followed | string)[] = [];
  for (const piece of call.arguments) {
    try {
      followed.push(await follow(piece, host, cell.sheet));
    } catch (error) {
      if (error instanceof SheetProblem) followed.push(error.message);
      else if (error instanceof NotFollowed) followed.push('worked out by the sheet, not shown here');
      else throw error;
    }
  }
  const known = followed.filter((one): one is Followed => typeof one !== 'string');
  const complete = known.length === followed.length;
  const args = complete
    ? atCell(
        f,
        known.map(({ argument }) => argument),
        cell,
      )
    : [];
  const system = complete ? systemOf(f, args) : METRIC.system;
  const inputs = call.arguments.map((piece, i): InputLine => {
    const one = followed[i]!;
    const kind = kindAt(f, i);
    const value =
      typeof one === 'string'
        ? one
        : inputWords(complete ? args[i]! : one.argument, kind, complete ? system : systemOf(f, []));
    return {
      name: kind?.name ?? `argument ${i + 1}`,
      value,
      known: typeof one !== 'string',
      from: piece.kind === 'value' || piece.kind === 'nothing' ? '' : piece.text,
    };
  });
  if (!complete) {
    const answered = whole ? shownBySheet(f, followed, cell) : undefined;
    return {
      ...nothing,
      ...(answered && { answered, result: resultWords(f, answered.answer, answered.system) }),
      inputs,
      notFollowed: 'Part of this call is worked out by the sheet itself, so its defaults cannot be shown here.',
    };
  }
  const notes: CallNotes = { fromCells: known.map(({ fromCells }) => fromCells) };
  const answer = f.call(args, notes);
  const told = f.explain(args, notes);
  const answered: Answered = { answer, system, told };
  if (isCellError(answer)) {
    const reason = f.check(args, notes);
    return {
      ...nothing,
      inputs,
      answered,
      reason: typeof reason === 'string' && reason !== '' ? reason : answer.reason,
    };
  }
  return {
    ...nothing,
    inputs,
    answered,
    settings: told ? settingLines(told) : [],
    doubts: told?.doubts ?? [],
    result: resultWords(f, answer, system),
  };
};
