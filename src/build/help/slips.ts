/** What goes wrong in calls, with the reasons that the functions themselves give: each call here is made when the pages are. */
import { type Argument, CellError, isCellError, isRows } from '../../functions/calling/cell.ts';
import { formulaText } from '../../functions/calling/formula-text.ts';
import type { NamedArgument, WorksheetFunction } from '../../functions/define.ts';
import { MORE_SLIPS } from './more-slips.ts';

export interface Slip {
  /** What happened, in a few words. */
  readonly when: string;
  readonly args: readonly Argument[];
}

export interface Answered extends Slip {
  readonly formula: string;
  readonly error: CellError;
}

type Make = (argument: NamedArgument) => { readonly when: string; readonly given: Argument } | undefined;

const onCells = (argument: NamedArgument): boolean => argument.takes !== 'range' && !argument.repeating;
const isAmount = (argument: NamedArgument): boolean =>
  onCells(argument) && argument.quantity !== undefined && !argument.words;

/** Slips that follow from the kind of an argument. The first argument of a function that fits stands for the others. */
const BY_ARGUMENT: readonly Make[] = [
  (a) => (a.optional || a.repeating ? undefined : { when: `${a.name} is left blank`, given: null }),
  (a) => (isAmount(a) ? { when: `${a.name} holds text`, given: 'about 60' } : undefined),
  (a) => (isAmount(a) ? { when: `${a.name} is below 0`, given: -1 } : undefined),
  (a) => (isAmount(a) && !a.zeroAllowed ? { when: `${a.name} is 0`, given: 0 } : undefined),
  (a) => (isAmount(a) ? { when: `${a.name} is TRUE or FALSE`, given: true } : undefined),
  (a) => (onCells(a) && a.words ? { when: `${a.name} is another word`, given: 'good enough' } : undefined),
  (a) =>
    onCells(a) && !a.quantity && !a.words && !a.optional ? { when: `${a.name} is a number`, given: 5 } : undefined,
  (a) => (a.takes === 'one' ? { when: `${a.name} is a range`, given: [[1], [2]] } : undefined),
  (a) =>
    a.takes === 'range' && a.quantity
      ? { when: `${a.name} has a cell that holds text`, given: [['about 60'], [2]] }
      : undefined,
  (a) =>
    onCells(a) ? { when: `${a.name} is a cell that shows an error`, given: new CellError('#DIV/0!', '') } : undefined,
];

const replaced = (args: readonly Argument[], at: number, given: Argument): Argument[] => {
  const out = [...args];
  while (out.length < at) out.push(null);
  out[at] = given;
  return out;
};

const unlike = (f: WorksheetFunction, base: readonly Argument[]): Slip | undefined => {
  const [first, second] = f.arguments.flatMap((a, i) => (a.takes === 'cells' && !a.optional ? [i] : []));
  if (first === undefined || second === undefined) return undefined;
  const column = (at: number, rows: number): Argument => Array.from({ length: rows }, () => [base[at] as number]);
  const args = replaced(replaced(base, first, column(first, 3)), second, column(second, 2));
  return { when: `${f.arguments[first]!.name} and ${f.arguments[second]!.name} are ranges of unlike size`, args };
};

const ofSettings = (f: WorksheetFunction, base: readonly Argument[]): Slip[] => {
  const place = f.arguments.length - 1;
  if (!f.takesSettings) return [];
  const early = f.arguments.findIndex((a, i) => i < place && a.optional && !a.words);
  return [
    { when: 'a setting has a name that is not known', args: replaced(base, place, [['wastage', 0.15]]) },
    ...(early < 0 ? [] : [{ when: '"us" stands one place too early', args: [...base.slice(0, early), 'us'] }]),
  ];
};

/** All slips of a function that give an error value, each reason once. */
export const slips = (f: WorksheetFunction): Answered[] => {
  const base = f.examples[0].args;
  const byArgument = BY_ARGUMENT.flatMap((make): Slip[] => {
    for (const [i, argument] of f.arguments.entries()) {
      if (f.takesSettings && i === f.arguments.length - 1) continue;
      const made = make(argument);
      if (!made) continue;
      const args = replaced(base, i, made.given);
      if (isCellError(f.call(args))) return [{ when: made.when, args }];
    }
    return [];
  });
  const ranges = unlike(f, base);
  const all = [...(MORE_SLIPS[f.id] ?? []), ...byArgument, ...(ranges ? [ranges] : []), ...ofSettings(f, base)];
  const seen = new Set<string>();
  return all.flatMap((slip): Answered[] => {
    const answer = f.call(slip.args);
    const error = isRows(answer) ? (answer.flat().find(isCellError) as CellError | undefined) : answer;
    if (!isCellError(error) || seen.has(error.reason)) return [];
    seen.add(error.reason);
    return [{ ...slip, error, formula: formulaText(f.id, slip.args) }];
  });
};
