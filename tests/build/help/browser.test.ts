/** The pages in a browser: opened as files and over http, narrow and wide, light and dark, with and without script. */
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { pathToFileURL } from 'node:url';
import { type Browser, chromium, type Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { ensureChromium, launchArgs } from '../../../src/build/ensure-chromium.mjs';
import { GUIDES } from '../../../src/build/help/guides/index.ts';
import { serve } from '../../../src/build/serve.mjs';
import { writeHelp } from '../../../src/build/site.ts';
import { axePath, htmlFiles } from './site.ts';

const NARROW = { width: 320, height: 800 };
const WIDE = { width: 1280, height: 900 };

let folder: string;
let browser: Browser;

beforeAll(async () => {
  folder = mkdtempSync(join(tmpdir(), 'jacket-help-'));
  writeHelp(resolve('.'), join(folder, 'help'));
  browser = await chromium.launch({ executablePath: ensureChromium(), args: launchArgs() });
});

afterAll(async () => {
  await browser?.close();
  rmSync(folder, { recursive: true, force: true });
});

const address = (file: string): string => pathToFileURL(join(folder, 'help', file)).href;

/** A fresh page that notes what it asks for and what goes wrong. */
const opened = async (file: string, options: Parameters<Browser['newPage']>[0] = {}) => {
  const page = await browser.newPage({ viewport: WIDE, ...options });
  const asked: string[] = [];
  const wrong: string[] = [];
  page.on('request', (request) => asked.push(request.url()));
  page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
  page.on('pageerror', (error) => wrong.push(error.message));
  await page.goto(address(file));
  return { page, asked, wrong };
};

interface Violation {
  readonly id: string;
  readonly nodes: readonly { readonly html: string; readonly failureSummary?: string }[];
}

/** Rules that depend on size or colours: the others need one look at a page. */
const BY_LOOK = ['color-contrast', 'link-in-text-block', 'scrollable-region-focusable', 'target-size'];

const violations = (page: Page, rules?: readonly string[]): Promise<string[]> =>
  page.evaluate(async (only) => {
    const { axe } = globalThis as unknown as {
      axe: { run(options: object): Promise<{ violations: Violation[] }> };
    };
    const found = await axe.run({ resultTypes: ['violations'], ...(only ? { runOnly: only } : {}) });
    return found.violations.flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  }, rules);

describe('axe-core finds nothing', () => {
  const files = [
    'index.html',
    'plaster.html',
    'strength.html',
    'topic-feet.html',
    'guide-cautions.html',
    ...GUIDES.map(({ file }) => file),
  ];
  test.each(files)('%s, narrow and wide, light and dark', async (file) => {
    const { page } = await opened(file);
    await page.addScriptTag({ content: readFileSync(axePath, 'utf8') });
    for (const viewport of [NARROW, WIDE])
      for (const colorScheme of ['light', 'dark'] as const) {
        await page.setViewportSize(viewport);
        await page.emulateMedia({ colorScheme });
        const first = viewport === NARROW && colorScheme === 'light';
        expect(await violations(page, first ? undefined : BY_LOOK), `${viewport.width} ${colorScheme}`).toEqual([]);
      }
    await page.close();
  });

  test('and finds a planted fault', async () => {
    const { page } = await opened('index.html');
    await page.addScriptTag({ content: readFileSync(axePath, 'utf8') });
    await page.evaluate(() => document.querySelector('main')!.append(document.createElement('button')));
    expect(await violations(page)).toHaveLength(1);
    await page.close();
  });
});

test('no page is wider than 320 px, asks for anything outside or complains', async () => {
  const { page, asked, wrong } = await opened('index.html', { viewport: NARROW });
  for (const [file] of htmlFiles) {
    await page.goto(address(file));
    expect(await page.evaluate(() => document.documentElement.scrollWidth), file).toBeLessThanOrEqual(NARROW.width);
  }
  expect(asked.filter((url) => !url.startsWith(pathToFileURL(folder).href))).toEqual([]);
  expect(wrong).toEqual([]);
  await page.close();
});

const hits = (page: Page): Promise<string[]> => page.locator('.results a').allTextContents();

describe('the search', () => {
  const searches = async (page: Page): Promise<void> => {
    await page.getByLabel('Search functions, settings and guides').fill('how much water');
    expect((await hits(page))[0]).toBe('JACKET.WATER');
    await page.getByRole('searchbox').fill('lap');
    expect(await hits(page)).toContain('lap');
    await page.getByRole('searchbox').fill('xyzzy');
    expect(await hits(page)).toEqual([]);
    expect(await page.getByRole('status').first().textContent()).toContain('Nothing found');
    await page.getByRole('searchbox').fill('shell area');
    await page.keyboard.press('Enter');
    await page.keyboard.press('Enter');
    await page.waitForURL(/shell-area\.html$/);
  };

  test('works in a page opened as a file', async () => {
    const { page, wrong } = await opened('index.html');
    await searches(page);
    expect(wrong).toEqual([]);
    await page.close();
  });

  test('works over http under the policy of the server', async () => {
    const running = await serve({ port: 0, dist: folder });
    const page = await browser.newPage({ viewport: WIDE });
    const wrong: string[] = [];
    page.on('console', (message) => message.type() === 'error' && wrong.push(message.text()));
    await page.goto(`${running.address}help/index.html`);
    await searches(page);
    expect(wrong.filter((text) => !text.includes('favicon'))).toEqual([]);
    await page.close();
    running.close();
  });

  test('is not there without script, and the list is', async () => {
    const { page } = await opened('index.html', { javaScriptEnabled: false });
    expect(await page.locator('.search').isVisible()).toBe(false);
    expect(await page.getByRole('link', { name: 'PLASTER', exact: true }).isVisible()).toBe(true);
    await page.close();
  });
});

test('a formula can be copied from the keyboard', async () => {
  const { page } = await opened('plaster.html');
  await page.evaluate(() => {
    const copied: string[] = [];
    Object.assign(globalThis, { copied });
    Object.defineProperty(navigator, 'clipboard', {
      value: { writeText: async (text: string) => void copied.push(text) },
    });
  });
  await page.getByRole('button', { name: 'Copy =JACKET.PLASTER(1,8)', exact: true }).focus();
  await page.keyboard.press('Enter');
  expect(await page.evaluate(() => (globalThis as unknown as { copied: string[] }).copied)).toEqual([
    '=JACKET.PLASTER(1,8)',
  ]);
  expect(await page.locator('p.unseen[role="status"]').textContent()).toBe('Copied');
  await page.close();
});

test('where there is no clipboard, the formula is marked', async () => {
  const { page } = await opened('plaster.html');
  await page.evaluate(() => Object.defineProperty(navigator, 'clipboard', { value: undefined }));
  await page.getByRole('button', { name: 'Copy =JACKET.PLASTER(1,8)', exact: true }).click();
  expect(await page.evaluate(() => getSelection()?.toString())).toBe('=JACKET.PLASTER(1,8)');
  await page.close();
});

test('wide tables and formulas take the focus, so that keys can scroll them', async () => {
  const { page } = await opened('plan.html', { viewport: NARROW });
  const hidden = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main *')]
      .filter((e) => /auto|scroll/.test(getComputedStyle(e).overflowX) && e.scrollWidth > e.clientWidth)
      .filter((e) => e.tabIndex < 0 || !e.getAttribute('aria-label'))
      .map((e) => e.outerHTML.slice(0, 80)),
  );
  expect(hidden).toEqual([]);
  await page.close();
});

test('on paper there is nothing to press', async () => {
  const { page } = await opened('plaster.html');
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('button:visible, header nav:visible').count()).toBe(0);
  expect((await page.pdf({ format: 'A4' })).length).toBeGreaterThan(1000);
  await page.close();
});
