/** Print: the shop card and the labels of the jacket that was planned, and the cautions for the wall. */
import { cautionsPage } from './cautions-page.ts';
import { button, element } from './element.ts';
import type { JacketPlan } from './jacket-plan.ts';
import { labelsPage } from './labels.ts';
import { paperFile, printPages } from './on-paper.ts';
import type { PlanDesk } from './plan-desk.ts';
import { specimenWords } from './plan-drawings.ts';
import type { Screen, ScreenTools } from './screen.ts';
import { shopCard } from './shop-card.ts';
import { saveText } from './table-element.ts';

/** Said where the place of the pane does not print. */
const BLOCKED =
  'The spreadsheet does not let this pane print. Save the page as a file, open it in a browser and print it there; or open the workbench page and print from its pane.';

interface Paper {
  readonly title: string;
  /** What stands on it. */
  readonly holds: string;
  readonly action: string;
  /** Beginning of the name of its file. */
  readonly file: string;
  readonly page: () => HTMLElement;
  readonly main?: boolean;
}

const paperElement = ({ title, holds, action, file, page, main }: Paper, tools: ScreenTools): HTMLElement =>
  element(
    'section',
    { class: 'paper' },
    element('h3', {}, title),
    element('p', {}, holds),
    element(
      'p',
      { class: 'actions' },
      button(action, () => tools.say(printPages([page()]) ? '' : BLOCKED), main ? 'main' : 'plain'),
      button(
        `Save the ${title.toLowerCase()} as a page`,
        () => {
          saveText(paperFile(title, [page()]), 'text/html', `${file}.html`);
          tools.say(`Handed to the browser as ${file}.html. Open it and print it.`);
        },
        'link',
      ),
    ),
  );

const CAUTIONS_PAPER: Paper = {
  title: 'Cautions',
  holds: 'All cautions with their reasons and sources, one page for the wall.',
  action: 'Print the cautions',
  file: 'cautions',
  page: cautionsPage,
};

const papersOf = (jacket: JacketPlan): readonly Paper[] => [
  {
    title: 'Shop card',
    holds:
      'One page: what to mix in which order, what to cut, where the feet go, when each step begins, cautions, and lines for what was really used.',
    action: 'Print the shop card',
    file: 'shop-card',
    page: () => shopCard(jacket),
    main: true,
  },
  {
    title: 'Labels',
    holds:
      'One page to cut apart: nine labels for all sides of both halves, and a place for the bag with the original tag.',
    action: 'Print the labels',
    file: 'labels',
    page: () => labelsPage(jacket),
  },
  CAUTIONS_PAPER,
];

const noPlan = (tools: ScreenTools): HTMLElement =>
  element(
    'section',
    {},
    element('p', {}, 'The shop card and the labels need a plan first.'),
    element(
      'p',
      { class: 'actions' },
      button('Plan one jacket', () => tools.show('plan'), 'main'),
    ),
  );

const planned = (jacket: JacketPlan): HTMLElement => {
  const { length, width, height, weight } = jacket.form;
  const [long, heavy] = jacket.system === 'metric' ? ['cm', 'kg'] : ['in', 'lb'];
  const name = specimenWords(jacket) || 'a jacket without number';
  return element(
    'p',
    { class: 'lead' },
    `For ${name}: ${length} × ${width} × ${height} ${long}, ${weight} ${heavy}, ${jacket.padding}.`,
  );
};

export const printScreen = (desk: PlanDesk): Screen => ({
  id: 'print',
  title: 'Print',
  mount: (place, tools) => {
    const list = element('div');
    let shown: JacketPlan | null | undefined = null;
    place.append(
      element('h2', { tabindex: '-1' }, 'What goes on paper?'),
      element('p', { class: 'faint' }, 'Black on white; A4 and letter both fit.'),
      list,
    );
    return {
      refresh: () => {
        if (desk.plan === shown) return;
        shown = desk.plan;
        const papers = desk.plan ? papersOf(desk.plan) : [CAUTIONS_PAPER];
        list.replaceChildren(
          desk.plan ? planned(desk.plan) : noPlan(tools),
          ...papers.map((paper) => paperElement(paper, tools)),
        );
      },
    };
  },
});
