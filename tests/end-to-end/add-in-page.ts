/** Opens the built page of the add-in in a browser, with the host's own scripts and a stand-in for its native half. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, readdirSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { ensureChromium, launchArgs } from '../../src/build/ensure-chromium.mjs';
import { answerFor, HOST, SITE } from './add-in-files.mjs';

export const root = resolve(import.meta.dirname, '../..');

const changed = (path: string): number => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const newest = (folder: string): number =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .reduce((time, { parentPath, name }) => Math.max(time, changed(join(parentPath, name))), 0);

/** Folders of the source that the add-in is made from. */
const SOURCES = ['addin', 'build', 'calculation', 'drawing', 'functions', 'taskpane', 'texts'];

/** Builds the add-in if a source is newer than what was built. */
export const ensureBuilt = (): void => {
  const built = changed(join(root, 'dist/functions.js'));
  if (SOURCES.every((folder) => built > newest(join(root, 'src', folder)))) return;
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'src/build/build.mjs'), '--only', 'functions'], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The add-in could not be built:\n${stderr}`);
};

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: ensureChromium(), args: launchArgs() });

export interface AddInPage {
  readonly page: Page;
  /** Everything that the console or an uncaught error said. */
  readonly said: string[];
  /** Addresses that were asked for outside of the site. */
  readonly outside: string[];
  close(): Promise<void>;
}

export interface Opening {
  readonly context?: BrowserContextOptions;
  /** Whether the host's scripts answer: as they are, not at all, or only once `released` is kept. */
  readonly scripts?: 'there' | 'blocked';
  /** Held back until this is kept: the host is then not ready, though its functions can be called. */
  readonly strings?: Promise<unknown>;
  /** Without the native half, as in a plain browser. */
  readonly plain?: boolean;
  /** The cautions have been read before. */
  readonly read?: boolean;
  /** Does something with the page before it loads. */
  readonly before?: (page: Page) => Promise<unknown>;
}

/** Opens the page. It answers once our own script has run; the host may still be getting ready. */
export const openAddIn = async (browser: Browser, opening: Opening = {}): Promise<AddInPage> => {
  const context = await browser.newContext({ viewport: { width: 320, height: 800 }, ...opening.context });
  const outside: string[] = [];
  await context.route('**/*', async (route) => {
    const url = route.request().url().split(/[?#]/)[0]!;
    if (!url.startsWith(SITE)) {
      outside.push(url);
      if (opening.scripts === 'blocked') return route.abort();
      if (url.endsWith('office_strings.js')) await opening.strings;
    }
    const answer = answerFor(url);
    return answer ? route.fulfill(answer) : route.abort();
  });
  if (!opening.plain) await context.addInitScript({ path: join(import.meta.dirname, 'host-stand-in.js') });
  if (opening.read) await context.addInitScript(() => localStorage.setItem('storage-jackets-cautions-read', 'yes'));
  const page = await context.newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => said.push(`uncaught: ${error.message}`));
  await opening.before?.(page);
  await page.goto(`${SITE}taskpane.html${opening.plain ? '' : HOST}`, { waitUntil: 'domcontentloaded' });
  return { page, said, outside, close: () => context.close() };
};

/** Where pictures for people go: a folder that the environment names, or the system's own for passing things. */
export const picture = (name: string): string => {
  const folder = process.env.JACKET_PICTURES ?? join(tmpdir(), 'jacket-pictures');
  mkdirSync(folder, { recursive: true });
  return join(folder, `${name}.png`);
};
