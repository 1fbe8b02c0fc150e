/** The pane beside the sheet: its screens, one at a time. */
import type { Memory, Screen } from './screen.ts';
import type { SheetHost } from './sheet-host.ts';

export interface PaneOptions {
  /** Address of the help page of a function. Left out: `help/<function>.html` beside the page. */
  readonly helpAddress?: (id: string) => string;
  /** Where it is kept that the cautions were read. Left out: the browser's own store, or nothing where that is closed. */
  readonly memory?: Memory;
  /** Further screens after the pane's own. */
  readonly screens?: readonly Screen[];
}

export interface Pane {
  /** Brings a screen to the front: `cautions`, `cell`, `find`, or one that was handed over. */
  show(screen: string): void;
  /** Looks at the sheet again. */
  refresh(): void;
  /** Empties the element and ends all listening. */
  close(): void;
}

/**
 * Builds the pane inside an element. The element keeps its place and size; everything inside is the pane's, under the class `pane`, and nothing
 * outside is touched. Styles: look.css, then pane.css.
 *
 * @param element an empty element of the page
 * @param host the sheet
 */
export const mountPane = (element: HTMLElement, host: SheetHost, options: PaneOptions = {}): Pane => {
  element.replaceChildren();
  void host;
  void options;
  return { show: () => undefined, refresh: () => undefined, close: () => element.replaceChildren() };
};
