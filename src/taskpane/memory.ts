/** What the pane remembers between visits: in the browser's own store where that may be used, else for as long as the page is open. */
import type { Memory } from './screen.ts';

/**
 * @param open hands over the browser's store; it may throw where a page in a frame is refused it
 * @returns a memory that never throws
 */
export const guardedMemory = (open: () => Memory): Memory => {
  const kept = new Map<string, string>();
  const attempt = <T>(use: (store: Memory) => T): T | undefined => {
    try {
      return use(open());
    } catch {
      return undefined;
    }
  };
  return {
    getItem: (key) => kept.get(key) ?? attempt((store) => store.getItem(key)) ?? null,
    setItem: (key, value) => {
      kept.set(key, value);
      attempt((store) => store.setItem(key, value));
    },
  };
};
