/** Short sentences to the person at the page, with what can be done about them. */

import { element } from './element.ts';

export interface MessageAction {
  readonly label: string;
  run(): void;
}

export interface Messages {
  /** Shows a sentence until it is closed or followed by another of the same kind. `urgent` ones are read out at once. */
  say(text: string, options?: { readonly urgent?: boolean; readonly actions?: readonly MessageAction[] }): void;
  clear(): void;
}

/** Messages inside an element: one at a time, since two are read less than one. */
export function createMessages(place: HTMLElement): Messages {
  const polite = element('div', { role: 'status', class: 'bench-polite' });
  const urgent = element('div', { role: 'alert', class: 'bench-urgent' });
  place.replaceChildren(polite, urgent);
  const clear = (): void => {
    polite.replaceChildren();
    urgent.replaceChildren();
  };
  return {
    clear,
    say(text, { urgent: isUrgent = false, actions = [] } = {}) {
      clear();
      const line = element('p', {}, text);
      const buttons = actions.map(({ label, run }) => {
        const button = element('button', { type: 'button' }, label);
        button.addEventListener('click', () => {
          clear();
          run();
        });
        return button;
      });
      const close = element('button', { type: 'button', class: 'plain' }, 'Close');
      close.setAttribute('aria-label', 'Close this message');
      close.addEventListener('click', clear);
      (isUrgent ? urgent : polite).replaceChildren(line, ...buttons, close);
    },
  };
}
