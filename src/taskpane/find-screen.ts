/** Find a function: by topic or by words, with arguments, units, an example, and a way into the cell. */

import { isFault } from '../calculation/result.ts';
import { type Answer, isCellError, isRows } from '../functions/calling/cell.ts';
import { formulaText, syntaxText } from '../functions/calling/formula-text.ts';
import { readSettings } from '../functions/calling/read-settings.ts';
import { type Example, type NamedArgument, TOPICS, type WorksheetFunction } from '../functions/define.ts';
import { functions } from '../functions/index.ts';
import { cautionsBeside } from './caution-card.ts';
import { button, element } from './element.ts';
import { cellWords, typed } from './numbers.ts';
import { putFormula } from './put-formula.ts';
import type { Screen, ScreenTools } from './screen.ts';
import { search } from './search.ts';

const capital = (text: string): string => text[0]!.toUpperCase() + text.slice(1);

const TAKES = { cells: 'one value or a range', range: 'a range', one: 'one value' } as const;

const argumentRow = (a: NamedArgument): HTMLElement =>
  element(
    'div',
    {},
    element('dt', {}, element('code', {}, a.name)),
    element(
      'dd',
      {},
      element('span', {}, capital(a.description)),
      element(
        'span',
        { class: 'from' },
        `${a.repeating ? 'any number of them' : TAKES[a.takes]}${a.optional ? ', may be left out' : ''}`,
      ),
    ),
  );

/** What an example gives, in words with its unit. */
const exampleWords = (f: WorksheetFunction, { args }: Example): string => {
  const answer: Answer = f.call(args);
  if (isRows(answer)) return `a table of ${answer.length} rows and ${answer[0]!.length} columns`;
  if (isCellError(answer)) return `${answer.code}: ${answer.reason}`;
  const read = f.takesSettings ? readSettings(args[f.arguments.length - 1]) : undefined;
  const system = read && !isFault(read) ? read.system : 'metric';
  if (typeof answer === 'number' && f.result.kind === 'number') return typed(answer, f.result.quantity, system);
  return cellWords(answer, undefined, system);
};

/** What is inside an entry, made when it is unfolded. */
const inside = (f: WorksheetFunction, tools: ScreenTools): HTMLElement[] => {
  const [example] = f.examples;
  const formula = formulaText(f.id, example.args);
  const actions = element('p', { class: 'actions' });
  if (tools.host.can('insertFormula'))
    actions.append(
      button(
        'Put in the cell',
        () => void putFormula(formula, tools, actions, 'Now change the values in the brackets to yours.'),
        'main',
        'insert',
      ),
    );
  const beside = cautionsBeside(f.hurts, tools, f);
  return [
    element('p', {}, f.description),
    element('p', {}, element('code', { class: 'formula' }, `=${syntaxText(f.id, f.arguments)}`)),
    ...(f.arguments.length ? [element('dl', { class: 'pairs' }, ...f.arguments.map(argumentRow))] : []),
    element(
      'p',
      { class: 'example' },
      element('span', { class: 'faint' }, 'Example'),
      element('code', { class: 'formula' }, formula),
      element(
        'span',
        {},
        'gives ',
        element('strong', { class: 'number', 'data-result': f.id }, exampleWords(f, example)),
      ),
    ),
    // Beside a number that can hurt somebody, its source stands with its cautions.
    beside ?? element('p', { class: 'faint' }, `${capital(f.basis)}: ${f.source}`),
    actions,
    element(
      'p',
      {},
      element('a', { href: tools.helpAddress(f.id), target: '_blank', rel: 'noopener' }, `Help for ${f.id}`),
    ),
  ];
};

const entry = (f: WorksheetFunction, tools: ScreenTools): HTMLElement => {
  const details = element(
    'details',
    { class: 'entry' },
    element('summary', {}, element('span', { class: 'question' }, f.question), element('code', {}, f.id)),
  );
  let filled = false;
  details.addEventListener('toggle', () => {
    if (filled || !details.open) return;
    filled = true;
    details.append(element('div', { class: 'inside', 'data-block': true }, ...inside(f, tools)));
  });
  return details;
};

/** A topic with its functions folded away. */
const topicElement = (topic: string, tools: ScreenTools): HTMLElement => {
  const here = functions.filter((f) => f.topic === topic);
  const many = here.length === 1 ? '1 function' : `${here.length} functions`;
  return element(
    'details',
    { class: 'topic' },
    element('summary', {}, element('h3', {}, capital(topic)), element('span', { class: 'faint' }, many)),
    ...here.map((f) => entry(f, tools)),
  );
};

const found = (typedWords: string, tools: ScreenTools): readonly HTMLElement[] => {
  const fitting = search(typedWords, functions);
  if (fitting.length === 0)
    return [element('p', {}, 'Nothing fits these words. Try fewer, such as plaster, cloth, weight or layers.')];
  if (typedWords.trim() !== '') return fitting.map((f) => entry(f, tools));
  return TOPICS.filter((topic) => functions.some((f) => f.topic === topic)).map((topic) => topicElement(topic, tools));
};

export const findScreen: Screen = {
  id: 'find',
  title: 'Find a function',
  mount: (place, tools) => {
    const list = element('div', { class: 'entries' });
    const count = element('p', { class: 'faint', role: 'status' });
    const field = element('input', { type: 'search', id: 'pane-find', autocomplete: 'off', spellcheck: 'false' });
    const look = (): void => {
      list.replaceChildren(...found(field.value, tools));
      const many = search(field.value, functions).length;
      count.textContent =
        field.value.trim() === '' ? `${many} functions, by topic` : many === 1 ? '1 function' : `${many} functions`;
    };
    field.addEventListener('input', () => {
      tools.say('');
      look();
    });
    place.append(
      element('h2', { tabindex: '-1' }, 'What do you want to know?'),
      element('label', { for: 'pane-find' }, 'Words to look for'),
      field,
      count,
      list,
    );
    look();
    return {};
  },
};
