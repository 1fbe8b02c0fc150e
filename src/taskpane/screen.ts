/** A screen of the pane, and what each is handed. */
import type { SheetHost } from './sheet-host.ts';

/** Keeps a few words between visits. The browser's own store has this shape. */
export interface Memory {
  getItem(key: string): string | null;
  setItem(key: string, value: string): void;
}

/** What a screen may use. */
export interface ScreenTools {
  readonly host: SheetHost;
  readonly memory: Memory;
  /** Address of the help page of a function. */
  readonly helpAddress: (id: string) => string;
  /** Brings another screen to the front. */
  readonly show: (screen: string) => void;
  /** Says something short to people, also to those who listen to a screen reader. */
  readonly say: (text: string) => void;
}

/** What a screen answers once it stands. */
export interface MountedScreen {
  /** The sheet may have changed, or the screen has come to the front: look again. Not called while the screen is hidden. */
  refresh?(): void | Promise<void>;
}

export interface Screen {
  /** Short name for code, unique in the pane: `cell`. */
  readonly id: string;
  /** What stands on its tab. */
  readonly title: string;
  /** Builds the screen inside `element`, once. */
  mount(element: HTMLElement, tools: ScreenTools): MountedScreen;
}
