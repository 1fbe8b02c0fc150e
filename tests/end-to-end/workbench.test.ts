/** The workbench as people use it: in a browser, with the keyboard, on the sample workbook. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { zipSync } from 'fflate';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { compareWorkbooks, Workbook } from '../../src/workbook/index.ts';
import {
  cell,
  ensureBuilt,
  fileLine,
  launch,
  message,
  type OpenPage,
  openFile,
  openPage,
  ready,
  root,
  save,
  select,
  settled,
  startServer,
  type,
  value,
} from './workbench-page.ts';

const SAMPLE = new Uint8Array(readFileSync(join(root, 'sample-workbooks/collection-rows.xlsx')));
/** The sheet called Spilled, and the columns of its results. */
const SPILLED = 1;
const [LENGTH, SHELL_AREA, PLASTER, CLOTH, DRY_WEIGHT] = [3, 10, 11, 14, 16];

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** What becomes true within seconds, on a busy machine too. */
const soon = <T>(read: () => Promise<T>, message?: string) =>
  expect.poll(read, { timeout: 8000, ...(message === undefined ? {} : { message }) });

let browser: Browser;
let address: string;
let close: () => Promise<void>;

beforeAll(async () => {
  ensureBuilt();
  const server = await startServer();
  ({ address, close } = server);
  browser = await launch();
}, 180_000);

afterAll(async () => {
  await browser?.close();
  await close?.();
});

/** Serious and critical findings, each with where it is. */
async function axe({ page }: OpenPage): Promise<string[]> {
  await page.evaluate(AXE);
  return page.evaluate(async () => {
    const { axe: run } = window as unknown as {
      axe: { run(): Promise<{ violations: { id: string; impact: string; nodes: { html: string }[] }[] }> };
    };
    const { violations } = await run.run();
    return violations
      .filter(({ impact }) => impact === 'serious' || impact === 'critical')
      .flatMap(({ id, nodes }) => nodes.map(({ html }) => `${id}: ${html.slice(0, 160)}`));
  });
}

