/** One jacket from an empty form to a printed card and labels, without a formula being typed; in the add-in's pane and in the workbench's. */
import { spawnSync } from 'node:child_process';
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { CAUTIONS, FOLLOW } from '../../src/texts/cautions.ts';
import { type AddInPage, ensureBuilt, launch, type Opening, openAddIn, picture } from './add-in-page.ts';
import * as bench from './workbench-page.ts';

let browser: Browser;
beforeAll(async () => {
  ensureBuilt();
  bench.ensureBuilt();
  browser = await launch();
}, 180_000);
afterAll(() => browser?.close());

/** Takes the place of the browser's own dialogue, which a test cannot answer. */
const standInForPrint = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    window.print = () => void dispatchEvent(new Event('beforeprint'));
  });

const opened = async (opening: Opening = {}): Promise<AddInPage> => {
  const one = await openAddIn(browser, { read: true, before: standInForPrint, ...opening });
  await one.page.waitForSelector('.pane');
  return one;
};

interface Jacket {
  readonly length: string;
  readonly width: string;
  readonly height: string;
  readonly weight: string;
  readonly system?: 'us';
  readonly padding?: 'felt' | 'foam';
  readonly names?: readonly [number: string, element: string, side: string];
}

/** Specimens of an invented museum. */
const SKULL: Jacket = {
  length: '60',
  width: '40',
  height: '30',
  weight: '20',
  names: ['INV 1204', 'skull', 'left'],
};
const FEMUR_US: Jacket = {
  length: '59',
  width: '15.7',
  height: '12',
  weight: '90',
  system: 'us',
  padding: 'foam',
  names: ['INV 3310', 'femur', 'right'],
};
/** So large that all of its numbers are long. */
const WHALE: Jacket = {
  length: '260',
  width: '140',
  height: '90',
  weight: '1400',
  padding: 'foam',
  names: [
    'INV 2024.17.00345-B, second crate of three',
    'articulated front limb, shoulder to wrist',
    'left, seen from below',
  ],
};

const openPlan = async (page: Page): Promise<void> => {
  await page.click('.tabs >> text=Plan one jacket');
  await page.waitForSelector('.plan-form');
};

const plan = async (page: Page, jacket: Jacket): Promise<void> => {
  await openPlan(page);
  if (jacket.system === 'us') await page.check('input[value="us"]');
  for (const size of ['length', 'width', 'height', 'weight'] as const) await page.fill(`#plan-${size}`, jacket[size]);
  if (jacket.padding) await page.selectOption('#plan-padding', jacket.padding);
  if (jacket.names) {
    await page.click('text=Names for the print');
    for (const [i, name] of ['number', 'element', 'side'].entries()) await page.fill(`#plan-${name}`, jacket.names[i]!);
  }
  await page.click('text=Plan it');
  await page.waitForSelector('.plan-result h3');
};

const text = async (page: Page, selector: string): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: what is folded away does not count
  (await page.locator(selector).innerText()).replace(/\s+/g, ' ');

/** Prints one of the papers: the page as a PDF, and as a picture for people. */
const print = async (page: Page, action: string, format: 'A4' | 'Letter', name: string) => {
  await page.click('.tabs >> text=Print');
  await page.click(`.screen-print >> text=${action}`);
  const words = await page.evaluate(() => document.querySelector('.on-paper')!.textContent!.replace(/\s+/g, ' '));
  const shortened = await page.evaluate(() => document.querySelector('.on-paper .page')!.className);
  const cut = await page.evaluate(
    () =>
      [...document.querySelectorAll('.on-paper .label')].filter((one) => one.scrollHeight > one.clientHeight).length,
  );
  expect(cut, 'labels whose end is cut off').toBe(0);
  const file = picture(name).replace(/png$/, 'pdf');
  writeFileSync(file, await page.pdf({ format, printBackground: true }));
  spawnSync('pdftoppm', ['-r', '80', '-png', file, file.replace('.pdf', '')]);
  const pages = readFileSync(file, 'latin1').match(/\/Type\s*\/Page\b(?!s)/g)?.length;
  return { words, pages, shortened };
};

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

interface Violation {
  readonly id: string;
  readonly impact: string;
  readonly nodes: readonly { readonly html: string }[];
}

