/** A question that has to be answered before anything goes on. */

import { byId, element } from './element.ts';

/** Shows a question with its answers; the first is the safe one and has the focus. Escape answers `undefined`. */
export function ask<A extends string>(question: string, answers: Readonly<Record<A, string>>): Promise<A | undefined> {
  const dialog = element('dialog', { class: 'bench-ask', 'aria-label': question });
  const buttons = Object.entries<string>(answers).map(([answer, label]) => {
    const button = element('button', { type: 'button', value: answer }, label);
    button.addEventListener('click', () => dialog.close(answer));
    return button;
  });
  dialog.append(element('p', {}, question), element('div', { class: 'bench-answers' }, ...buttons));
  byId('bench-dialogs').append(dialog);
  dialog.showModal();
  buttons[0]?.focus();
  return new Promise((done) => {
    dialog.addEventListener('close', () => {
      dialog.remove();
      done(dialog.returnValue === '' ? undefined : (dialog.returnValue as A));
    });
  });
}
