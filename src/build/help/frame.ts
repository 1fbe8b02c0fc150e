/** What every help page has around it. */
import { VERSION } from '../../calculation/version.ts';
import { FOLLOW, PLANNING } from '../../texts/cautions.ts';
import { escaped } from '../html.ts';
import { CAUTIONS_FILE, INDEX_FILE, SETTINGS_FILE, SOURCES_FILE } from './names.ts';

export interface Page {
  readonly file: string;
  /** What stands in the title bar. */
  readonly title: string;
  /** The heading, a question where it can be one. */
  readonly heading: string;
  /** A line above the heading, in HTML. */
  readonly above?: string;
  /** The page under its heading, in HTML. */
  readonly body: string;
  /** Words for the search, beside title and heading. */
  readonly words: string;
  readonly kind: 'function' | 'topic' | 'guide' | 'list' | 'index';
}

const NAV = [
  [INDEX_FILE, 'All help'],
  ['guide-first-jacket.html', 'First jacket'],
  [SETTINGS_FILE, 'Settings'],
  [SOURCES_FILE, 'Sources'],
  [CAUTIONS_FILE, 'Cautions'],
] as const;

/** A whole page as text. */
export const pageText = ({ file, title, heading, above = '', body, kind }: Page): string => `<!DOCTYPE html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta name="viewport" content="width=device-width, initial-scale=1">
<meta name="color-scheme" content="light dark">
<title>${escaped(title)} · Storage jackets</title>
<link rel="stylesheet" href="look.css">
<link rel="stylesheet" href="help.css">
<script src="copy.js" defer></script>${
  kind === 'index' ? '\n<script src="search-index.js" defer></script>\n<script src="search.js" defer></script>' : ''
}
</head>
<body>
<a class="skip" href="#content">Skip to the page</a>
<header>
<p class="name">Storage jackets <span>help</span></p>
<nav aria-label="Help">${NAV.map(
  ([to, text]) => `<a href="${to}"${to === file ? ' aria-current="page"' : ''}>${text}</a>`,
).join('')}</nav>
</header>
<main id="content" class="${kind}">
${above}
<h1>${escaped(heading)}</h1>
${body}
</main>
<footer>
<p>${escaped(PLANNING)} ${escaped(FOLLOW)}</p>
<p>Version ${escaped(VERSION)} of the calculation.</p>
</footer>
</body>
</html>
`;
