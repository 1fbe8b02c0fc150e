/** Names and roles that the grid's own controls lack, so that people who hear the page find them. */

import { inNextFrame } from './changes.ts';

type Rule = readonly [selector: string, attributes: Readonly<Record<string, string>>];

/** The element that takes the keys while cells are selected, not edited. */
export const KEYS = '#__editor___INTERNAL_EDITOR__DOCS_NORMAL';
/** The line that shows and takes a cell's content. */
export const CELL_LINE = '#__editor___INTERNAL_EDITOR__DOCS_FORMULA_BAR';

const RULES: readonly Rule[] = [
  // Shipped with a tab stop, although another element takes the keys.
  ['canvas', { tabindex: '-1', 'aria-hidden': 'true' }],
  [
    KEYS,
    {
      role: 'textbox',
      'aria-multiline': 'true',
      'aria-label': 'Cells. Arrow keys move, typing edits, F6 leaves',
      'aria-describedby': 'bench-cell',
    },
  ],
  [CELL_LINE, { role: 'textbox', 'aria-multiline': 'true', 'aria-label': 'Content of the cell' }],
  // A list that scrolls must be within reach of the keyboard.
  ['ul[data-u-comp^="sheets-formula-editor"]', { tabindex: '0', 'aria-label': 'Functions' }],
  ['[data-u-comp="defined-name"] input', { 'aria-label': 'Cell or name' }],
];

const set = (node: Element, attributes: Readonly<Record<string, string>>): void => {
  for (const [name, value] of Object.entries(attributes))
    if (node.getAttribute(name) !== value) node.setAttribute(name, value);
};

function patch(root: HTMLElement): void {
  for (const [selector, attributes] of RULES) for (const node of root.querySelectorAll(selector)) set(node, attributes);
  for (const node of root.querySelectorAll('input:not([aria-label])'))
    node.setAttribute('aria-label', 'Search in the list');
  for (const node of root.querySelectorAll('a[type="button"],div[type="button"]')) {
    node.removeAttribute('type');
    if (node.querySelector('button')) {
      // A wrapper: the button inside it has the name.
      node.removeAttribute('aria-haspopup');
      node.removeAttribute('aria-expanded');
    } else set(node, { role: 'button', 'aria-label': node.getAttribute('aria-label') ?? 'Options' });
  }
  let notices = 0;
  for (const node of root.querySelectorAll('section[aria-label^="Notifications"]')) {
    notices += 1;
    set(node, { 'aria-label': `Notifications ${notices}` });
  }
}

/** Gives names now and whenever the grid draws something anew. */
export function nameControls(root: HTMLElement): void {
  // Lists of choices stand beside the grid, at the end of the page.
  const all = (): void => {
    patch(root);
    for (const popup of document.querySelectorAll<HTMLElement>('[data-u-comp="rect-popup"]')) patch(popup);
  };
  const later = inNextFrame(all);
  new MutationObserver(later).observe(document.body, { subtree: true, childList: true });
  patch(root);
}