/** What would keep somebody from using the page as it stands, as sentences. */
const barriers = async (page: Page): Promise<string[]> => {
  await page.evaluate(AXE);
  const violations = await page.evaluate(async () => {
    const { axe } = window as unknown as {
      axe: { run(root: Document, options: unknown): Promise<{ violations: Violation[] }> };
    };
    return (await axe.run(document, { rules: { 'target-size': { enabled: true } } })).violations;
  });
  const wide = await page.evaluate(() => {
    const { scrollWidth, clientWidth } = document.documentElement;
    return scrollWidth > clientWidth ? [`the page is ${scrollWidth - clientWidth} px wider than its window`] : [];
  });
  return [
    ...violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(' ')}`),
    ...wide,
  ];
};

describe('from an empty pane to paper', () => {
  let one: AddInPage;
  beforeAll(async () => {
    one = await opened();
  });
  afterAll(() => one?.close());

  it('says beside each field why it cannot be used', async () => {
    const { page } = one;
    await openPlan(page);
    await page.fill('#plan-width', 'wide');
    await page.fill('#plan-weight', '-3');
    await page.click('text=Plan it');
    expect(await text(page, '#plan-length-reason')).toBe('Length is blank; type the longest size in cm.');
    expect(await text(page, '#plan-width-reason')).toBe('Width is not a number; type one such as 12.5.');
    expect(await text(page, '#plan-height-reason')).toContain('Height is blank');
    expect(await text(page, '#plan-weight-reason')).toBe('Weight is -3; type a number above 0.');
    expect(await page.evaluate(() => document.activeElement?.id)).toBe('plan-length');
    expect(await page.locator('.plan-result').textContent()).toBe('');
    await page.screenshot({ path: picture('plan-reasons'), fullPage: true });
  });

  it('shows what the functions say', async () => {
    await plan(one.page, SKULL);
    const told = await text(one.page, '.plan-result');
    // The example of PLAN: 16.55436173 kg from 12.75 to 22.67, 40.09227299 kg.
    expect(told).toContain('plaster 16.6 kg 12.7 to 22.7 kg');
    expect(told).toContain('weight 40.1 kg 35.5 to 46.9 kg');
    expect(told).toContain('Too heavy for three people: lift it with a hoist.');
    expect(told).toContain(FOLLOW);
    for (const title of ['What to buy', 'What to mix', 'How large it is', 'How it stands', 'How it is handled'])
      expect(told).toContain(title);
    expect(await one.page.locator('.plan-result svg[role="img"]').count()).toBe(3);
  });

  it('puts the formula in the sheet, not its values', async () => {
    const { page } = one;
    await page.evaluate(() => {
      window.hostStandIn.workbook.sheets = { Rows: {} };
      window.hostStandIn.select('Rows', 'B2');
    });
    await page.click('.plan-result >> text=Put in the sheet >> nth=0');
    await expect.poll(() => page.locator('.say').textContent()).toContain('Put in B2.');
    expect(await page.evaluate(() => window.hostStandIn.workbook.sheets.Rows!.B2!.f)).toBe(
      '=JACKET.PLAN(60,40,30,20,JACKET.PADDING_CHOICE(20,FALSE,"low"))',
    );
  });

  it('saves the drawing', async () => {
    const { page } = one;
    const [download] = await Promise.all([
      page.waitForEvent('download'),
      page.click('.plan-result >> text=Save the drawing >> nth=0'),
    ]);
    expect(download.suggestedFilename()).toBe('feet.svg');
    const svg = readFileSync(await download.path(), 'utf8');
    expect(svg).toContain('INV 1204 · skull');
    expect(svg).not.toContain('var(');
  });

  it('puts the drawing on the sheet where the host can', async () => {
    const { page } = one;
    await page.click('.plan-result >> text=Put the drawing on the sheet >> nth=0');
    await expect.poll(() => page.locator('.say').textContent()).toBe('The drawing lies on the sheet.');
  });

  it('prints a shop card of one page', async () => {
    const { words, pages, shortened } = await print(one.page, 'Print the shop card', 'A4', 'card-skull-a4');
    expect(pages).toBe(1);
    for (const part of ['INV 1204', 'skull', 'left', 'about 40.1 kg (35.5 to 46.9 kg)', 'a hoist', 'Really used'])
      expect(words).toContain(part);
    expect(words).toContain('=JACKET.PLAN(60,40,30,20');
    expect(shortened).not.toContain('without-layout');
    for (const { text: whole } of CAUTIONS) expect(words).toContain(whole);
  });

  it('prints labels of one page', async () => {
    const { words, pages } = await print(one.page, 'Print the labels', 'Letter', 'labels-skull-letter');
    expect(pages).toBe(1);
    expect(words.match(/INV 1204/g)).toHaveLength(9);
    expect(words).toContain('original tag');
  });

  it('prints the cautions', async () => {
    const { words, pages } = await print(one.page, 'Print the cautions', 'Letter', 'cautions-letter');
    expect(pages).toBe(1);
    for (const { why } of CAUTIONS) expect(words).toContain(why);
  });

  it('leaves nothing of the print in the page, and nothing of the form in its store', async () => {
    expect(await one.page.locator('.on-paper').count()).toBe(0);
    expect(await one.page.evaluate(() => JSON.stringify({ ...localStorage }))).not.toContain('1204');
    expect(one.said).toEqual([]);
  });
});

it.each([
  ['us', FEMUR_US, 'A4'],
  ['us', FEMUR_US, 'Letter'],
  ['whale', WHALE, 'A4'],
  ['whale', WHALE, 'Letter'],
] as const)('card and labels fit one page: %s on %#', async (name, jacket, format) => {
  const { page, close } = await opened();
  await plan(page, jacket);
  const card = await print(page, 'Print the shop card', format, `card-${name}-${format}`);
  expect(card.pages).toBe(1);
  const labels = await print(page, 'Print the labels', format, `labels-${name}-${format}`);
  expect(labels.pages).toBe(1);
  await close();
});

it('says what to do where the place does not print', async () => {
  const { page, close } = await opened({
    before: (page) =>
      page.addInitScript(() => {
        window.print = () => undefined;
      }),
  });
  await plan(page, SKULL);
  await page.click('text=To the print');
  await page.click('text=Print the shop card');
  expect(await page.locator('.say').textContent()).toContain('Save the page as a file');
  expect(await page.locator('.on-paper').count()).toBe(0);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.click('text=Save the shop card as a page'),
  ]);
  const file = readFileSync(await download.path(), 'utf8');
  await page.setContent(file);
  expect(await page.locator('.on-paper .card').isVisible()).toBe(true);
  expect((await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b(?!s)/g)).toHaveLength(1);
  await close();
});

const LOOKS: readonly (readonly [string, BrowserContextOptions])[] = [
  ['light', {}],
  ['dark', { colorScheme: 'dark' }],
  ['forced', { forcedColors: 'active' }],
];

describe.each([320, 360])('at %i px', (width) => {
  it.each(LOOKS)('nothing serious stands in anybody’s way: %s', async (look, context) => {
    const { page, close, said } = await opened({ context: { viewport: { width, height: 800 }, ...context } });
    const shot = (state: string) =>
      page.screenshot({ path: picture(`plan-${width}-${look}-${state}`), fullPage: true });
    await openPlan(page);
    await shot('form');
    expect(await barriers(page), 'form').toEqual([]);
    await page.click('text=Plan it');
    expect(await barriers(page), 'reasons').toEqual([]);
    await plan(page, width === 320 ? FEMUR_US : SKULL);
    await page.waitForTimeout(100);
    await page.evaluate(() => {
      for (const one of document.querySelectorAll<HTMLDetailsElement>('.plan-result details')) one.open = true;
    });
    await page.waitForTimeout(100);
    await shot('plan');
    expect(await barriers(page), 'plan').toEqual([]);
    const drawn = await page.$$eval('.drawing svg', (all) =>
      all.map((svg) => [svg.getBoundingClientRect().width, Number(svg.getAttribute('width'))]),
    );
    expect(drawn).toHaveLength(3);
    // Drawn for the width that it is shown at: no letter is made smaller.
    for (const [shown, made] of drawn) expect(shown).toBeCloseTo(made!, 0);
    await page.click('.tabs >> text=Print');
    await shot('print');
    expect(await barriers(page), 'print').toEqual([]);
    expect(said).toEqual([]);
    await close();
  });
});

it('works beside the workbench’s cells too', async () => {
  const server = await bench.startServer();
  const open = await bench.openPage(browser, server.address);
  const { page } = open;
  const read = page.locator('text=I have read them');
  if (await read.isVisible()) await read.click();
  await page.evaluate(() => {
    window.print = () => void dispatchEvent(new Event('beforeprint'));
  });
  await plan(page, SKULL);
  const { words, pages } = await print(page, 'Print the shop card', 'A4', 'card-workbench');
  expect(pages).toBe(1);
  expect(words).toContain('INV 1204');
  expect(open.said.filter((line) => /error/i.test(line))).toEqual([]);
  await open.context.close();
  await server.close();
}, 60_000);
