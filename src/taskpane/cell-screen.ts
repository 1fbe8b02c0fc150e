/** This cell: what was calculated, from what, and how each number is known; or why there is an error. */
import { isCellError, type Rows } from '../functions/calling/cell.ts';
import { type Account, accountOf, type InputLine, type SettingLine } from './account.ts';
import { cautionsBeside } from './caution-card.ts';
import { button, element, folded } from './element.ts';
import { readFormula } from './formula.ts';
import { liveCautionArea } from './live-caution-area.ts';
import { type LiveCautions, liveCautionsOf, PLAN_TABLES } from './live-cautions.ts';
import type { Screen, ScreenTools } from './screen.ts';
import { type ActiveCell, SheetProblem } from './sheet-host.ts';

/** Functions with a drawing. */
const DRAWN: ReadonlySet<string> = new Set(['PLAN', 'FEET', 'MARGIN', 'TIP_ANGLE', 'STABLE', 'FOOT_LOADS', 'BALANCE']);

const nameOf = ({ sheet, address }: ActiveCell): string => `${address} on ${sheet}`;

const inputRow = ({ name, value, known, from }: InputLine): HTMLElement =>
  element(
    'div',
    {},
    element('dt', {}, name.replaceAll('_', ' ')),
    element(
      'dd',
      {},
      element('span', { class: known ? 'number' : 'from' }, value),
      from !== '' && element('code', { class: 'from' }, from),
    ),
  );

const settingRow = ({ name, value, own, basis }: SettingLine): HTMLElement =>
  element(
    'div',
    {},
    element('dt', {}, name),
    element(
      'dd',
      {},
      element('span', { class: 'number' }, value),
      element('span', { class: 'from' }, own ? 'set by you' : basis),
    ),
  );

const capital = (text: string): string => text[0]!.toUpperCase() + text.slice(1);

const list = (rows: readonly HTMLElement[]): HTMLElement => element('dl', { class: 'pairs' }, ...rows);

const settingsOf = ({ settings }: Account): HTMLElement | undefined => {
  if (!settings.length) return undefined;
  const own = settings.filter((one) => one.own).length;
  const words = own === 0 ? `${settings.length}, all by default` : `${settings.length}, ${own} set by you`;
  return folded(`Settings used: ${words}`, list(settings.map(settingRow)));
};

/** What to do where a call cannot be followed. */
const askTheSheet = (formula: string): HTMLElement =>
  element(
    'p',
    {},
    'To have it checked in the sheet, type into an empty cell: ',
    element('code', { class: 'formula' }, formula),
  );

const accountElement = (account: Account, tools: ScreenTools): HTMLElement => {
  const { f, call, result, reason, notFollowed, inputs, doubts } = account;
  const box = element(
    'article',
    { class: 'account', 'data-block': true },
    element('h3', {}, f?.question ?? `JACKET.${call.id}`),
  );
  if (result !== undefined) {
    box.append(element('p', { class: 'result', 'data-result': call.id }, result));
    box.append(element('p', { class: 'faint' }, `${f!.result.what}. Basis: ${f!.basis}.`));
    // Where the number can hurt somebody, its limits stand with its cautions.
    for (const { text, holds } of f!.hurts?.length ? [] : f!.limits)
      if (!holds) box.append(element('p', { class: 'faint' }, `${capital(text)}.`));
  }
  if (reason !== undefined)
    box.append(
      element('div', { class: 'reason' }, element('strong', {}, 'Why there is an error'), element('p', {}, reason)),
    );
  if (notFollowed !== undefined) box.append(element('p', {}, notFollowed));
  if (doubts.length)
    box.append(
      element(
        'div',
        { class: 'reason' },
        element('strong', {}, 'Doubtful'),
        ...doubts.map((text) => element('p', {}, text)),
      ),
    );
  // Where a call fails there is no number to trust too far.
  const beside = reason === undefined ? cautionsBeside(f?.hurts, tools, f) : undefined;
  if (beside) box.append(beside);
  if (inputs.length) box.append(element('h4', {}, 'From'), list(inputs.map(inputRow)));
  const settings = settingsOf(account);
  if (settings) box.append(settings);
  if (!f) return box;
  if (notFollowed !== undefined) box.append(askTheSheet(account.checkFormula));
  box.append(
    folded(
      'How it is calculated, and how that is known',
      element('p', {}, f.equation),
      element('p', {}, `${f.basis}: ${f.source}`),
    ),
    element(
      'p',
      {},
      element('a', { href: tools.helpAddress(f.id), target: '_blank', rel: 'noopener' }, `Help for ${f.id}`),
    ),
  );
  return box;
};

/** What an error means that no call of ours gives. */
const errorWords = (cell: ActiveCell, ours: boolean): string | undefined => {
  if (!isCellError(cell.value)) return undefined;
  if (ours && cell.value.code === '#NAME?')
    return 'The sheet does not know the function yet. Calculate the workbook again; if that does not help, close the pane and open it again.';
  if (ours && cell.value.code === '#BUSY!') return 'The sheet is still calculating.';
  if (ours && cell.value.code === '#SPILL!')
    return 'The result needs more cells than are free. Clear the cells below and to the right.';
  return cell.value.reason || undefined;
};

const nothingHere = (cell: ActiveCell | undefined, tools: ScreenTools): readonly HTMLElement[] => [
  element(
    'p',
    { class: 'lead' },
    cell ? `${nameOf(cell)} holds no function for storage jackets.` : 'No cell is selected.',
  ),
  element(
    'p',
    {},
    'Select a cell with one, and this page tells what went in, which defaults were used and how each is known.',
  ),
  element(
    'p',
    { class: 'actions' },
    button('Find a function', () => tools.show('find'), 'main'),
  ),
];

