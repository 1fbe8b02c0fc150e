/** Worked examples: formulas with their results. */
import type { Answer, Argument } from '../../functions/calling/cell.ts';
import { isCellError, isRows } from '../../functions/calling/cell.ts';
import { DECIMAL_COMMA, formulaText } from '../../functions/calling/formula-text.ts';
import type { UnitSystem } from '../../functions/calling/units.ts';
import type { WorksheetFunction } from '../../functions/define.ts';
import { escaped } from '../html.ts';
import { cellTable, formulaLine } from './elements.ts';
import { cellText, unitAfter } from './numbers.ts';
import { asksForUs, inUs } from './systems.ts';

const SYSTEM_WORDS: Readonly<Record<UnitSystem, string>> = { metric: 'metric', us: 'US units' };

/** The quantity of a table without a header, in words. */
const tableUnit = (f: WorksheetFunction, system: UnitSystem): string =>
  f.result.kind === 'table' && f.result.quantity ? `, in${unitAfter(f.result.quantity, system)}` : '';

/** A result as it stands under its formula. */
export const resultHtml = (f: WorksheetFunction, answer: Answer, system: UnitSystem, formula: string): string => {
  if (isRows(answer)) {
    const label = `${f.result.what}${tableUnit(f, system)}`;
    const header = f.result.kind === 'table' && f.result.header;
    return `<div data-result="${f.id}"><p class="faint">${escaped(label)}</p>${cellTable(`Result of ${formula}`, answer, header)}</div>`;
  }
  const unit = f.result.kind === 'number' ? unitAfter(f.result.quantity, system) : '';
  const shown =
    typeof answer === 'string' ? escaped(answer).replaceAll('\n', '<br>') : `${escaped(cellText(answer))}${unit}`;
  const what =
    isCellError(answer) || typeof answer === 'string' ? '' : ` <span class="faint">${escaped(f.result.what)}</span>`;
  return `<p class="result" data-result="${f.id}"><strong>${shown}</strong>${what}</p>`;
};

/** One call: the formula with commas, the same with semicolons, and what it gives. */
const call = (f: WorksheetFunction, args: readonly Argument[], system: UnitSystem, label: string): string => {
  const [formula, other] = [formulaText(f.id, args), formulaText(f.id, args, DECIMAL_COMMA)];
  return `<div class="call">${label ? `<h3>${label}</h3>` : ''}
${formulaLine(formula)}
${other === formula ? '' : `<p class="other">with a decimal comma <code>${escaped(other)}</code></p>`}
${resultHtml(f, f.call(args), system, formula)}</div>`;
};

/** An example in the unit system that it is about, or in both. */
export const example = (f: WorksheetFunction, args: readonly Argument[], both: boolean): string => {
  if (asksForUs(f, args)) return call(f, args, 'us', SYSTEM_WORDS.us);
  const us = both ? inUs(f, args) : undefined;
  if (!us) return call(f, args, 'metric', f.takesSettings ? SYSTEM_WORDS.metric : '');
  return `${call(f, args, 'metric', SYSTEM_WORDS.metric)}\n${call(f, us, 'us', SYSTEM_WORDS.us)}`;
};
