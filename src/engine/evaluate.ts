/** Formulas calculated one by one on an empty sheet. */

import { type Answer, CellError, type ErrorCode } from '../functions/calling/cell.ts';
import { nearestName } from '../functions/calling/names.ts';
import { type EngineFunction, typedName } from './adapter.ts';
import { beyondLimits } from './beyond-limits.ts';
import { createEngine, type Engine, emptyBook } from './engine.ts';
import { extent } from './extent.ts';
import { forEngine } from './for-engine.ts';
import { sheetIn, tokens } from './formula-text.ts';
import { notCheckedReason, unknownFunctions } from './not-checked.ts';
import { unreadable } from './syntax.ts';

/** What came of one formula. `doubt` says why the answer may differ from a spreadsheet program's. */
export type Evaluated =
  | { readonly formula: string; readonly unreadable: string }
  | { readonly formula: string; readonly answer: Answer; readonly doubt?: string };

/** Why built-in functions give an error value; ours bring their own reason. */
const REASONS: Partial<Record<ErrorCode, string>> = {
  '#DIV/0!': 'something is divided by 0',
  '#N/A': 'a value is not available, or a function has too few or too many arguments',
  '#NUM!': 'a number is out of range',
  '#REF!': 'a reference points at no cell',
  '#VALUE!': 'a value is of another kind than expected',
  '#CALC!': 'the table would have no cells',
};

const withReason = (error: CellError, formula: string, names: Names): CellError => {
  if (error.reason !== '') return error;
  if (error.code === '#NAME?') return new CellError(error.code, nameReason(formula, names));
  return new CellError(error.code, REASONS[error.code] ?? 'a built-in function or a typed error value gives this');
};

interface Names {
  readonly knows: (name: string) => boolean;
  readonly ours: readonly string[];
}

function nameReason(formula: string, { knows, ours }: Names): string {
  const [unknown] = unknownFunctions(formula, knows);
  if (unknown !== undefined) {
    const nearest = unknown.startsWith('JACKET') ? `; did you mean ${nearestName(unknown, ours)}?` : '';
    return `there is no function ${unknown}${nearest}`;
  }
  const name = tokens(formula).find(({ kind, text }) => kind === 'name' && !/^(true|false)$/i.test(text));
  return name === undefined ? 'a name is not known' : `there is no name ${name.text} on an empty sheet`;
}

/** The one sheet there is; cells of another one would be taken for blank. */
const ONLY_SHEET = 'Sheet1';

function otherSheet(formula: string): string | undefined {
  return tokens(formula)
    .filter(({ kind }) => ['reference', 'name', 'function'].includes(kind))
    .map(({ text }) => sheetIn(text))
    .find((sheet) => sheet !== undefined && sheet.toLowerCase() !== ONLY_SHEET.toLowerCase());
}

async function evaluateOne(engine: Engine, formula: string, names: Names): Promise<Evaluated> {
  const fault = beyondLimits(formula) ?? unreadable(formula);
  if (fault !== undefined) return { formula, unreadable: fault };
  const written = forEngine(formula);
  const sheet = otherSheet(written);
  if (sheet !== undefined)
    return { formula, answer: new CellError('#REF!', `there is no sheet ${sheet}; here is only ${ONLY_SHEET}`) };
  const reason = notCheckedReason(written, names.knows);
  // The engine answers some formulas that it cannot read with an exception.
  const answer = await engine.evaluate(written).catch(() => undefined);
  if (answer === undefined) return { formula, unreadable: reason ?? 'this engine cannot read it' };
  const explain = <T>(cell: T): T | CellError => (cell instanceof CellError ? withReason(cell, written, names) : cell);
  const explained = Array.isArray(answer) ? answer.map((row) => row.map(explain)) : explain(answer);
  const unknown = unknownFunctions(written, names.knows).length > 0;
  return { formula, answer: explained, ...(reason !== undefined && !unknown ? { doubt: reason } : {}) };
}

/** Calculates formulas, each on its own, with our functions and the built-in ones. */
export async function evaluateAll(
  functions: readonly EngineFunction[],
  formulas: readonly string[],
): Promise<Evaluated[]> {
  const engine = createEngine(functions);
  try {
    const { rowCount, columnCount } = extent(formulas);
    engine.open(emptyBook(rowCount, columnCount));
    const names = { knows: engine.knows, ours: functions.map(({ id }) => typedName(id)) };
    const results: Evaluated[] = [];
    for (const formula of formulas) results.push(await evaluateOne(engine, formula, names));
    return results;
  } finally {
    engine.dispose();
  }
}
