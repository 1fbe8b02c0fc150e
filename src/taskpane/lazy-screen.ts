/** A screen whose code is fetched when it is first opened, so that the functions of the sheet do not wait for it. */
import { element } from './element.ts';
import type { MountedScreen, Screen } from './screen.ts';

/** @param load fetches the screen */
export const lazyScreen = (id: string, title: string, load: () => Promise<Screen>): Screen => ({
  id,
  title,
  mount: (place, tools) => {
    let mounted: MountedScreen | undefined;
    const heading = element('h2', { tabindex: '-1' }, title);
    const wait = element('p', { class: 'faint' }, 'One moment…');
    place.append(heading, wait);
    load().then(
      (screen) => {
        const wasRead = document.activeElement === heading;
        place.replaceChildren();
        mounted = screen.mount(place, tools);
        void mounted.refresh?.();
        if (wasRead) place.querySelector('h2')?.focus();
      },
      () => {
        wait.textContent = 'This screen could not be fetched. Close the pane and open it again.';
      },
    );
    return { refresh: () => mounted?.refresh?.() };
  },
});