describe('the sample', () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage(browser, address);
  }, 60_000);
  afterAll(async () => {
    await open?.context.close();
  });

  test('opens calculated, as the file says', async () => {
    const file = Workbook.read(SAMPLE).sheets[SPILLED]!;
    for (const address of ['K5', 'N5', 'P5', 'K44', 'K3']) {
      const { row, column, value: inFile } = file.cell(address)!;
      const shown = await value(open.page, SPILLED, row, column);
      // The same functions on the same engine: only the last digits of a double may differ.
      expect(shown, address).toBeCloseTo(inFile as number, 10);
    }
  });

  test('a new length changes plaster, cloth and weight of its row, and nothing of the next', async () => {
    const { page } = open;
    const before = await Promise.all([PLASTER, CLOTH, DRY_WEIGHT].map((c) => value(page, SPILLED, 6, c)));
    const next = await value(page, SPILLED, 7, PLASTER);
    await select(page, 6, LENGTH);
    await type(page, '40');
    const after = await Promise.all([PLASTER, CLOTH, DRY_WEIGHT].map((c) => value(page, SPILLED, 6, c)));
    for (const [i, now] of after.entries()) expect(now).toBeGreaterThan(before[i] as number);
    expect(await value(page, SPILLED, 7, PLASTER)).toBe(next);
    expect(await page.title()).toContain('•');
  });

  test('a sum over spilled cells follows', async () => {
    const { page } = open;
    const rows = await Promise.all(Array.from({ length: 40 }, (_, i) => value(page, SPILLED, 5 + i, PLASTER)));
    const formula = (await cell(page, SPILLED, 3, PLASTER)).formula;
    const first = Number(/K(\d+):/.exec(formula)![1]);
    const sum = rows.slice(first - 5).reduce<number>((total, one) => total + Number(one), 0);
    // Forty doubles added in the same order.
    expect(await value(page, SPILLED, 3, PLASTER)).toBeCloseTo(sum, 9);
  });

  test('undo and redo bring numbers and results back', async () => {
    const { page } = open;
    const changed = await value(page, SPILLED, 6, PLASTER);
    await page.keyboard.press('Control+z');
    await settled(page);
    expect(await value(page, SPILLED, 6, LENGTH)).toBe(11);
    expect(await value(page, SPILLED, 6, PLASTER)).toBeLessThan(changed as number);
    await page.click('#bench-redo');
    await settled(page);
    expect(await value(page, SPILLED, 6, PLASTER)).toBe(changed);
    await page.click('#bench-undo');
    await settled(page);
  });

  test('an error says its reason beside the cell and aloud, and forgets it when it is mended', async () => {
    const { page } = open;
    await select(page, 6, LENGTH);
    await type(page, 'eleven');
    await select(page, 6, SHELL_AREA);
    expect(await value(page, SPILLED, 6, SHELL_AREA)).toEqual({ error: '#VALUE!' });
    await page.locator('#bench-note').waitFor();
    expect(await page.locator('#bench-note').textContent()).toContain('length is text');
    await soon(() => page.locator('#bench-cell').textContent()).toContain('J6, #VALUE!, length is text');
    await select(page, 6, LENGTH);
    await type(page, '11');
    await select(page, 6, SHELL_AREA);
    await page.locator('#bench-note').waitFor({ state: 'hidden' });
    await soon(() => page.locator('#bench-cell').textContent()).toContain('J6, 0.06 m²');
    expect(await page.locator('#bench-cell').textContent()).not.toContain('text');
  });

  test('a formula is completed with the keyboard and spills', async () => {
    const { page } = open;
    await select(page, 50, LENGTH);
    await page.keyboard.type('=JACKET.OUTER_S');
    await page.getByText('JACKET.OUTER_SIZE').first().waitFor();
    expect(await axe(open)).toEqual([]);
    await page.keyboard.press('Tab');
    await soon(() => page.locator('#bench-grid').evaluate(() => window.bench.edited())).toBe('=JACKET.OUTER_SIZE(');
    // The grid moves its caret behind the bracket a moment after the text is there.
    await page.waitForTimeout(400);
    await page.keyboard.type('60,');
    // The argument that comes next, with what it is and its unit.
    await page.getByText('[settings]').waitFor();
    await page.getByText('size across, cm (us: in)').waitFor();
    await type(page, '40,30,8)');
    // 4.2 of the example values.
    const sizes = await Promise.all([3, 4, 5].map((c) => value(page, SPILLED, 50, c)));
    for (const [i, expected] of [73.87, 53.87, 53.87].entries()) expect(sizes[i]).toBeCloseTo(expected, 2);
    await page.keyboard.press('Control+z');
    await settled(page);
  });

  test('what the file could not keep is called off with a sentence', async () => {
    const { page } = open;
    await select(page, 5, LENGTH);
    await page.keyboard.press('Control+b');
    await soon(() => message(page)).toContain('Formats stay as the file has them');
    await page.keyboard.press('Control+x');
    await soon(() => message(page)).toContain('Copy and paste');
    await select(page, 4, LENGTH);
    await type(page, 'reach');
    expect(await message(page)).toContain('Headings of tables stay');
    expect(await value(page, SPILLED, 4, LENGTH)).toBe('length');
  });

  test('keys that move', async () => {
    const { page } = open;
    const spoken = (): Promise<string | null> => page.locator('#bench-cell').textContent();
    await select(page, 8, 5);
    for (const [keys, address] of [
      ['Home', 'A8'],
      ['Tab', 'B8'],
      ['Shift+Tab', 'A8'],
      ['Enter', 'A9'],
      ['Shift+Enter', 'A8'],
      ['Control+Home', 'A1'],
    ] as const) {
      await page.keyboard.press(keys);
      await soon(spoken, keys).toMatch(new RegExp(`^${address}\\b`));
    }
    await page.keyboard.press('PageDown');
    await soon(spoken).toMatch(/^A[2-9]\d\b/);
    await page.keyboard.press('PageUp');
    await soon(spoken).toMatch(/^A1\b/);
    await page.keyboard.press('Control+End');
    await soon(spoken).toMatch(/^P52\b/);
    await page.keyboard.press('Control+PageDown');
    await soon(() => page.locator('.bench-tab[aria-current]').textContent()).toBe('Row by row');
    await page.keyboard.press('Control+PageUp');
    await soon(() => page.locator('.bench-tab[aria-current]').textContent()).toBe('Spilled');
    const place = (): Promise<string | undefined> =>
      page.evaluate(() =>
        ['bench-grid', 'bench-pane', 'bench-actions'].find((id) =>
          document.getElementById(id)?.contains(document.activeElement),
        ),
      );
    const visited: (string | undefined)[] = [];
    for (let i = 0; i < 3; i += 1) {
      await page.keyboard.press('F6');
      visited.push(await place());
    }
    expect(visited).toEqual(['bench-pane', 'bench-actions', 'bench-grid']);
  });

  test('the pane tells what the selected cell used', async () => {
    const { page } = open;
    await page.evaluate(() => {
      const book = window.bench.grid.api.getActiveWorkbook();
      const sheet = book?.getSheetByName('Row by row');
      if (sheet) book?.setActiveSheet(sheet);
    });
    await select(page, 8, PLASTER);
    await page.locator('#bench-pane button.tab', { hasText: 'This cell' }).click();
    await soon(() => page.locator('#bench-pane .screen-cell').textContent()).toContain('about 3.08 kg');
    await page.evaluate(() => {
      const book = window.bench.grid.api.getActiveWorkbook();
      const sheet = book?.getSheetByName('Spilled');
      if (sheet) book?.setActiveSheet(sheet);
    });
  });

  test('saves the changed cell and those that follow from it, and nothing else', async () => {
    const { page } = open;
    await select(page, 7, LENGTH);
    await type(page, '9.5');
    const { name, bytes } = await save(page);
    expect(name).toBe('collection-rows.xlsx');
    const { differences, cells } = compareWorkbooks(SAMPLE, bytes);
    expect(differences).toEqual([]);
    expect(Object.keys(cells)).toEqual(['Spilled']);
    expect(cells.Spilled).toContain('C7');
    // The row's own results and the sums above them.
    expect(cells.Spilled!.filter((one) => !/^(?:C7|[J-P][37])$/.test(one))).toEqual([]);
    const again = Workbook.read(bytes).sheets[SPILLED]!;
    expect(again.cell('C7')!.value).toBe(9.5);
    expect(again.cell('K7')!.value).toBe(await value(page, SPILLED, 7, PLASTER));
    await openFile(page, 'again.xlsx', bytes);
    await soon(() => fileLine(page)).toContain('again.xlsx');
    await settled(page);
    expect(await value(page, SPILLED, 7, LENGTH)).toBe(9.5);
    // The second workbook of a page calculates like the first, LET formulas too.
    expect(await value(page, SPILLED, 7, PLASTER)).toBe(again.cell('K7')!.value);
    expect(compareWorkbooks(bytes, (await save(page)).bytes)).toEqual({ differences: [], cells: {} });
  });

  test('asked nothing of another computer, and said nothing on the console', () => {
    expect(open.said).toEqual([]);
  });

  test('no serious finding about access', async () => {
    expect(await axe(open)).toEqual([]);
    await open.page.click('#bench-help-button');
    expect(await axe(open)).toEqual([]);
    await open.page.keyboard.press('Escape');
    await open.page.click('#bench-samples-button');
    expect(await axe(open)).toEqual([]);
    await open.page.keyboard.press('Escape');
  });
});

