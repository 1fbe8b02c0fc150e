/** The pane as people meet it: what it says of cells, how it is used without a mouse, and whether everybody can read it. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { functions } from '../../src/functions/index.ts';
import { CAUTIONS, FOLLOW } from '../../src/texts/cautions.ts';
import { type AddInPage, ensureBuilt, launch, type Opening, openAddIn, picture } from './add-in-page.ts';

let browser: Browser;
beforeAll(async () => {
  ensureBuilt();
  browser = await launch();
});
afterAll(() => browser?.close());

/** Rows of an invented museum. */
const fill = (page: Page): Promise<void> =>
  page.evaluate(() => {
    const { workbook } = window.hostStandIn;
    workbook.sheets = {
      Rows: {
        B2: { v: 1.2 },
        C2: { v: 8 },
        B3: { v: 'wide' },
        C3: { v: 8 },
        D2: { f: '=JACKET.PLASTER(B2,C2,Shop)', v: 24 },
        D3: { f: '=_xldudf_JACKET_PLASTER(B3,C3,Shop)', v: { error: '#VALUE!' } },
        D4: { f: '=ROUND(JACKET.PLASTER(B2*1.1,C2),1)', v: 26.4 },
        D5: { f: '=JACKET.WEIGHT(JACKET.SHELL_AREA(60,40,30),8,20,"us")', v: 99 },
        D6: { f: '=JACKET.PLASTR(1,2)', v: { error: '#NAME?' } },
        D7: { f: '=SUM(B2:B3)', v: 1.2 },
        F2: { f: '=JACKET.PLASTER(B2:B3,C2)', v: 22, spill: [2, 1] },
        F3: { v: { error: '#VALUE!' } },
      },
      'Shop settings': { A1: { v: 'waste' }, B1: { v: 0.2 } },
    };
    workbook.names = { Shop: "'Shop settings'!$A$1:$B$1" };
    window.hostStandIn.select('Rows', 'A1');
  });

const opened = async (opening: Opening = {}): Promise<AddInPage> => {
  const one = await openAddIn(browser, { read: true, ...opening });
  await one.page.waitForSelector('.pane');
  if (!opening.plain && opening.scripts !== 'blocked') await fill(one.page);
  return one;
};

/** Selects a cell until the pane has heard of it: the first time it may still be putting its ear to the sheet. */
const select = async (page: Page, address: string): Promise<void> => {
  await expect
    .poll(async () => {
      await page.evaluate((to) => window.hostStandIn.select('Rows', to), address);
      await page.waitForTimeout(150);
      return page.locator('.screen-cell').textContent();
    })
    .toContain(`${address} on Rows`);
};

/** The text of a screen as it can be seen: what is folded away does not count, and each line is a word of its own. */
const words = async (page: Page, screen: string): Promise<string> =>
  // biome-ignore lint/performance/useDomNodeTextContent: see above
  (await page.locator(`.screen-${screen}`).innerText()).replace(/\s+/g, ' ');

const tab = (page: Page, title: string): Promise<void> => page.click(`.tabs >> text=${title}`);

/** Opens everything that is folded away. */
const unfold = (page: Page, screen: string): Promise<void> =>
  page.evaluate((name) => {
    for (const one of document.querySelectorAll<HTMLDetailsElement>(`.screen-${name} details`)) one.open = true;
  }, screen);

describe('cautions', () => {
  it('come first, until they have been read once, and stay one click away', async () => {
    const { page, close } = await opened({ read: false });
    const first = await words(page, 'cautions');
    expect(first).toContain(FOLLOW);
    for (const { title, text } of CAUTIONS) {
      expect(first).toContain(title);
      expect(first).toContain(text);
    }
    await page.click('text=I have read them');
    expect(await page.locator('.screen-cell').isVisible()).toBe(true);
    await page.reload();
    await page.waitForSelector('.pane');
    expect(await page.locator('.screen-cell').isVisible()).toBe(true);
    await tab(page, 'Cautions');
    expect(await words(page, 'cautions')).toContain(CAUTIONS[0]!.text);
    expect(await page.locator('text=I have read them').count()).toBe(0);
    await close();
  });

  it('tell why, with their sources', async () => {
    const { page, close } = await opened({ read: false });
    await unfold(page, 'cautions');
    const told = await words(page, 'cautions');
    for (const { why, sources } of CAUTIONS) {
      expect(told).toContain(why);
      for (const { text, basis } of sources) expect(told).toContain(`${text} (${basis})`);
    }
    await close();
  });
});

