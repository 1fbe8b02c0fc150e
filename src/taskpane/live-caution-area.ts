/** Where the cautions about the active cell's own numbers stand: first on its screen, and said politely when they change. */
import { CAUTIONS, FOLLOW } from '../texts/cautions.ts';
import type { LiveCaution } from '../texts/live-cautions.ts';
import { button, element, signElement } from './element.ts';
import type { LiveCautions } from './live-cautions.ts';
import type { ScreenTools } from './screen.ts';

const named = (word: string, text: string, attributes: Readonly<Record<string, string>> = {}): HTMLElement =>
  element('p', attributes, element('strong', {}, `${word}: `), text);

const item = (caution: LiveCaution, functionId: string): HTMLElement => {
  const { title, sign } = CAUTIONS.find(({ id }) => id === caution.id)!;
  return element(
    'li',
    { class: 'live-caution', 'data-block': 'live' },
    signElement(sign, 28),
    element(
      'div',
      {},
      element('h3', { 'data-caution': caution.id }, `${title}: ${caution.about}`),
      element('p', { class: 'figure', 'data-result': functionId }, caution.figure),
      named('What to do', caution.todo),
      named('Limit', caution.limit, { class: 'known', 'data-limit': functionId }),
      named('Source', caution.source, { class: 'known', 'data-source': functionId }),
    ),
  );
};

const group = ({ of, id, cautions, advice }: LiveCautions, several: boolean): readonly HTMLElement[] => [
  ...(several ? [element('p', { class: 'live-of' }, `About ${of}`)] : []),
  element('ul', { class: 'cards' }, ...cautions.map((one) => item(one, id))),
  ...(advice === '' ? [] : [named(id === 'COLLECTION' ? 'Note of the row' : 'Advice of the plan', advice)]),
];

/** «2 cautions for F2: wet weight, tip angle.» */
const summary = (where: string, found: readonly LiveCautions[]): string => {
  const about = found.flatMap(({ of, cautions }) =>
    cautions.map((one) => (found.length > 1 ? `${one.about} (${of})` : one.about)),
  );
  if (about.length === 0) return `A note for ${where}.`;
  return `${about.length === 1 ? 'A caution' : `${about.length} cautions`} for ${where}: ${about.join(', ')}.`;
};

export interface LiveCautionArea {
  readonly element: HTMLElement;
  /** Shows cautions for a cell; nothing where none is called for. */
  show(where: string, list: readonly LiveCautions[]): void;
}

export const liveCautionArea = (tools: ScreenTools): LiveCautionArea => {
  // It stays in the page while it is empty: only what changes inside of it is read out.
  const said = element('p', { class: 'live-said', role: 'status' });
  const list = element('div');
  const rest = element(
    'div',
    {},
    list,
    element(
      'p',
      { class: 'follow' },
      `${FOLLOW} Only these limits are looked at: weigh, measure and try before you rely on a number.`,
    ),
    button('All cautions', () => tools.show('cautions'), 'link'),
  );
  const sign = signElement('warning', 24);
  const area = element('div', {}, element('div', { class: 'lead' }, sign, said), rest);
  const look = (some: boolean): void => {
    area.className = some ? 'caution live' : 'live';
    sign.hidden = !some;
    rest.hidden = !some;
  };
  look(false);
  let shown = '';
  return {
    element: area,
    show: (where, found) => {
      const some = found.filter(({ cautions, advice }) => cautions.length > 0 || advice !== '');
      const key = JSON.stringify([where, some]);
      if (key === shown) return;
      shown = key;
      look(some.length > 0);
      list.replaceChildren(...some.flatMap((one) => group(one, some.length > 1)));
      said.textContent = some.length === 0 ? '' : summary(where, some);
    },
  };
};
