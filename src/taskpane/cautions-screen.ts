/** The cautions: shown first until they have been read once, and always one click away. */
import { CAUTIONS, FOLLOW, PLANNING } from '../texts/cautions.ts';
import { cautionCard } from './caution-card.ts';
import { button, element } from './element.ts';
import type { Memory, Screen } from './screen.ts';

const KEY = 'storage-jackets-cautions-read';

/** Whether the cautions have been read on this computer. */
export const cautionsRead = (memory: Memory): boolean => memory.getItem(KEY) === 'yes';

export const cautionsScreen: Screen = {
  id: 'cautions',
  title: 'Cautions',
  mount: (place, { memory, show }) => {
    const done = button(
      'I have read them',
      () => {
        memory.setItem(KEY, 'yes');
        done.remove();
        show('cell');
      },
      'main',
    );
    place.append(
      element('h2', { tabindex: '-1' }, 'What can hurt you here?'),
      element('p', { class: 'lead' }, `${FOLLOW} What needs a licence is for those who hold one.`),
      element(
        'p',
        { class: 'faint' },
        `${PLANNING} Nothing here replaces a look at the specimen, a scale or a test piece.`,
      ),
      element('ul', { class: 'cards' }, ...CAUTIONS.map(cautionCard)),
    );
    if (!cautionsRead(memory)) place.append(element('p', { class: 'actions' }, done));
    return {};
  },
};