describe('this cell', () => {
  let one: AddInPage;
  beforeAll(async () => {
    one = await opened();
  });
  afterAll(() => one?.close());

  it('tells what was calculated, from what, and how the defaults are known', async () => {
    await select(one.page, 'D2');
    await unfold(one.page, 'cell');
    const told = await words(one.page, 'cell');
    expect(told).toContain('How much plaster? about 24 kg dry plaster. Basis: derived.');
    expect(told).toContain('shell area 1.2 m² B2');
    expect(told).toContain('layers 8 C2');
    expect(told).toContain('waste 20 % set by you');
    expect(told).toContain('finish coat 1 mm assumption: smooth coat of plaster outside');
    expect(told).toContain('water ratio 0.38 (ratio) published: follows plaster; tables of consistency');
    // Its number can hurt: the cautions stand beside it.
    expect(told).toContain('Dust. Mix dry plaster outdoors or under exhaust');
    expect(told).toContain(FOLLOW);
  });

  it('tells why there is an error', async () => {
    await select(one.page, 'D3');
    const told = await words(one.page, 'cell');
    expect(told).toContain('Why there is an error shell_area is text; type a number');
    expect(told).toContain('shell area wide B3');
  });

  it('says what it cannot follow, and how the sheet can tell', async () => {
    await select(one.page, 'D4');
    const told = await words(one.page, 'cell');
    expect(told).toContain('The formula goes on calculating with what stands below');
    expect(told).toContain('shell area worked out by the sheet, not shown here B2*1.1');
    expect(told).toContain('=JACKET.CHECK("PLASTER",B2*1.1,C2)');
  });

  it('follows a call inside of a call, in the units of its settings', async () => {
    await select(one.page, 'D5');
    const told = await words(one.page, 'cell');
    expect(told).toMatch(/about \d+(\.\d+)? lb dry weight/);
    expect(told).toContain('specimen 20 lb');
  });

  it('tells of the row in which a cell of a spilled column lies', async () => {
    await select(one.page, 'F2');
    expect(await words(one.page, 'cell')).toContain('shell area 1.2 m²');
    await select(one.page, 'F3');
    expect(await words(one.page, 'cell')).toContain('Why there is an error shell_area is text');
  });

  it('names a function that is not there, and cells without one', async () => {
    await select(one.page, 'D6');
    expect(await words(one.page, 'cell')).toContain('there is no function PLASTR');
    await select(one.page, 'D7');
    expect(await words(one.page, 'cell')).toContain('D7 on Rows holds no function for storage jackets.');
  });

  it('calculates again where there is an error', async () => {
    await select(one.page, 'D3');
    await one.page.click('text=Calculate the workbook again');
    await expect.poll(() => one.page.locator('.say').textContent()).toBe('Calculated again.');
    expect(await one.page.evaluate(() => window.hostStandIn.workbook.log)).toContainEqual(['calculate', 'Full']);
  });

  it('follows what changes in the sheet', async () => {
    await select(one.page, 'D2');
    await one.page.evaluate(() => {
      window.hostStandIn.workbook.sheets.Rows!.B2 = { v: 2 };
      window.hostStandIn.calculated();
    });
    await expect.poll(() => words(one.page, 'cell')).toContain('shell area 2 m²');
  });

  it('keeps open what somebody has opened while nothing changes', async () => {
    await select(one.page, 'D2');
    await one.page.click('.screen-cell summary >> nth=0');
    await one.page.evaluate(() => window.hostStandIn.calculated());
    await one.page.waitForTimeout(300);
    expect(await one.page.locator('.screen-cell details[open]').count()).toBe(1);
  });

  it('left the console clean', () => {
    expect(one.said).toEqual([]);
  });
});

