/** The list of sample workbooks below its button. */

import { byId, element } from './element.ts';
import type { Sample } from './samples.ts';

export function setUpSamples(
  button: HTMLButtonElement,
  samples: readonly Sample[],
  open: (sample: Sample) => void,
  blank: () => void,
): void {
  const list = byId('bench-samples');
  const show = (on: boolean): void => {
    list.hidden = !on;
    button.setAttribute('aria-expanded', String(on));
  };
  const item = (label: string, run: () => void): HTMLLIElement => {
    const choice = element('button', { type: 'button' }, label);
    choice.addEventListener('click', () => {
      show(false);
      button.focus();
      run();
    });
    return element('li', {}, choice);
  };
  list.replaceChildren(
    ...samples.map((sample) => item(sample.title, () => open(sample))),
    item('An empty sheet', blank),
  );
  button.addEventListener('click', () => {
    show(list.hasAttribute('hidden'));
    if (!list.hasAttribute('hidden')) list.querySelector('button')?.focus();
  });
  const away = (event: Event): void => {
    if (!list.hasAttribute('hidden') && !list.contains(event.target as Node) && event.target !== button) show(false);
  };
  addEventListener('pointerdown', away);
  addEventListener('focusin', away);
  list.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape') return;
    show(false);
    button.focus();
  });
}
