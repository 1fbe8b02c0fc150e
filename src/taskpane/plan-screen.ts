/** Plan one jacket: a short form, and then everything that the functions say about it. */
import { cautionsBeside } from './caution-card.ts';
import { cutLines, rollWords } from './cut-lines.ts';
import { button, element, folded } from './element.ts';
import { isNoPlan, type JacketPlan, jacketPlan, planCell } from './jacket-plan.ts';
import { mixLines } from './mix-lines.ts';
import type { PlanDesk } from './plan-desk.ts';
import { compareDrawing, feetDrawing, layoutDrawing } from './plan-drawings.ts';
import { planFields } from './plan-fields.ts';
import { PARTS, type PlanPart } from './plan-parts.ts';
import { putFormula } from './put-formula.ts';
import { lineOf } from './reading.ts';
import type { Screen, ScreenTools } from './screen.ts';
import { drawingFigure, tableElement } from './table-element.ts';
import { formulaOf, reasonOf, type Worked } from './worked.ts';

/** The formula of what stands above, and the way into the sheet. */
const inTheSheet = (worked: Worked, tools: ScreenTools, main = false): HTMLElement => {
  const formula = formulaOf(worked);
  const actions = element('p', { class: 'actions' });
  if (tools.host.can('insertFormula'))
    actions.append(
      button(
        'Put in the sheet',
        () => void putFormula(formula, tools, actions, 'Its table needs free cells below and to the right.'),
        main ? 'main' : 'plain',
        'insert',
      ),
    );
  return element('div', {}, folded('The same as a formula', element('code', { class: 'formula' }, formula)), actions);
};

const lineRow = (jacket: JacketPlan, label: string): HTMLElement => {
  const { value, range } = lineOf(jacket, label);
  return element(
    'tr',
    {},
    element('th', { scope: 'row' }, label),
    element(
      'td',
      {},
      element('span', { class: 'number' }, value),
      range !== '' && element('span', { class: 'from' }, range),
    ),
  );
};

const part = (jacket: JacketPlan, { title, rows, hurts }: PlanPart, tools: ScreenTools): HTMLElement =>
  element(
    'section',
    {},
    element('h3', {}, title),
    cautionsBeside(hurts, tools),
    element(
      'table',
      { class: 'rows' },
      element('caption', { class: 'unseen' }, `${title}: value, and below it from low to high`),
      element('tbody', {}, ...rows.map((label) => lineRow(jacket, label))),
    ),
  );

const withReason = (worked: Worked, make: () => HTMLElement): HTMLElement => {
  const reason = reasonOf(worked);
  return reason === undefined ? make() : element('p', { class: 'reason' }, reason);
};

const mixes = (jacket: JacketPlan, tools: ScreenTools): HTMLElement =>
  element(
    'section',
    {},
    element('h3', {}, 'What goes into each bucket'),
    element('p', {}, 'Water first, then the plaster into the water, never the other way.'),
    withReason(jacket.mixes, () =>
      tableElement('Mixes in the order in which they are made', [
        ['half', 'mixes', 'water', 'plaster', 'slurry'],
        ...mixLines(jacket).map(({ half, count, water, plaster, slurry }) => [
          half,
          String(count),
          water,
          plaster,
          slurry,
        ]),
      ]),
    ),
    inTheSheet(jacket.mixes, tools),
  );

const cuts = (jacket: JacketPlan, tools: ScreenTools): HTMLElement =>
  element(
    'section',
    {},
    element('h3', {}, 'Which pieces of cloth are cut'),
    withReason(jacket.cuts, () =>
      element(
        'div',
        {},
        tableElement('Pieces of cloth', [
          ['purpose', 'pieces', 'size of one'],
          ...cutLines(jacket).map(({ purpose, pieces, size }) => [purpose, pieces, size]),
          ['roll', '', `${rollWords(jacket)} long`],
        ]),
        drawingFigure('Pieces of cloth on the roll', 'cloth', (id, width) => layoutDrawing(jacket, id, width), tools) ??
          element('p', { class: 'faint' }, 'There is no drawing of these pieces.'),
      ),
    ),
    inTheSheet(jacket.cuts, tools),
  );

/** Everything about a jacket. */
const told = (jacket: JacketPlan, tools: ScreenTools): HTMLElement[] => {
  const advice = planCell(jacket.plan, 'advice').answer;
  const feet = drawingFigure(
    'Seen from above, on its feet',
    'feet',
    (id, width) => feetDrawing(jacket, id, width),
    tools,
  );
  const compared = drawingFigure(
    'Felt against foam',
    'padding',
    (id, width) => compareDrawing(jacket, id, width),
    tools,
  );
  return [
    element(
      'p',
      { class: 'lead advice' },
      typeof advice === 'string' && advice !== ''
        ? advice
        : 'Nothing is out of line. Weigh it all the same before it is lifted.',
    ),
    ...jacket.doubts.map((doubt) => element('p', {}, `Doubtful: this holds for ${doubt}.`)),
    inTheSheet(jacket.plan, tools),
    element('p', { class: 'faint' }, 'Estimates. Below each value stands from where to where it may lie.'),
    ...PARTS.map((one) => part(jacket, one, tools)),
    feet
      ? element('section', {}, element('h3', {}, 'Where its feet go'), feet)
      : element('p', {}, 'There is no drawing of its feet.'),
    mixes(jacket, tools),
    cuts(jacket, tools),
    element(
      'section',
      {},
      element('h3', {}, 'Felt or foam'),
      compared ?? element('p', {}, 'There is no comparison.'),
      inTheSheet(jacket.compare, tools),
    ),
    element(
      'p',
      { class: 'actions' },
      button('To the print', () => tools.show('print')),
    ),
  ];
};

/** How long a change is left to settle before the page moves [ms]. Our own choice: a click takes about 100. */
const SETTLE = 400;

export const planScreen = (desk: PlanDesk): Screen => ({
  id: 'plan',
  title: 'Plan one jacket',
  mount: (place, tools) => {
    const result = element('div', { class: 'plan-result' });
    const general = element('p', { class: 'field-reason' });
    const fields = planFields(desk.form, element('button', { type: 'submit', class: 'main' }, 'Plan it'));
    let follows = false;
    let timer: ReturnType<typeof setTimeout> | undefined;
    const look = (asked: boolean): void => {
      clearTimeout(timer);
      desk.form = fields.read();
      const jacket = jacketPlan(desk.form);
      desk.plan = isNoPlan(jacket) ? undefined : jacket;
      follows = true;
      if (isNoPlan(jacket)) {
        fields.tell(jacket.reasons);
        general.textContent = jacket.reason ?? '';
        result.replaceChildren();
        if (asked) fields.focusFirst();
        tools.say(jacket.reason ?? '');
        return;
      }
      fields.tell({});
      general.textContent = '';
      result.replaceChildren(...told(jacket, tools));
      tools.say(asked ? 'The plan stands below.' : '');
      if (asked) result.querySelector<HTMLElement>('.advice')?.scrollIntoView({ block: 'start' });
    };
    fields.place.addEventListener('submit', (event) => {
      event.preventDefault();
      look(true);
    });
    // Once a plan was asked for, it follows the form. Not at once: what moves under a finger is missed.
    fields.place.addEventListener('change', () => {
      clearTimeout(timer);
      if (follows) timer = setTimeout(() => look(false), SETTLE);
    });
    place.append(element('h2', { tabindex: '-1' }, 'What does one jacket need?'), fields.place, general, result);
    return {};
  },
});
