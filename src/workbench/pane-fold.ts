/** Folds the side pane away and brings it back. On narrow pages it is a drawer below the cells, closed at first. */

import { sign } from '../drawing/signs.ts';

/** Below this width the pane is a drawer, pixels. The style sheet says the same. */
const NARROW = '(max-width: 799px)';

/** Sets up the button. Answers what opens the pane. */
export function setUpFold(button: HTMLButtonElement, pane: HTMLElement, changed: () => void): () => void {
  const narrow = matchMedia(NARROW);
  let open = !narrow.matches;
  const show = (): void => {
    pane.hidden = !open;
    document.body.classList.toggle('folded', !open);
    button.setAttribute('aria-expanded', String(open));
    const label = open ? 'Fold the side pane away' : 'Show the side pane';
    // Our own drawing, no text from outside.
    button.innerHTML = sign(open ? 'unfold' : 'fold', 18);
    button.append(
      Object.assign(document.createElement('span'), {
        textContent: narrow.matches ? 'Side pane' : '',
        className: 'fold-word',
      }),
    );
    button.setAttribute('aria-label', label);
    button.title = label;
    changed();
  };
  button.addEventListener('click', () => {
    open = !open;
    show();
  });
  narrow.addEventListener('change', () => {
    open = !narrow.matches;
    show();
  });
  show();
  return () => {
    if (open) return;
    open = true;
    show();
  };
}