describe('find a function', () => {
  let one: AddInPage;
  beforeAll(async () => {
    one = await opened();
    await tab(one.page, 'Find a function');
  });
  afterAll(() => one?.close());

  it('has every function under its topic, with arguments, units, an example and its help', async () => {
    await one.page.fill('input', '');
    await unfold(one.page, 'find');
    // What unfolds is made then: once more for the entries inside of topics.
    await one.page.waitForTimeout(200);
    const told = await words(one.page, 'find');
    for (const f of functions) {
      expect(told, f.id).toContain(f.question);
      expect(told, f.id).toContain(f.description);
      for (const a of f.arguments) expect(told, `${f.id} ${a.name}`).toContain(a.name);
    }
    expect(told).toContain('=JACKET.PLASTER(1,8) gives 18.2957 kg');
    expect(await one.page.locator('.screen-find a').count()).toBe(functions.length);
  });

  it('finds by words, names and pasted formulas', async () => {
    const first = async (typed: string): Promise<string | null> => {
      await one.page.fill('input', typed);
      return one.page.locator('.entry summary code').first().textContent();
    };
    expect(await first('plaster')).toBe('PLASTER');
    expect(await first('=JACKET.SHELL_AREA(')).toBe('SHELL_AREA');
    expect(await first('how much water')).toBe('WATER');
    await one.page.fill('input', 'zeppelin');
    expect(await words(one.page, 'find')).toContain('Nothing fits these words.');
  });

  it('puts an example into an empty cell, and asks before it covers anything', async () => {
    const { page } = one;
    const formula = (address: string) =>
      page.evaluate((at) => window.hostStandIn.workbook.sheets.Rows![at]?.f, address);
    await page.fill('input', 'plaster');
    await page.click('.entry >> nth=0');
    await page.evaluate(() => window.hostStandIn.select('Rows', 'H9'));
    await page.click('text=Put in the cell');
    await expect.poll(() => formula('H9')).toBe('=JACKET.PLASTER(1,8)');
    expect(await page.locator('.say').textContent()).toContain('Put in H9.');
    await page.evaluate(() => window.hostStandIn.select('Rows', 'D7'));
    await page.click('text=Put in the cell');
    await page.click('text=Leave it');
    expect(await formula('D7')).toBe('=SUM(B2:B3)');
    await page.click('text=Put in the cell');
    await page.click('text=Put it over what is there');
    await expect.poll(() => formula('D7')).toBe('=JACKET.PLASTER(1,8)');
  });

  it('says in plain words why nothing could be put in', async () => {
    await one.page.evaluate(() => {
      window.hostStandIn.select('Rows', 'K9');
      window.hostStandIn.failNext('InvalidOperationInCellEditMode');
    });
    await one.page.click('text=Put in the cell');
    await expect.poll(() => one.page.locator('.say').textContent()).toMatch(/^A cell is being typed into\./);
    expect(one.said).toEqual([]);
  });
});

