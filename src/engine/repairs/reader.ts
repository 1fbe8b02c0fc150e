/** The engine's reader of formulas. */

import { BaseFunction, LexerNode, LexerTreeBuilder } from '@univerjs/engine-formula';

/** What the engine keeps to itself of its reader. */
interface Reader {
  treeBuilder(formula: string, forCalculation?: boolean, names?: unknown): LexerNode | string;
  _suffixExpressionHandler(node: LexerNode): boolean;
}

let isRepaired = false;

/**
 * As shipped the pieces of a formula are kept by its text, for all workbooks together, and what LET and LAMBDA name is written into them: the same
 * formula met again, in another workbook or after thousands of others, answers #VALUE!. A name of one workbook stays in the formula of another one in the same
 * way. Here each formula is read anew; the engine keeps what it makes of the pieces, by workbook.
 *
 * A typed text that looks like a date or an amount, such as "1-2" or "10%", comes to a function as a number. Here it stays a text. One repair is for all
 * engines of a process.
 */
export function repairReader(): void {
  if (isRepaired) return;
  isRepaired = true;
  BaseFunction.prototype.isArgumentsIgnoreNumberPattern = () => true;
  const reader = LexerTreeBuilder.prototype as unknown as Reader;
  const shipped = reader.treeBuilder;
  reader.treeBuilder = function treeBuilder(this: Reader, formula, forCalculation = true, names) {
    const node = shipped.call(this, formula, false, names);
    if (!forCalculation || !(node instanceof LexerNode)) return node;
    return this._suffixExpressionHandler(node) ? node : '#VALUE!';
  };
}
