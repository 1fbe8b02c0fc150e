/** Formulas that are larger than any machine or spreadsheet program takes. */

import { SPARE_COLUMNS, SPARE_ROWS } from './extent.ts';
import { spanOf, tokens } from './formula-text.ts';

/** Longest formula that spreadsheet programs take [characters], and how deep its calls may be nested. From their published limits. */
const LONGEST_FORMULA = 8192;
const DEEPEST_BRACKET = 64;

/** Most cells that one reference may hold. Ours: nine whole columns, or a thousand of them as far as they are filled. */
const MOST_CELLS = 10_000_000;

/** A reference that holds more cells than a machine can walk through. Of whole columns and rows the engine has as many cells as it needs. */
function hugeReference(text: string): string | undefined {
  for (const token of tokens(text)) {
    if (token.kind !== 'reference' || !token.text.includes(':')) continue;
    const { rows, columns } = spanOf(token.text);
    if ((rows ?? SPARE_ROWS) * (columns ?? SPARE_COLUMNS) > MOST_CELLS)
      return `${token.text} holds more than 10 million cells, which is more than is looked at here`;
  }
  return undefined;
}

/** Why a formula is beyond all limits, or nothing if it is not. It could exhaust the engine, which reads formulas by recursion. */
export function beyondLimits(text: string): string | undefined {
  if (text.length > LONGEST_FORMULA) return `the formula is longer than ${LONGEST_FORMULA} characters`;
  let depth = 0;
  for (const token of tokens(text)) {
    if (token.text === '(') depth += 1;
    else if (token.text === ')') depth -= 1;
    if (depth > DEEPEST_BRACKET) return `the formula has more than ${DEEPEST_BRACKET} brackets inside each other`;
  }
  return hugeReference(text);
}