/** Where the table begins in which the cell lies: `B2` for `C5` three rows down and one column along. */
const anchorOf = ({ address, spillRow, spillColumn }: ActiveCell): string => {
  const [, letters, row] = /^([A-Z]+)(\d+)$/.exec(address) ?? ['', 'A', '1'];
  let column = [...letters!].reduce((n, letter) => 26 * n + letter.charCodeAt(0) - 64, 0) - spillColumn;
  let name = '';
  for (; column > 0; column = Math.floor((column - 1) / 26))
    name = String.fromCharCode(65 + ((column - 1) % 26)) + name;
  return `${name}${Number(row) - spillRow}`;
};

/** The table as the sheet shows it, where its call could not be followed. */
const spilledTable = async (
  { f, answered, notFollowed }: Account,
  cell: ActiveCell,
  tools: ScreenTools,
): Promise<Rows | undefined> => {
  if (!f || !answered || notFollowed === undefined || !PLAN_TABLES.has(f.id)) return undefined;
  try {
    return await tools.host.read(`${anchorOf(cell)}#`, cell.sheet);
  } catch (problem) {
    if (problem instanceof SheetProblem) return undefined;
    throw problem;
  }
};

interface Contents {
  readonly elements: readonly HTMLElement[];
  /** Name of the cell. */
  readonly where: string;
  readonly live: readonly LiveCautions[];
  /** What says whether something is new. */
  readonly text: string;
  /** Calls with the place where a drawing of each may stand. */
  readonly places: readonly { readonly account: Account; readonly place: HTMLElement }[];
}

const plainContents = (where: string, elements: readonly HTMLElement[]): Contents => ({
  elements,
  where,
  live: [],
  text: elements.map(({ outerHTML }) => outerHTML).join(''),
  places: [],
});

const contents = async (tools: ScreenTools): Promise<Contents> => {
  const cell = await tools.host.selection();
  const { calls, whole } = readFormula(cell?.formula ?? '');
  if (!cell || calls.length === 0) return plainContents('', nothingHere(cell, tools));
  const accounts: Account[] = [];
  const live: LiveCautions[] = [];
  for (const call of calls) {
    const account = await accountOf(call, tools.host, cell, whole);
    accounts.push(account);
    live.push(...liveCautionsOf(account, cell, await spilledTable(account, cell, tools)));
  }
  const error = errorWords(cell, true);
  const made: HTMLElement[] = [
    element(
      'p',
      { class: 'where' },
      element('strong', {}, nameOf(cell)),
      element('code', { class: 'formula' }, cell.formula),
    ),
  ];
  if (error !== undefined && !accounts.some(({ reason }) => reason === error))
    made.push(
      element('div', { class: 'reason' }, element('strong', {}, 'Why there is an error'), element('p', {}, error)),
    );
  if (!whole)
    made.push(
      element(
        'p',
        { class: 'faint' },
        'The formula goes on calculating with what stands below; the sheet shows the end result.',
      ),
    );
  const places = accounts.map((account) => ({ account, place: element('div', { class: 'cell-drawing' }) }));
  for (const { account, place } of places) {
    // A drawing has numbers too: it stands in one block with the limits and cautions of its call.
    const box = accountElement(account, tools);
    box.append(place);
    made.push(box);
  }
  if (isCellError(cell.value) && tools.host.can('recalculate'))
    made.push(
      element(
        'p',
        { class: 'actions' },
        button('Calculate the workbook again', () => {
          tools.host.recalculate().then(
            () => tools.say('Calculated again.'),
            (problem: unknown) => tools.say(problemWords(problem)),
          );
        }),
      ),
    );
  return { ...plainContents(nameOf(cell), made), live, places };
};

/** Adds the drawings. Their code is fetched when there is something to look at, so that the functions of the sheet do not wait for it. */
const draw = async ({ places }: Contents, tools: ScreenTools): Promise<void> => {
  if (!places.some(({ account }) => account.f && DRAWN.has(account.f.id))) return;
  const { cellDrawing } = await import(/* webpackChunkName: "jacket" */ './jacket-screens.ts');
  for (const [i, { account, place }] of places.entries()) {
    const drawing = cellDrawing(account, i + 1, tools);
    if (drawing) place.replaceChildren(drawing);
  }
};

/** What people are told when the sheet cannot do something. */
export const problemWords = (problem: unknown): string =>
  problem instanceof SheetProblem
    ? problem.message
    : 'That did not work. Select the cell again, or open the pane again.';

export const cellScreen: Screen = {
  id: 'cell',
  title: 'This cell',
  mount: (place, tools) => {
    const body = element('div', {});
    const live = liveCautionArea(tools);
    place.append(element('h2', { tabindex: '-1' }, 'What does this cell say?'), live.element, body);
    let asked = 0;
    let shown = '';
    return {
      refresh: async () => {
        asked += 1;
        const mine = asked;
        let made: Contents;
        try {
          made = await contents(tools);
        } catch (problem) {
          made = plainContents('', [element('p', {}, problemWords(problem))]);
        }
        // Another cell was selected meanwhile: its own call of this function shows it.
        if (mine !== asked) return;
        // Nothing new: what somebody has unfolded stays so.
        live.show(made.where, made.live);
        if (made.text === shown) return;
        shown = made.text;
        body.replaceChildren(...made.elements);
        await draw(made, tools).catch(() => tools.say('The drawing could not be fetched. Select the cell again.'));
      },
    };
  },
};
