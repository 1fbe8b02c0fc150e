/** Formulas as locales with a decimal comma write them. */
import { DECIMAL_COMMA, STANDARD } from '../../functions/calling/formula-text.ts';

/** The same formula with the separators of a decimal comma. Text in quotes stays as it is. */
export const withSemicolons = (formula: string): string => {
  let depth = 0;
  let quoted = false;
  let out = '';
  for (const [i, c] of [...formula].entries()) {
    if (c === '"') quoted = !quoted;
    if (quoted) {
      out += c;
      continue;
    }
    if (c === '{') depth += 1;
    if (c === '}') depth -= 1;
    if (c === STANDARD.argument) out += depth > 0 ? DECIMAL_COMMA.column : DECIMAL_COMMA.argument;
    else if (c === STANDARD.decimal && /\d/.test(formula[i + 1] ?? '')) out += DECIMAL_COMMA.decimal;
    else out += c;
  }
  return out;
};
