/**
 * A number that can hurt somebody never stands alone: on every screen of the pane and in print, what a function gives whose entry in the registry
 * says `hurts` stands in one block with its limits, its source and its cautions. The help pages have the same test over the same marks.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, it } from 'vitest';
import { isRows } from '../../src/functions/calling/cell.ts';
import { formulaText } from '../../src/functions/calling/formula-text.ts';
import { functions } from '../../src/functions/index.ts';
import { CAUTIONS, cautionsFor, FOLLOW } from '../../src/texts/cautions.ts';
import { type AddInPage, ensureBuilt, launch, openAddIn, picture } from './add-in-page.ts';

let browser: Browser;
beforeAll(async () => {
  ensureBuilt();
  browser = await launch();
}, 180_000);
afterAll(() => browser?.close());

const HURTING = functions.filter(({ hurts }) => hurts?.length);
const LAWS = HURTING.map(({ id, hurts, source }) => ({
  id,
  source,
  cautions: cautionsFor(hurts!).map((one) => one.id),
}));

/** Numbers of the page that stand without limit, source or caution. Marks tell which function gave a number; words with a unit tell it too. */
const alone = (page: Page, numbers: readonly string[] = []): Promise<string[]> =>
  page.evaluate(
    ({ laws, words }) => {
      const told: string[] = [];
      const judge = (place: Element, id: string): void => {
        const block = place.closest('[data-block]');
        if (!block) {
          told.push(`${id}: no block`);
          return;
        }
        const law = laws.find((one) => one.id === id);
        if (!law) return;
        const live = block.getAttribute('data-block') === 'live';
        const has = (mark: string): boolean =>
          [...block.querySelectorAll(mark)].some((one) => (one.textContent ?? '').length > 12);
        if (!has(`[data-limit="${id}"]`)) told.push(`${id}: no limit`);
        if (!has(`[data-source="${id}"]`)) told.push(`${id}: no source`);
        const missing = law.cautions.filter((caution) => !block.querySelector(`[data-caution="${caution}"]`));
        if (live ? !block.querySelector('[data-caution]') : missing.length > 0)
          told.push(`${id}: no caution ${missing.join(' ')}`);
      };
      const pane = document.querySelector('.pane')!;
      for (const one of pane.querySelectorAll('[data-result]')) {
        const id = one.getAttribute('data-result')!;
        if (laws.some((law) => law.id === id)) judge(one, id);
      }
      // The same numbers where nobody has marked them.
      const walker = document.createTreeWalker(pane, NodeFilter.SHOW_TEXT);
      for (let node = walker.nextNode(); node; node = walker.nextNode())
        // «63 cm» is not «3 cm»; a whole caution with its figures and sources needs none beside it.
        for (const word of words)
          if (
            node
              .textContent!.split(word)
              .slice(0, -1)
              .some((before) => !/[\d.]$/.test(before)) &&
            !node.parentElement!.closest('[data-block], .caution-card')
          )
            told.push(`${word}: no block`);
      return told;
    },
    { laws: LAWS, words: numbers },
  );

const opened = async (context = {}): Promise<AddInPage> => {
  const one = await openAddIn(browser, { read: true, context });
  await one.page.waitForSelector('.pane');
  return one;
};

/** Puts the examples of the registry into the sheet, one below the other. */
const fill = (page: Page): Promise<void> =>
  page.evaluate(
    (cells) => {
      window.hostStandIn.workbook.sheets = { Rows: Object.fromEntries(cells) };
      window.hostStandIn.select('Rows', 'Z1');
    },
    HURTING.map((f, i) => {
      const { args } = f.examples[0];
      const answer = f.call(args);
      const value = isRows(answer) ? String(answer[0]![0]) : answer;
      return [`A${i + 1}`, { f: formulaText(f.id, args), v: value as string | number | boolean }] as const;
    }),
  );

const select = async (page: Page, address: string): Promise<void> => {
  await expect
    .poll(
      async () => {
        await page.evaluate((to) => window.hostStandIn.select('Rows', to), address);
        await page.waitForTimeout(110);
        return page
          .locator('.screen-cell .where strong')
          .textContent({ timeout: 500 })
          .catch(() => '');
      },
      { interval: 20 },
    )
    .toBe(`${address} on Rows`);
};