describe('files', () => {
  let open: OpenPage;
  beforeAll(async () => {
    open = await openPage(browser, address);
  }, 60_000);
  afterAll(async () => {
    await open?.context.close();
  });

  test('a file that cannot be opened gives one sentence and leaves the open one alone', async () => {
    const { page } = open;
    const before = await value(page, SPILLED, 6, PLASTER);
    const bomb = zipSync({ 'xl/worksheets/sheet1.xml': [new Uint8Array(60_000_000), { level: 9 }] });
    const damaged = SAMPLE.slice(0, SAMPLE.length / 2);
    // The first bytes of a compound file, which encrypted workbooks are.
    const encrypted = new Uint8Array([0xd0, 0xcf, 0x11, 0xe0, 0xa1, 0xb1, 0x1a, 0xe1, ...new Uint8Array(2000)]);
    const files: readonly (readonly [string, Uint8Array])[] = [
      ['bomb.xlsx', bomb],
      ['damaged.xlsx', damaged],
      ['encrypted.xlsx', encrypted],
      ['empty.xlsx', new Uint8Array()],
      ['letter.xlsx', new TextEncoder().encode('Dear registrar')],
    ];
    for (const [name, bytes] of files) {
      await page.evaluate(() => window.bench.messages.clear());
      await openFile(page, name, bytes);
      await soon(() => message(page), name).toContain(name);
      const said = await message(page);
      expect(said.split('\n'), name).toHaveLength(1);
      expect(said).not.toMatch(/undefined|Error|invalid/);
      expect(await fileLine(page)).toContain('collection-rows.xlsx');
    }
    expect(await value(page, SPILLED, 6, PLASTER)).toBe(before);
  });

  test('pasted cells come in as they are, text among the numbers too, and without formats', async () => {
    const { page } = open;
    await page.evaluate(() => navigator.clipboard.writeText('12\t5.5\nabout 12\t6\n=SUM(C60:D60)\t'));
    await select(page, 60, LENGTH);
    await page.keyboard.press('Control+v');
    await settled(page);
    expect(await value(page, SPILLED, 60, 3)).toBe(12);
    expect(await value(page, SPILLED, 60, 4)).toBe(5.5);
    expect(await value(page, SPILLED, 61, 3)).toBe('about 12');
    expect(await value(page, SPILLED, 62, 3)).toBe(17.5);
    const { bytes } = await save(page);
    const { differences, cells } = compareWorkbooks(SAMPLE, bytes);
    expect(differences).toEqual([]);
    expect([...cells.Spilled!].sort()).toEqual(['C60', 'C61', 'C62', 'D60', 'D61']);
    expect(Workbook.read(bytes).sheets[SPILLED]!.cell('C62')!.formula!.text).toBe('SUM(C60:D60)');
  });

  test('a .csv is opened, changed and saved as one', async () => {
    const { page } = open;
    await openFile(page, 'sizes.csv', new TextEncoder().encode('number,length\r\nINV 7,"1,5"\r\nINV 8,24\r\n'));
    await soon(() => fileLine(page)).toContain('sizes.csv');
    await settled(page);
    expect(await value(page, 0, 2, 2)).toBe('1,5');
    expect(await value(page, 0, 3, 2)).toBe(24);
    await select(page, 3, 2);
    await type(page, '25');
    const { name, bytes } = await save(page);
    expect(name).toBe('sizes.csv');
    expect(new TextDecoder().decode(bytes)).toBe('number,length\r\nINV 7,"1,5"\r\nINV 8,25\r\n');
    await select(page, 4, 2);
    await type(page, '=SUM(B3:B3)');
    const book = await save(page);
    expect(book.name).toBe('sizes.xlsx');
    await soon(() => message(page)).toContain('cannot keep formulas');
  });

  test('said nothing on the console', () => {
    expect(open.said).toEqual([]);
  });
});