it('can be used with the keyboard alone', async () => {
  const { page, close } = await opened({ read: false });
  const focused = () => page.evaluate(() => document.activeElement?.textContent ?? '');
  /** Presses Tab until something with these words has the focus, and shows it. */
  const tabTo = async (text: string): Promise<void> => {
    for (let i = 0; i < 60; i++) {
      await page.keyboard.press('Tab');
      if (!(await focused()).startsWith(text)) continue;
      const outline = await page.evaluate(() => getComputedStyle(document.activeElement!).outlineStyle);
      expect(outline, `${text} shows the focus`).not.toBe('none');
      return;
    }
    throw new Error(`${text} cannot be reached`);
  };
  await tabTo('Why: dust');
  await page.keyboard.press('Enter');
  await tabTo('I have read them');
  await page.keyboard.press('Enter');
  expect(await focused()).toBe('What does this cell say?');
  await page.waitForSelector('text=holds no function');
  await tabTo('Find a function');
  await page.keyboard.press('Enter');
  expect(await focused()).toBe('What do you want to know?');
  await page.keyboard.press('Tab');
  await page.keyboard.type('plaster');
  await page.keyboard.press('Tab');
  await page.keyboard.press('Enter');
  await page.evaluate(() => window.hostStandIn.select('Rows', 'H9'));
  await tabTo('Put in the cell');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.say').textContent()).toContain('Put in H9.');
  await close();
});

interface Violation {
  readonly id: string;
  readonly impact: string;
  readonly nodes: readonly { readonly html: string }[];
}

const axe = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What would keep somebody from using the page as it stands, as sentences. */
const barriers = async (page: Page): Promise<string[]> => {
  const violations = await page.evaluate(async () => {
    const { axe: run } = window as unknown as {
      axe: { run(root: Document, options: unknown): Promise<{ violations: Violation[] }> };
    };
    return (await run.run(document, { rules: { 'target-size': { enabled: true } } })).violations;
  });
  const found = violations
    .filter(({ impact }) => impact === 'serious' || impact === 'critical')
    .map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 100)).join(' ')}`);
  const layout = await page.evaluate(() => {
    const told: string[] = [];
    const wide = document.documentElement.scrollWidth - document.documentElement.clientWidth;
    if (wide > 0) told.push(`the page is ${wide} px wider than its window`);
    for (const one of document.querySelectorAll('button, a, summary, input')) {
      const { width, height } = one.getBoundingClientRect();
      if (height > 0 && (height < 24 || width < 24)) told.push(`${one.outerHTML.slice(0, 80)} is ${width} × ${height}`);
    }
    return told;
  });
  return [...found, ...layout];
};

const LOOKS: readonly (readonly [string, BrowserContextOptions])[] = [
  ['light', {}],
  ['dark', { colorScheme: 'dark' }],
  ['forced colours', { forcedColors: 'active' }],
];

describe.each(LOOKS)('at 320 px: %s', (name, context) => {
  const shot = (page: Page, state: string) =>
    page.screenshot({ path: picture(`pane-${name.replace(' ', '-')}-${state}`), fullPage: true });

  it('nothing serious stands in anybody’s way, in any state', async () => {
    const { page, close, said } = await opened({ read: false, context });
    await page.evaluate(axe);
    const states: readonly (readonly [string, () => Promise<unknown>])[] = [
      ['cautions', async () => undefined],
      ['cautions-why', () => unfold(page, 'cautions')],
      ['nothing', () => page.click('text=I have read them')],
      ['result', () => select(page, 'D2')],
      ['settings', () => unfold(page, 'cell')],
      ['error', () => select(page, 'D3')],
      ['not-followed', () => select(page, 'D4')],
      ['topics', () => tab(page, 'Find a function')],
      ['topic', () => page.click('.topic > summary >> nth=2')],
      ['found', () => page.fill('input', 'plaster')],
      ['entry', () => page.click('.entry >> nth=0')],
      ['ask', () => page.click('text=Put in the cell')],
      ['said', () => page.click('text=Put it over what is there')],
      ['none', () => page.fill('input', 'zeppelin')],
    ];
    for (const [state, reach] of states) {
      await reach();
      await page.waitForTimeout(50);
      await shot(page, state);
      expect(await barriers(page), state).toEqual([]);
    }
    expect(said).toEqual([]);
    await close();
  });
});

it('a page without its host can be read by everybody too', async () => {
  const { page, close } = await opened({ scripts: 'blocked', read: false });
  await page.evaluate(axe);
  await page.screenshot({ path: picture('pane-blocked'), fullPage: true });
  expect(await barriers(page)).toEqual([]);
  await close();
});
