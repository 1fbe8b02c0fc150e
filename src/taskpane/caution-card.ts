/** A caution as it stands in the pane: its sign, its word, what to do, and why. */

import type { Hurt, WorksheetFunction } from '../functions/define.ts';
import { type Caution, cautionsFor, FOLLOW, PLANNING } from '../texts/cautions.ts';
import { button, element, folded, signElement } from './element.ts';
import type { ScreenTools } from './screen.ts';

/** The whole caution with its reasons and sources folded away. */
export const cautionCard = ({ title, text, why, sources, sign }: Caution): HTMLElement =>
  element(
    'li',
    { class: 'caution-card' },
    signElement(sign, 32),
    element(
      'div',
      {},
      element('h3', {}, title),
      element('p', {}, text),
      folded(
        `Why: ${title.toLowerCase()}`,
        element('p', {}, why),
        element('ul', { class: 'sources' }, ...sources.map((s) => element('li', {}, `${s.text} (${s.basis})`))),
      ),
    ),
  );

/** The first sentence of a caution: what to do before anything else. */
const first = (text: string): string => /^.*?[.](?=\s|$)/.exec(text)?.[0] ?? text;

const sentence = (text: string): string => {
  const whole = `${text[0]!.toUpperCase()}${text.slice(1)}`;
  return /[.!?]$/.test(whole) ? whole : `${whole}.`;
};

/** The limits within which a number of a function holds, and how it is known. */
const knownOf = ({ id, limits, basis, source }: WorksheetFunction): readonly HTMLElement[] => [
  element(
    'p',
    { class: 'known', 'data-limit': id },
    element('strong', {}, 'Limits. '),
    limits.length ? limits.map(({ text }) => sentence(text)).join(' ') : PLANNING,
  ),
  element(
    'p',
    { class: 'known', 'data-source': id },
    element('strong', {}, 'How it is known. '),
    `${sentence(basis)} ${sentence(source)}`,
  ),
];

/**
 * The cautions that belong beside a number that can hurt somebody, in short, with the way to the whole. Undefined where there are none.
 *
 * @param f the function that gave the number: its limits and its source stand there too
 */
export const cautionsBeside = (
  hurts: readonly Hurt[] | undefined,
  { show }: ScreenTools,
  f?: WorksheetFunction,
): HTMLElement | undefined => {
  if (!hurts?.length) return undefined;
  return element(
    'section',
    { class: 'caution', 'aria-label': 'Cautions for this number' },
    ...cautionsFor(hurts).map(({ id, title, text, sign }) =>
      element(
        'p',
        { class: 'caution-line', 'data-caution': id },
        signElement(sign, 20),
        element('span', {}, element('strong', {}, `${title}. `), first(text)),
      ),
    ),
    ...(f ? knownOf(f) : []),
    element('p', { class: 'follow' }, `${PLANNING} ${FOLLOW}`),
    button('All cautions', () => show('cautions'), 'link'),
  );
};
