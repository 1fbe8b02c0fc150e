/** Opens the built workbench in a browser, served as `npm start` serves it. */
import { spawnSync } from 'node:child_process';
import { readdirSync, statSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { type Browser, type BrowserContext, type BrowserContextOptions, chromium, type Page } from 'playwright-core';
import { ensureChromium, launchArgs } from '../../src/build/ensure-chromium.mjs';
import { serve } from '../../src/build/serve.mjs';
import type { Bench } from '../../src/workbench/bench.ts';
import type { Content } from '../../src/workbench/content.ts';

declare global {
  interface Window {
    bench: Bench;
  }
}

export const root = resolve(import.meta.dirname, '../..');

const changed = (path: string): number => statSync(path, { throwIfNoEntry: false })?.mtimeMs ?? 0;

const newest = (folder: string): number =>
  readdirSync(folder, { withFileTypes: true, recursive: true })
    .filter((entry) => entry.isFile())
    .reduce((time, { parentPath, name }) => Math.max(time, changed(join(parentPath, name))), 0);

/** Folders of the source that the workbench is made from. */
const SOURCES = ['calculation', 'drawing', 'engine', 'functions', 'taskpane', 'texts', 'workbench', 'workbook'];

/** Builds the workbench if a source is newer than what was built. */
export function ensureBuilt(): void {
  const built = changed(join(root, 'dist/workbench.js'));
  if (SOURCES.every((folder) => built > newest(join(root, 'src', folder)))) return;
  const { status, stderr } = spawnSync(process.execPath, [join(root, 'src/build/build.mjs'), '--only', 'workbench'], {
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`The workbench could not be built:\n${stderr}`);
}

export const launch = (): Promise<Browser> => chromium.launch({ executablePath: ensureChromium(), args: launchArgs() });

export interface OpenPage {
  readonly page: Page;
  readonly context: BrowserContext;
  /** What the console and uncaught errors said, and every request that left this computer. */
  readonly said: string[];
}

/** Waits until the first workbook is calculated. */
export async function ready(page: Page): Promise<void> {
  await page.locator('html[data-ready]').waitFor({ timeout: 60_000 });
}

/** Opens the page. `context` takes an open one, for a second tab. */
export async function openPage(
  browser: Browser,
  address: string,
  { context, ...options }: BrowserContextOptions & { context?: BrowserContext } = {},
): Promise<OpenPage> {
  const inContext =
    context ??
    (await browser.newContext({
      viewport: { width: 1280, height: 800 },
      permissions: ['clipboard-read', 'clipboard-write'],
      ...options,
    }));
  const page = await inContext.newPage();
  page.setDefaultTimeout(10_000);
  const said: string[] = [];
  // Files go out as downloads, which a test can catch; the system's own dialogue cannot be answered.
  await page.addInitScript(() => {
    Reflect.deleteProperty(window, 'showSaveFilePicker');
    Reflect.deleteProperty(window, 'showOpenFilePicker');
  });
  page.on('console', (message) => said.push(`${message.type()}: ${message.text()}`));
  page.on('pageerror', (error) => said.push(`error: ${error.message}`));
  page.on('request', (request) => {
    const url = request.url();
    if (!url.startsWith(address) && !/^(?:data|blob):/.test(url)) said.push(`request: ${url}`);
  });
  await page.goto(address);
  await ready(page);
  return { page, context: inContext, said };
}

/** What stands in a cell; sheets from 0, rows and columns from 1. */
export const cell = (page: Page, sheet: number, row: number, column: number): Promise<Content> =>
  page.evaluate(([s, r, c]) => window.bench.contents.at(s, r, c), [sheet, row, column] as const);

export const value = async (page: Page, sheet: number, row: number, column: number) =>
  (await cell(page, sheet, row, column)).value;

/** Waits until all changes are calculated. */
export const settled = (page: Page): Promise<void> => page.evaluate(() => window.bench.settled());

/** Selects a cell of the sheet in view, from 1. */
export async function select(page: Page, row: number, column: number): Promise<void> {
  await page.evaluate(
    ([r, c]) => {
      window.bench.grid.api
        .getActiveWorkbook()
        ?.getActiveSheet()
        .getRange(r - 1, c - 1)
        .activate();
    },
    [row, column] as const,
  );
  await focusCells(page);
}

export const focusCells = (page: Page): Promise<void> =>
  page.locator('#__editor___INTERNAL_EDITOR__DOCS_NORMAL').evaluate((node: HTMLElement) => node.focus());

/** Types into the selected cell and waits for the results. */
export async function type(page: Page, text: string, end = 'Enter'): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press(end);
  await settled(page);
}

/** Saves with the keyboard and answers the bytes. */
export async function save(page: Page): Promise<{ name: string; bytes: Uint8Array }> {
  const [download] = await Promise.all([page.waitForEvent('download'), page.keyboard.press('Control+s')]);
  const parts: Uint8Array[] = [];
  for await (const part of await download.createReadStream()) parts.push(part as Uint8Array);
  await page.locator('#bench-file', { hasText: /· saved/ }).waitFor();
  return { name: download.suggestedFilename(), bytes: new Uint8Array(Buffer.concat(parts)) };
}

/** Opens a file through the button. */
export async function openFile(page: Page, name: string, bytes: Uint8Array): Promise<void> {
  const [chooser] = await Promise.all([page.waitForEvent('filechooser'), page.click('#bench-open')]);
  await chooser.setFiles({ name, mimeType: 'application/octet-stream', buffer: Buffer.from(bytes) });
}

/** The sentences that are shown, without their buttons. */
export const message = async (page: Page): Promise<string> =>
  (await page.locator('#bench-messages p').allTextContents()).join('\n');

export const fileLine = async (page: Page): Promise<string> => (await page.locator('#bench-file').textContent()) ?? '';

/** Starts the server on any free port. */
export const startServer = () => serve({ port: 0 });
