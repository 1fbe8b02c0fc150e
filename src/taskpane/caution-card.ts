/** A caution as it stands in the pane: its sign, its word, what to do, and why. */

import type { Hurt } from '../functions/define.ts';
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

/**
 * The cautions that belong beside a number that can hurt somebody, in short, with the way to the whole. Undefined where there are none.
 */
export const cautionsBeside = (hurts: readonly Hurt[] | undefined, { show }: ScreenTools): HTMLElement | undefined => {
  if (!hurts?.length) return undefined;
  return element(
    'section',
    { class: 'caution', 'aria-label': 'Cautions for this number' },
    ...cautionsFor(hurts).map(({ title, text, sign }) =>
      element(
        'p',
        { class: 'caution-line' },
        signElement(sign, 20),
        element('span', {}, element('strong', {}, `${title}. `), first(text)),
      ),
    ),
    element('p', { class: 'follow' }, `${PLANNING} ${FOLLOW}`),
    button('All cautions', () => show('cautions'), 'link'),
  );
};
