// Answers a browser's requests for the built page of the add-in, for tests and measurements alike.
import { existsSync, readFileSync } from 'node:fs';
import { extname, join, resolve } from 'node:path';

const root = resolve(import.meta.dirname, '../..');

/** Where the built page seems to stand. */
export const SITE = 'https://localhost:3000/';

/** How the host itself names its page: a workbook on Windows, no dialogue, no logging. */
export const HOST = '?_host_Info=Excel$Win32$16.01$en-US$telemetry$$disableLogging$0';

/** The official address of the host's scripts, which the page names. They are answered from the copy that is published for tests. */
export const OFFICIAL = 'https://appsforoffice.microsoft.com/lib/1/hosted/';

/** Folders behind addresses, the longest address first. */
const PLACES = [
  [OFFICIAL, 'node_modules/@microsoft/office-js/dist'],
  // Modules as they were compiled, for tests that call one alone.
  [`${SITE}modules/`, 'build'],
  [SITE, 'dist'],
];

const TYPES = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.json': 'application/json',
  '.png': 'image/png',
};

/** What a request for an address gets, or undefined where nothing of ours and nothing of the host's stands. */
export function answerFor(url) {
  const [start, folder] = PLACES.find(([begin]) => url.startsWith(begin)) ?? [];
  if (start === undefined) return undefined;
  const name = url.slice(start.length).split(/[?#]/)[0];
  const file = join(root, folder, name);
  if (!existsSync(file)) return { status: 404 };
  return { status: 200, body: readFileSync(file), contentType: TYPES[extname(name)] ?? 'text/plain' };
}
