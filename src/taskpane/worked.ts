/** Calls of the registry's functions together with the formula that gives the same in a sheet. */
import { type Answer, type Argument, type Cell, CellError, isCellError, isRows } from '../functions/calling/cell.ts';
import { argumentText } from '../functions/calling/formula-text.ts';
import type { WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';

/** What was worked out, and the formula without its `=`. */
export interface Worked {
  readonly answer: Answer;
  readonly text: string;
}

/** A function by its name, which is one of ours. */
export const functionNamed = (id: string): WorksheetFunction => functions.find((f) => f.id === id)!;

const isWorked = (one: Argument | Worked): one is Worked =>
  typeof one === 'object' && one !== null && 'answer' in one && 'text' in one;

/** A call. Its arguments are values as they were typed, or what other calls gave. */
export const work = (id: string, ...args: readonly (Argument | Worked)[]): Worked => {
  const given = args.map((one) => (isWorked(one) ? one.answer : one) as Argument);
  // What is left out at the end is not written.
  const last = given.findLastIndex((one) => one !== null);
  const texts = args.slice(0, last + 1).map((one) => (isWorked(one) ? one.text : argumentText(one)));
  return { answer: functionNamed(id).call(given), text: `JACKET.${id}(${texts.join(',')})` };
};

/** One cell of a table, rows and columns from 1. A table that failed gives its error. */
export const cellOf = ({ answer, text }: Worked, row: number, column: number): Worked => ({
  answer: isRows(answer) ? (answer[row - 1]?.[column - 1] ?? new CellError('#REF!', 'there is no such cell')) : answer,
  text: `INDEX(${text},${row},${column})`,
});

/** A number that was worked out, and some more of the same: layers and the layers that cover them. */
export const more = ({ answer, text }: Worked, count: number): Worked => ({
  answer: typeof answer === 'number' ? answer + count : answer,
  text: count === 0 ? text : `${text}+${count}`,
});

/** The formula as it stands in a cell. */
export const formulaOf = ({ text }: Worked): string => `=${text}`;

/** Rows of a table below its header; none where it failed. */
export const rowsBelowHeader = ({ answer }: Worked): readonly (readonly Cell[])[] =>
  isRows(answer) ? answer.slice(1) : [];

/** Why a call failed, or undefined. */
export const reasonOf = ({ answer }: Worked): string | undefined =>
  isCellError(answer) ? answer.reason || `the result is the error ${answer.code}` : undefined;
