/** The help pages as the tests read them: made once, in the order in which the site has them. */
import { createRequire } from 'node:module';
import { helpFiles } from '../../../src/build/help/pages.ts';

export const files = helpFiles();

export const htmlFiles = [...files].filter(([name]) => name.endsWith('.html'));

/** Files that stand beside the pages as they are in the source. */
export const ASSETS: readonly string[] = ['look.css', 'help.css', 'search.js', 'copy.js'];

/** Text with its entities read. */
export const unescaped = (text: string): string =>
  text
    .replaceAll('&lt;', '<')
    .replaceAll('&gt;', '>')
    .replaceAll('&quot;', '"')
    .replaceAll('&#39;', "'")
    .replaceAll('&amp;', '&');

/** Values of an attribute in a page. */
export const attributes = (html: string, name: string): string[] =>
  [...html.matchAll(new RegExp(`\\s${name}="([^"]*)"`, 'g'))].map(([, value]) => unescaped(value!));

/** Text without its elements. */
export const words = (html: string): string =>
  unescaped(html.replace(/<br>/g, '\n').replace(/<[^>]*>/g, ''))
    .replace(/[ \t]+/g, ' ')
    .trim();

export const axePath = createRequire(import.meta.url).resolve('axe-core/axe.min.js');
