/** Names of a workbook that its formulas also call as functions. */

import type { Book } from './book.ts';
import { tokens } from './formula-text.ts';

/**
 * Names, in small letters, that some formula of the workbook calls as a function: a cell called `day` in a workbook that uses `DAY(…)`.
 *
 * The engine as shipped (version 0.25.1) takes each such call for the name, and never ends where the name itself calls the function.
 */
export function takenNames({ sheets, names }: Book): ReadonlySet<string> {
  const known = new Set(names.map(({ name }) => name.toLowerCase()));
  const taken = new Set<string>();
  if (known.size === 0) return taken;
  const texts = new Set(names.map(({ text }) => text));
  for (const { cells } of sheets) for (const { formula } of cells) if (formula) texts.add(formula.text);
  for (const text of texts) {
    for (const called of text.toLowerCase().matchAll(/[\p{L}_][\p{L}\p{N}_.]*(?=\()/gu)) {
      if (!known.has(called[0]) || taken.has(called[0])) continue;
      // Not inside of a text or of a sheet's name.
      if (tokens(text).some((token) => token.kind === 'function' && token.text.toLowerCase() === called[0]))
        taken.add(called[0]);
    }
  }
  return taken;
}
