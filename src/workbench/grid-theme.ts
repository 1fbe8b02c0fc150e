/** The grid in our colours: its own accent and greys are replaced by ours. */

import { type Injector, ThemeService } from '@univerjs/core';
import type { FUniver } from '@univerjs/core/facade';

/** Clay from its palest to its darkest; 600 is the accent of the page. */
const CLAY = {
  50: '#FBF4F0',
  100: '#F5E6DE',
  200: '#EACFC1',
  300: '#E0A27F',
  400: '#C07A57',
  500: '#A35F3E',
  600: '#8A4B2F',
  700: '#753E26',
  800: '#5F331F',
  900: '#4A2818',
};

/** Paper to ink. */
const GREY = {
  50: '#FAF8F4',
  100: '#F1EDE5',
  200: '#D8D2C7',
  300: '#B9B4AB',
  400: '#8A8B8C',
  500: '#5A6067',
  600: '#3A3F44',
  700: '#2E3236',
  800: '#26292D',
  900: '#1E2124',
};

/** Puts our colours in place of the grid's own. */
export function installTheme(injector: Injector): void {
  const service = injector.get(ThemeService);
  service.setTheme({
    ...service.getCurrentTheme(),
    white: '#FFFFFF',
    black: '#23272B',
    primary: CLAY,
    blue: CLAY,
    indigo: CLAY,
    gray: GREY,
  });
}

/** Letters over columns and numbers beside rows in the type and tones of the page. */
export function styleHeadings(api: FUniver): void {
  const headerStyle = {
    fontFamily: 'system-ui, sans-serif',
    fontSize: 12,
    fontColor: GREY[500],
    backgroundColor: GREY[50],
    borderColor: GREY[200],
  };
  const book = api.getActiveWorkbook();
  book?.customizeColumnHeader({ headerStyle });
  book?.customizeRowHeader({ headerStyle });
}
