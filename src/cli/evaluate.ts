/** `npm run -s evaluate -- FORMULA…`: calculates formulas and prints what comes out. */

import { type Evaluated, evaluateAll } from '../engine/evaluate.ts';
import { CellError, type OutCell } from '../functions/calling/cell.ts';
import { functions } from '../functions/index.ts';
import type { Output } from './output.ts';

export const EVALUATE_USAGE = `npm run -s evaluate -- [--json] FORMULA…

Calculates formulas on an empty sheet, with the JACKET functions and the built-in ones.
Put each formula in quotation marks: '=JACKET.AREA(60,40,30)'

Exit status 0: all have a value, 1: some give an error value, 2: some cannot be read.`;

const OPTIONS: ReadonlySet<string> = new Set(['--json', '--help', '--']);

const plainCell = (cell: OutCell): string => {
  if (cell instanceof CellError) return cell.code;
  if (typeof cell === 'boolean') return cell ? 'TRUE' : 'FALSE';
  return String(cell);
};

const jsonCell = (cell: OutCell): unknown =>
  cell instanceof CellError ? { error: cell.code, message: cell.reason } : cell;

const rowsOf = (answer: OutCell | OutCell[][]): OutCell[][] => (Array.isArray(answer) ? answer : [[answer]]);

const errorsOf = (result: Evaluated): CellError[] =>
  'unreadable' in result
    ? []
    : rowsOf(result.answer)
        .flat()
        .filter((cell) => cell instanceof CellError);

function jsonElement(result: Evaluated): unknown {
  const { formula } = result;
  if ('unreadable' in result) return { formula, unreadable: result.unreadable };
  const { answer } = result;
  if (Array.isArray(answer)) return { formula, rows: answer.map((row) => row.map(jsonCell)) };
  if (answer instanceof CellError) return { formula, error: answer.code, message: answer.reason };
  return { formula, value: answer };
}

const plainText = (result: Evaluated): string =>
  'unreadable' in result
    ? ''
    : rowsOf(result.answer)
        .map((row) => row.map(plainCell).join('\t'))
        .join('\n');

/** Reasons, each once: a column of one mistake is one line. */
function reasonLines(result: Evaluated): string[] {
  if ('unreadable' in result) return [`${result.formula}: cannot be read: ${result.unreadable}`];
  return [...new Set(errorsOf(result).map((error) => `${error.code} ${error.reason}`))];
}

/** Runs the command and answers its exit status. What is no option is a formula: one may begin with a minus. */
export async function evaluate(args: readonly string[], output: Output): Promise<number> {
  const formulas = args.filter((arg) => !OPTIONS.has(arg));
  if (args.includes('--help')) {
    output.out(EVALUATE_USAGE);
    return 0;
  }
  if (formulas.length === 0) {
    output.error(EVALUATE_USAGE);
    return 2;
  }
  const results = await evaluateAll(functions, formulas);
  if (args.includes('--json')) output.out(JSON.stringify(results.map(jsonElement), null, 2));
  else printPlain(results, output);
  for (const result of results) if ('doubt' in result) output.error(`${result.formula}: not checked: ${result.doubt}`);
  if (results.some((result) => 'unreadable' in result)) return 2;
  return results.some((result) => errorsOf(result).length > 0) ? 1 : 0;
}

function printPlain(results: readonly Evaluated[], output: Output): void {
  const texts = results.filter((result) => !('unreadable' in result)).map(plainText);
  if (texts.length > 0) output.out(texts.join('\n\n'));
  for (const result of results) for (const line of reasonLines(result)) output.error(line);
}
