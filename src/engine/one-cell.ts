/**
 * Formulas that a file keeps for one cell although they work on whole ranges, such as `SUM(A1:A3*2)` without the mark of an array.
 *
 * Spreadsheet programs mark a formula as an array where it works on ranges value by value. Without the mark they take, of each such range, the one cell in the
 * formula's own row or column. The engine knows no such formulas: it always works on the whole ranges. So these are not calculated here.
 */

import { bare, endsOf, functionName, type Token, tokens } from './formula-text.ts';
import { readTableReference } from './table-reference.ts';

/** Functions whose arguments work value by value in any formula. */
const TAKES_ARRAYS: ReadonlySet<string> = new Set([
  ...['SUMPRODUCT', 'MMULT', 'MDETERM', 'MINVERSE', 'LOOKUP', 'INDEX', 'FREQUENCY', 'LINEST', 'LOGEST', 'TREND'],
  ...['GROWTH', 'SUMX2MY2', 'SUMX2PY2', 'SUMXMY2', 'CORREL', 'COVAR', 'PEARSON', 'RSQ', 'SLOPE', 'INTERCEPT', 'STEYX'],
]);

/** Functions that take one value in their first argument. */
const TAKES_ONE: ReadonlySet<string> = new Set([
  ...['ABS', 'ACOS', 'ASIN', 'ATAN', 'CEILING', 'COS', 'DEGREES', 'EVEN', 'EXP', 'FACT', 'FLOOR', 'INT', 'LN', 'LOG'],
  ...['LOG10', 'MOD', 'ODD', 'POWER', 'RADIANS', 'ROUND', 'ROUNDDOWN', 'ROUNDUP', 'SIGN', 'SIN', 'SQRT', 'TAN'],
  ...['TRUNC', 'CHAR', 'CLEAN', 'CODE', 'EXACT', 'FIND', 'LEFT', 'LEN', 'LOWER', 'MID', 'PROPER', 'REPLACE', 'REPT'],
  ...['RIGHT', 'SEARCH', 'SUBSTITUTE', 'TEXT', 'TRIM', 'UPPER', 'VALUE', 'DATE', 'DATEVALUE', 'DAY', 'HOUR'],
  ...['MINUTE', 'MONTH', 'SECOND', 'TIME', 'YEAR', 'IF', 'NOT', 'ISBLANK', 'ISNUMBER', 'ISTEXT', 'ISERROR', 'ISNA'],
]);

const OPERATORS: ReadonlySet<string> = new Set(['+', '-', '*', '/', '^', '&', '=', '<>', '<', '>', '<=', '>=', '%']);

/** Whether a piece is a range of several cells. */
function isSeveralCells({ kind, text }: Token): boolean {
  if (kind === 'reference') {
    const { firstRow, lastRow, firstColumn, lastColumn } = endsOf(text);
    return firstRow === undefined || firstColumn === undefined || firstRow !== lastRow || firstColumn !== lastColumn;
  }
  if (kind !== 'structured') return false;
  const reference = readTableReference(text);
  return reference !== undefined && !reference.sections.includes('#this row') && !text.includes('[@');
}

/** A piece of a range and not a range of its own: what stands at a colon is part of a larger reference. */
const isPart = (all: readonly Token[], i: number): boolean => all[i - 1]?.text === ':' || all[i + 1]?.text === ':';

/** The range of which a spreadsheet program would take one cell, in a formula that is not marked as an array. */
export function rangeForOneCell(formula: string): string | undefined {
  const all = tokens(bare(formula)).filter(({ kind }) => kind !== 'space');
  const calls: string[] = [];
  for (const [i, token] of all.entries()) {
    if (token.text === '(') calls.push(all[i - 1]?.kind === 'function' ? functionName(all[i - 1]!.text) : '');
    else if (token.text === ')') calls.pop();
    if (!isSeveralCells(token) || isPart(all, i) || calls.some((name) => TAKES_ARRAYS.has(name))) continue;
    const [before, after] = [all[i - 1], all[i + 1]];
    const meets = (other: Token | undefined): boolean => other?.kind === 'operator' && OPERATORS.has(other.text);
    const isOnlyArgument = before?.text === '(' && (after?.text === ')' || after?.kind === 'separator');
    const isOne = isOnlyArgument && TAKES_ONE.has(calls.at(-1) ?? '');
    if (meets(before) || meets(after) || isOne) return token.text;
  }
  return undefined;
}