it('every example of the registry, in the pane and in print', async () => {
  const { page, said, close } = await opened();
  await fill(page);
  for (const [i, f] of HURTING.entries()) {
    await select(page, `A${i + 1}`);
    const shown = (await page.locator('.screen-cell .result').textContent()) ?? '';
    const number = /\d[\d.]* \S+/.exec(shown)?.[0];
    expect(await page.locator(`.screen-cell [data-result="${f.id}"]`).count(), f.id).toBeGreaterThan(0);
    expect(await alone(page, number ? [number] : []), f.id).toEqual([]);
  }
  await page.emulateMedia({ media: 'print' });
  expect(await alone(page)).toEqual([]);
  // biome-ignore lint/performance/useDomNodeTextContent: what is hidden does not count
  const printed = await page.locator('.pane').innerText();
  for (const { title, text } of CAUTIONS) {
    expect(printed).toContain(title);
    expect(printed).toContain(text);
  }
  expect(printed).toContain(FOLLOW);
  expect(said).toEqual([]);
  await close();
});

it('every card of the functions that can hurt', async () => {
  const { page, close } = await opened();
  await page.click('.tabs >> text=Find a function');
  for (let i = 0; i < 2; i++) {
    await page.evaluate(() => {
      for (const one of document.querySelectorAll<HTMLDetailsElement>('.screen-find details')) one.open = true;
    });
    await page.waitForTimeout(150);
  }
  for (const { id } of HURTING) expect(await page.locator(`.screen-find [data-result="${id}"]`).count(), id).toBe(1);
  expect(await alone(page)).toEqual([]);
  await close();
});

it('finds one number that stands alone', async () => {
  const { page, close } = await opened();
  await fill(page);
  const at = HURTING.findIndex(({ id }) => id === 'MIX_TEMPERATURE');
  await select(page, `A${at + 1}`);
  expect(await alone(page, ['76.4 °C'])).toEqual([]);
  const plant = (html: string) =>
    page.evaluate((text) => document.querySelector('.screen-cell')!.insertAdjacentHTML('beforeend', text), html);
  await plant('<p id="planted">A thick mix reaches 76.4 °C.</p>');
  expect(await alone(page, ['76.4 °C'])).toEqual(['76.4 °C: no block']);
  await page.evaluate(() => document.querySelector('#planted')!.remove());
  await plant('<div data-block><p data-result="MIX_TEMPERATURE">76.4 °C</p></div>');
  expect(await alone(page)).toEqual([
    'MIX_TEMPERATURE: no limit',
    'MIX_TEMPERATURE: no source',
    'MIX_TEMPERATURE: no caution heat',
  ]);
  await close();
});

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

it.each([
  ['light', {}],
  ['dark', { colorScheme: 'dark' }],
  ['forced-colours', { forcedColors: 'active' }],
] as const)('cautions and drawings can be read by everybody: %s', async (name, context) => {
  const { page, close, said } = await opened({ ...context });
  await fill(page);
  await page.evaluate(axe);
  for (const id of ['PLAN', 'FEET', 'MARGIN', 'WEIGHT', 'COLLECTION']) {
    await select(page, `A${HURTING.findIndex((f) => f.id === id) + 1}`);
    if (['PLAN', 'FEET', 'MARGIN'].includes(id)) {
      await page.waitForSelector('.cell-drawing svg');
      expect(await page.locator('.cell-drawing >> text=Save the drawing').count()).toBe(1);
    }
    await page.screenshot({ path: picture(`live-${name}-${id.toLowerCase()}`), fullPage: true });
    const barriers = await page.evaluate(async () => {
      const { axe: run } = window as unknown as {
        axe: {
          run(root: Document, options: unknown): Promise<{ violations: { id: string; nodes: { html: string }[] }[] }>;
        };
      };
      const { violations } = await run.run(document, {
        // The pane stands beside a sheet, and in the workbench under a heading of its own.
        rules: { 'page-has-heading-one': { enabled: false } },
      });
      const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
      return [
        ...violations.map((one) => `${one.id}: ${one.nodes.map(({ html }) => html.slice(0, 90)).join(' ')}`),
        ...(wide > 0 ? [`${wide} px too wide`] : []),
      ];
    });
    expect(barriers, id).toEqual([]);
  }
  expect(await page.locator('.live [role=status]').textContent()).toContain('for A');
  expect(said).toEqual([]);
  await close();
});