describe('drafts', () => {
  test('unsaved work comes back after a reload, and two tabs keep their own', async () => {
    const first = await openPage(browser, address);
    const { page, context } = first;
    page.on('dialog', (dialog) => void dialog.accept());
    await select(page, 6, LENGTH);
    await type(page, '77');
    const second = await openPage(browser, address, { context });
    expect(await value(second.page, SPILLED, 6, LENGTH)).toBe(11);
    await select(second.page, 6, LENGTH);
    await type(second.page, '33');
    await page.waitForTimeout(1000);
    await page.reload();
    await ready(page);
    expect(await value(page, SPILLED, 6, LENGTH)).toBe(77);
    expect(await message(page)).toContain('not saved yet');
    expect(await fileLine(page)).toContain('changed');
    expect(await value(second.page, SPILLED, 6, LENGTH)).toBe(33);
    const { bytes } = await save(page);
    expect(compareWorkbooks(SAMPLE, bytes).cells.Spilled).toContain('C6');
    await page.reload();
    await ready(page);
    expect(await value(page, SPILLED, 6, LENGTH)).toBe(11);
    // The second tab is closed with its work in it; the next one is told.
    await second.page.waitForTimeout(600);
    await second.page.close();
    const third = await openPage(browser, address, { context });
    await soon(() => message(third.page)).toContain('were not saved');
    await third.page.locator('#bench-messages button', { hasText: 'Open them' }).click();
    await soon(() => value(third.page, SPILLED, 6, LENGTH)).toBe(33);
    await context.close();
  }, 120_000);

  test('leaving with unsaved work asks first', async () => {
    const { page, context } = await openPage(browser, address);
    await select(page, 6, LENGTH);
    await type(page, '12');
    const asked = page.waitForEvent('dialog');
    void page.close({ runBeforeUnload: true });
    const dialog = await asked;
    expect(dialog.type()).toBe('beforeunload');
    await dialog.accept();
    await context.close();
  });

  test('another file in place of unsaved work asks first', async () => {
    const { page, context } = await openPage(browser, address);
    await select(page, 6, LENGTH);
    await type(page, '12');
    await openFile(page, 'other.xlsx', SAMPLE);
    await page.locator('dialog[open]', { hasText: 'not saved' }).waitFor();
    await page.keyboard.press('Enter');
    await page.locator('dialog[open]').waitFor({ state: 'detached' });
    expect(await value(page, SPILLED, 6, LENGTH)).toBe(12);
    expect(await fileLine(page)).toContain('collection-rows.xlsx');
    await context.close();
  });
});

describe('looks', () => {
  for (const [name, options] of [
    ['dark', { colorScheme: 'dark' }],
    ['forced colours', { forcedColors: 'active' }],
    ['narrow', { viewport: { width: 320, height: 640 } }],
  ] as const)
    test(`no serious finding about access: ${name}`, async () => {
      const open = await openPage(browser, address, options);
      expect(await axe(open)).toEqual([]);
      expect(open.said).toEqual([]);
      const overflow = await open.page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
      expect(overflow).toBeLessThanOrEqual(0);
      await open.context.close();
    });
});
