/** All cautions with their reasons and sources, on one page for the wall. */
import { CAUTIONS, FOLLOW, PLANNING } from '../texts/cautions.ts';
import { element, signElement } from './element.ts';

export const cautionsPage = (): HTMLElement =>
  element(
    'article',
    { class: 'page cautions' },
    element('h1', {}, 'What can hurt you here?'),
    element('p', {}, element('strong', {}, `${FOLLOW} What needs a licence is for those who hold one. ${PLANNING}`)),
    ...CAUTIONS.map(({ title, text, why, sources, sign }) =>
      element(
        'section',
        { class: 'wall-caution' },
        signElement(sign, 40),
        element(
          'div',
          {},
          element('h2', {}, title),
          element('p', { class: 'do' }, text),
          element('p', {}, why),
          element('p', { class: 'card-formula' }, sources.map((s) => `${s.text} (${s.basis})`).join('; ')),
        ),
      ),
    ),
  );
