/** Help in the page: what the actions do, and the keys. */

import { byId, element } from './element.ts';

const KEYS: readonly (readonly [keys: string, does: string])[] = [
  ['Arrow keys, Tab, Enter', 'go from cell to cell; with Shift backwards'],
  ['Home, Ctrl+Home, Ctrl+End', 'first column, first cell, last cell'],
  ['Page up, Page down', 'a screen up or down; with Ctrl the sheet before or after'],
  ['F2', 'change what stands in the cell'],
  ['=JACKET.', 'lists the functions; arrow keys choose, Tab takes one'],
  ['Escape', 'leaves the cell as it was'],
  ['F6, Shift+F6', 'from the cells to the side pane, to the actions, and back'],
  ['Ctrl+S, Ctrl+O, Ctrl+P', 'save, open, print'],
  ['Ctrl+Z, Ctrl+Y', 'undo, redo'],
  ['Ctrl+C, Ctrl+V, Delete', 'copy, paste, empty the cells'],
];

const TEXTS = [
  'Type sizes and weights; formulas of the namespace JACKET calculate at once. The side pane says what the selected cell used and where its numbers come from.',
  'Save writes only the cells that changed. Charts, pictures and everything else in the file stay as they are, also what is not drawn here.',
  'Rows, columns, sheets and formats are changed in a spreadsheet program. Nothing you open leaves this computer.',
];

/** The dialog, made once. */
export function helpDialog(): HTMLDialogElement {
  const close = element('button', { type: 'button', class: 'main' }, 'Close');
  const dialog = element(
    'dialog',
    { class: 'bench-help', 'aria-labelledby': 'bench-help-title' },
    element('h2', { id: 'bench-help-title' }, 'How this page works'),
    ...TEXTS.map((text) => element('p', {}, text)),
    element(
      'p',
      {},
      element('a', { href: 'help/index.html', target: '_blank', rel: 'noopener' }, 'All functions, one page each'),
    ),
    element('h3', {}, 'Keys'),
    element('dl', {}, ...KEYS.flatMap(([keys, does]) => [element('dt', {}, keys), element('dd', {}, does)])),
    close,
  );
  close.addEventListener('click', () => dialog.close());
  byId('bench-dialogs').append(dialog);
  return dialog;
}
