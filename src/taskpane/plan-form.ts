/** What the form for one jacket holds, and what is still wrong with it. */
import { type Cell, isCellError } from '../functions/calling/cell.ts';
import type { UnitSystem } from '../functions/calling/units.ts';
import { functionNamed } from './worked.ts';

export const SIZES = ['length', 'width', 'height', 'weight'] as const;
export type Size = (typeof SIZES)[number];

/** Fields for the paper alone: nothing is worked out from them. */
export const NAMES = ['number', 'element', 'side'] as const;
export type Name = (typeof NAMES)[number];

/** The form as it was filled in. It lives as long as its page and is kept nowhere. */
export interface PlanForm extends Readonly<Record<Size | Name, string>> {
  readonly system: UnitSystem;
  readonly padding: 'choose' | 'felt' | 'foam';
  readonly fragile: boolean;
  readonly relief: boolean;
}

export const EMPTY_FORM: PlanForm = {
  length: '',
  width: '',
  height: '',
  weight: '',
  number: '',
  element: '',
  side: '',
  system: 'metric',
  padding: 'choose',
  fragile: false,
  relief: false,
};

/**
 * What was typed, as a cell: blank, a number, or text. A comma stands for the decimal point, unless three digits follow: that may be a thousand, so it stays
 * text and is asked about.
 */
export const typedCell = (text: string): Cell => {
  const plain = text.trim();
  if (plain === '') return null;
  const number = /,\d{3}$/.test(plain) ? plain : plain.replace(/^([^,.]*),([^,.]*)$/, '$1.$2');
  return /^[+-]?(\d+\.?\d*|\.\d+)(e[+-]?\d+)?$/i.test(number) ? Number(number) : plain;
};

/** A size that is always accepted, so that only the one asked about can be refused [any unit]. */
const FILLER = 1;

/** The rest of a reason that begins with the name of its argument. */
const capital = (text: string): string => `${text[0]!.toUpperCase()}${text.slice(1)}.`;

/** Why a size cannot be used, in the words of the functions, or undefined. */
export const reasonFor = (form: PlanForm, size: Size): string | undefined => {
  const at = SIZES.indexOf(size);
  const cell = typedCell(form[size]);
  if (typeof cell === 'string') return `${capital(size)}`.replace(/\.$/, ' is not a number; type one such as 12.5.');
  // Those before it are filled in, those after it are not: the call ends at the first that cannot be used.
  const args = SIZES.map((_, i): Cell => (i < at ? FILLER : i === at ? cell : null));
  const answer = functionNamed('PLAN').call([...args, at === SIZES.length - 1 ? '?' : null, form.system]);
  return isCellError(answer) && answer.reason.startsWith(size) ? capital(answer.reason) : undefined;
};

/** Why sizes cannot be used, one reason a field. */
export const reasonsFor = (form: PlanForm): Partial<Record<Size, string>> => {
  const reasons: Partial<Record<Size, string>> = {};
  for (const size of SIZES) {
    const reason = reasonFor(form, size);
    if (reason !== undefined) reasons[size] = reason;
  }
  return reasons;
};
