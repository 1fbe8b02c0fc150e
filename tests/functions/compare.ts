/** Compares answers with expected values: numbers to a relative difference, all else exactly. */
import { type Answer, isCellError } from '../../src/functions/calling/cell.ts';

/** Examples are written with some ten digits. */
export const EXAMPLE_DIGITS = 1e-6;

/** Where `actual` differs from `expected`, in words; undefined where it does not. */
export const difference = (actual: Answer, expected: unknown, relative = EXAMPLE_DIGITS): string | undefined => {
  if (Array.isArray(expected)) {
    if (!Array.isArray(actual)) return `expected a table, got ${shown(actual)}`;
    if (actual.length < expected.length) return `expected ${expected.length} rows, got ${actual.length}`;
    for (const [r, row] of expected.entries())
      for (const [c, cell] of (row as unknown[]).entries()) {
        const here = difference(actual[r]?.[c] as Answer, cell, relative);
        if (here) return `row ${r + 1}, column ${c + 1}: ${here}`;
      }
    return undefined;
  }
  if (isCellError(expected)) return isCellError(actual) && actual.code === expected.code ? undefined : shown(actual);
  if (typeof expected === 'number') {
    if (typeof actual !== 'number') return `expected ${expected}, got ${shown(actual)}`;
    return Math.abs(actual - expected) <= relative * Math.abs(expected)
      ? undefined
      : `expected ${expected}, got ${actual}`;
  }
  return actual === expected ? undefined : `expected ${JSON.stringify(expected)}, got ${shown(actual)}`;
};

const shown = (answer: Answer | undefined): string =>
  isCellError(answer) ? `${answer.code} «${answer.reason}»` : JSON.stringify(answer);
