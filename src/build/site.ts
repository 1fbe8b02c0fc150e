/** The files that a web server hands out so that a spreadsheet can load the add-in, beside the bundle itself. */
import { copyFileSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { basename, join } from 'node:path';
import { helpFiles } from './help/pages.ts';
import { LOCAL_BASE_URL, metadata } from './metadata.ts';

/** Sizes of the icons that the manifest names [px]. */
export const ICON_SIZES = [16, 32, 64, 80];

/**
 * An address under which the add-in may stand: https, no query, no closing slash.
 *
 * @throws with what to change
 */
export const checkedBaseUrl = (given: string): string => {
  let url: URL;
  try {
    url = new URL(given);
  } catch {
    throw new Error(`"${given}" is not an address. Give one such as https://example.org/jackets`);
  }
  if (url.protocol !== 'https:')
    throw new Error(`"${given}" is not an https address. Spreadsheets load add-ins over https only.`);
  if (url.search || url.hash || url.username || url.password)
    throw new Error(
      `"${given}" has more than a host and a folder. Give only those, such as https://example.org/jackets`,
    );
  return url.origin + url.pathname.replace(/\/+$/, '');
};

/** The manifest with another address: pages below it, and its host as the add-in's own. */
export const manifestFor = (manifest: string, baseUrl: string): string =>
  manifest
    .replaceAll(`<AppDomain>${LOCAL_BASE_URL}</AppDomain>`, `<AppDomain>${new URL(baseUrl).origin}</AppDomain>`)
    .replaceAll(LOCAL_BASE_URL, baseUrl);

/** Files of the help pages that are not made but stand in the source, by folder. */
const HELP_ASSETS = [
  'src/texts/look.css',
  'src/build/help/help.css',
  'src/build/help/search.js',
  'src/build/help/copy.js',
];

/**
 * Writes the help pages, which need no server and load nothing but what stands beside them. What else stood there is taken away.
 *
 * @param root the project's folder
 * @param to folder of the pages
 */
export const writeHelp = (root: string, to: string): void => {
  const fresh = `${to}.new-${process.pid}`;
  mkdirSync(fresh, { recursive: true });
  for (const [name, text] of helpFiles()) writeFileSync(join(fresh, name), text);
  for (const path of HELP_ASSETS) copyFileSync(join(root, path), join(fresh, basename(path)));
  rmSync(to, { recursive: true, force: true });
  renameSync(fresh, to);
};

/**
 * Writes all files but the bundle.
 *
 * @param root the project's folder
 * @param to folder for the site, which is made if it is not there
 * @param baseUrl where the folder will stand in the web
 */
export const writeSite = (root: string, to: string, baseUrl: string = LOCAL_BASE_URL): void => {
  mkdirSync(join(to, 'icons'), { recursive: true });
  writeFileSync(join(to, 'functions.json'), `${JSON.stringify(metadata(baseUrl), null, 2)}\n`);
  writeFileSync(
    join(to, 'manifest.xml'),
    manifestFor(readFileSync(join(root, 'manifest/manifest.xml'), 'utf8'), baseUrl),
  );
  copyFileSync(join(root, 'src/addin/taskpane.html'), join(to, 'taskpane.html'));
  for (const size of ICON_SIZES) {
    const name = `icon-${size}.png`;
    copyFileSync(join(root, 'manifest/icons', name), join(to, 'icons', name));
  }
  copyFileSync(join(root, 'src/texts/look.css'), join(to, 'look.css'));
  writeHelp(root, join(to, 'help'));
};

/** Names of everything in a folder and its folders, sorted, with `/` between. */
export const filesIn = (folder: string): string[] =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .map((entry) =>
      join(entry.parentPath, entry.name)
        .slice(folder.length + 1)
        .replaceAll('\\', '/'),
    )
    .sort();
