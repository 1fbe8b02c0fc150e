/** The pane beside the sheet: its screens, one at a time. */
import { cautionsRead, cautionsScreen } from './cautions-screen.ts';
import { cellScreen } from './cell-screen.ts';
import { element } from './element.ts';
import { findScreen } from './find-screen.ts';
import { lazyScreen } from './lazy-screen.ts';
import { guardedMemory } from './memory.ts';
import { planDesk } from './plan-desk.ts';
import type { Memory, MountedScreen, Screen, ScreenTools } from './screen.ts';
import type { SheetHost } from './sheet-host.ts';

export interface PaneOptions {
  /** Address of the help page of a function. Left out: `help/<function>.html` beside the page. */
  readonly helpAddress?: (id: string) => string;
  /** Where it is kept that the cautions were read. Left out: the browser's own store, or nothing where that is closed. */
  readonly memory?: Memory;
  /** Further screens after the pane's own. */
  readonly screens?: readonly Screen[];
  /** A plain sentence above all screens, such as why there is no sheet. */
  readonly notice?: string;
}

export interface Pane {
  /** Brings a screen to the front: `cautions`, `cell`, `find`, `plan`, `print`, or one that was handed over. */
  show(screen: string): void;
  /** Looks at the sheet again. */
  refresh(): void;
  /** Empties the element and ends all listening. */
  close(): void;
}

/** Address of the help page beside the page: `SHELL_AREA` has `help/shell-area.html`. */
const helpBesidePage = (id: string): string => `help/${id.toLowerCase().replaceAll('_', '-')}.html`;

/** How long news of the sheet is gathered before the pane looks [ms]. Our own choice: arrow keys held down come faster than that. */
const GATHER = 80;

interface Place {
  readonly screen: Screen;
  readonly section: HTMLElement;
  readonly tab: HTMLElement;
  mounted?: MountedScreen;
}

/**
 * Builds the pane inside an element. The element keeps its place and size; everything inside is the pane's, under the class `pane`, and nothing
 * outside is touched. Styles: look.css, then pane.css.
 *
 * @param home an empty element of the page
 * @param host the sheet
 */
export const mountPane = (home: HTMLElement, host: SheetHost, options: PaneOptions = {}): Pane => {
  const memory = guardedMemory(() => options.memory ?? window.localStorage);
  const status = element('p', { class: 'say', role: 'status' });
  let front: Place | undefined;
  let closed = false;

  const refresh = (): void => void front?.mounted?.refresh?.();

  /** Brings a screen to the front; where that follows from something inside another screen, reading goes on at its heading. */
  const bring = (id: string, readOn: boolean): void => {
    const next = places.find(({ screen }) => screen.id === id);
    if (!next) return;
    status.textContent = '';
    front = next;
    next.mounted ??= next.screen.mount(next.section, tools);
    for (const place of places) {
      place.section.hidden = place !== next;
      if (place === next) place.tab.setAttribute('aria-current', 'true');
      else place.tab.removeAttribute('aria-current');
    }
    if (readOn) next.section.querySelector('h2')?.focus();
    refresh();
  };

  const tools: ScreenTools = {
    host,
    memory,
    helpAddress: options.helpAddress ?? helpBesidePage,
    show: (id) => bring(id, true),
    say: (text) => {
      status.textContent = text;
    },
  };

  const desk = planDesk();
  const more = () => import(/* webpackChunkName: "jacket" */ './jacket-screens.ts');
  const screens = [
    cautionsScreen,
    cellScreen,
    findScreen,
    lazyScreen('plan', 'Plan one jacket', async () => (await more()).planScreen(desk)),
    lazyScreen('print', 'Print', async () => (await more()).printScreen(desk)),
  ];
  const places: Place[] = [...screens, ...(options.screens ?? [])].map((screen) => ({
    screen,
    section: element('section', { class: `screen screen-${screen.id}`, 'aria-label': screen.title, hidden: true }),
    tab: element('button', { type: 'button', class: 'tab', onclick: () => bring(screen.id, false) }, screen.title),
  }));

  home.replaceChildren(
    element(
      'div',
      { class: 'pane' },
      options.notice !== undefined && element('p', { class: 'caution notice' }, options.notice),
      element('nav', { class: 'tabs', 'aria-label': 'Pane' }, ...places.map(({ tab }) => tab)),
      ...places.map(({ section }) => section),
      status,
    ),
  );
  // The cautions are always there, since they go on paper with whatever is printed.
  places[0]!.mounted = cautionsScreen.mount(places[0]!.section, tools);
  bring(cautionsRead(memory) ? 'cell' : 'cautions', false);

  let timer: ReturnType<typeof setTimeout> | undefined;
  const news = (): void => {
    clearTimeout(timer);
    if (!closed) timer = setTimeout(refresh, GATHER);
  };
  let end = (): void => undefined;
  host.onChange(news).then(
    (stop) => {
      if (closed) stop();
      else end = stop;
    },
    (problem: unknown) =>
      tools.say(problem instanceof Error ? problem.message : 'The sheet does not say when it changes.'),
  );

  return {
    show: (id) => bring(id, false),
    refresh,
    close: () => {
      closed = true;
      clearTimeout(timer);
      end();
      home.replaceChildren();
    },
  };
};
