/**
 * Puts pages on paper. They stand in the page for as long as the printing lasts, outside of what is seen, and its print styles show nothing but them.
 */
import { element } from './element.ts';

/** The highest page that fits both usual papers [px], 96 to the inch: letter, 279.4 mm, without margins of 10 mm, and a little less. */
const MOST_HEIGHT = 975;

/** Steps by which a page is made lower, one after the other, until it fits. */
const SHORTER = ['small', 'without-layout', 'short-cautions', 'smaller'] as const;

const OWN = 'print-own';

/** Makes pages fit that are too high fit. They must stand in the document. */
const shorten = (pages: readonly HTMLElement[]): void => {
  for (const page of pages)
    for (const step of SHORTER) {
      if (page.getBoundingClientRect().height <= MOST_HEIGHT) break;
      page.classList.add(step);
    }
};

const laidOut = (pages: readonly HTMLElement[]): HTMLElement => {
  const home = element('div', { class: 'on-paper' }, ...pages);
  for (const old of document.querySelectorAll('.on-paper')) old.remove();
  document.body.append(home);
  shorten(pages);
  return home;
};

/**
 * Prints pages.
 *
 * @returns false where the place does not print, such as a frame that may not
 */
export const printPages = (pages: readonly HTMLElement[]): boolean => {
  const home = laidOut(pages);
  document.body.classList.add(OWN);
  let begun = false;
  const begin = (): void => {
    begun = true;
  };
  const end = (): void => {
    home.remove();
    document.body.classList.remove(OWN);
    removeEventListener('beforeprint', begin);
    removeEventListener('afterprint', end);
  };
  addEventListener('beforeprint', begin);
  addEventListener('afterprint', end);
  try {
    window.print();
  } catch {
    // Told below, like a call that does nothing.
  }
  if (!begun) end();
  return begun;
};

/** The style rules that pages on paper need. */
const paperStyles = (): string => {
  const texts: string[] = [];
  for (const sheet of document.styleSheets) {
    try {
      for (const { cssText } of sheet.cssRules) if (/on-paper|@page jacket/.test(cssText)) texts.push(cssText);
    } catch {
      // A sheet of another origin: none of ours.
    }
  }
  return texts.join('\n');
};

const escaped = (text: string): string => text.replace(/&/g, '&amp;').replace(/</g, '&lt;');

/** The pages as one file that any browser shows and prints. */
export const paperFile = (title: string, pages: readonly HTMLElement[]): string => {
  const home = laidOut(pages);
  const { outerHTML } = home;
  home.remove();
  return `<!doctype html>
<html lang="en">
<head><meta charset="utf-8"><title>${escaped(title)}</title><style>
${paperStyles()}
</style></head>
<body class="${OWN} on-paper-alone">${outerHTML}</body>
</html>
`;
};
