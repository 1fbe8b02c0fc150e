/** All help pages. */
import { functions } from '../../functions/index.ts';
import { type Page, pageText } from './frame.ts';
import { functionPage } from './function-page.ts';
import { GUIDES } from './guides/index.ts';
import { indexPage, topicPage, usedTopics } from './index-page.ts';
import { cautionsPage, settingsPage, sourcesPage } from './list-pages.ts';
import { INDEX_FILE } from './names.ts';
import { filled, type Guide } from './pieces.ts';
import { searchIndex } from './search-index.ts';

/** The page of a guide. */
export const guidePage = (guide: Guide): Page => ({
  file: guide.file,
  title: guide.title,
  heading: guide.question,
  kind: 'guide',
  words: guide.summary,
  above: `<p class="above"><a href="${INDEX_FILE}">All help</a> <span aria-hidden="true">›</span> ${guide.title}</p>`,
  body: filled(guide),
});

export const pages = (): Page[] => [
  indexPage(),
  ...GUIDES.map(guidePage),
  cautionsPage(),
  settingsPage(),
  sourcesPage(),
  ...usedTopics.map(topicPage),
  ...functions.map(functionPage),
];

/** Texts of all files that are made, by name. Beside them stand look.css, help.css, search.js and copy.js as they are. */
export const helpFiles = (): Map<string, string> => {
  const all = pages();
  const files = new Map(all.map((page): [string, string] => [page.file, pageText(page)]));
  if (files.size !== all.length) throw new Error('two help pages have one name');
  return files.set('search-index.js', searchIndex(all));
};
