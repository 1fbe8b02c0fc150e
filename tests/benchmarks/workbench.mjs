// The workbench in a browser: sizes of its bundle, start, and how long a changed cell takes to show its results.
import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { gzipSync } from 'node:zlib';
import { chromium } from 'playwright-core';
import { ensureChromium, launchArgs } from '../../src/build/ensure-chromium.mjs';
import { serve } from '../../src/build/serve.mjs';
import { median } from './table.mjs';

const root = resolve(import.meta.dirname, '../..');
const EDITS = 9;
const STARTS = 3;

const JACKETS = (r) => [
  `_xldudf_JACKET_LAYERS(D${r})`,
  `_xldudf_JACKET_SHELL_AREA(A${r},B${r},C${r})`,
  `_xldudf_JACKET_PLASTER(F${r},E${r})`,
  `_xldudf_JACKET_WATER(G${r})`,
  `_xldudf_JACKET_MIXES(F${r},E${r})`,
  `_xldudf_JACKET_CLOTH(F${r},E${r})`,
  `_xldudf_JACKET_PADDING(F${r})`,
  `_xldudf_JACKET_WEIGHT(F${r},E${r},D${r})`,
];
const BUILT_IN = (r) => ['E', 'F', 'G', 'H', 'I', 'J', 'K', 'L'].map((column) => `ROUND(${column}${r}*2+A${r},1)`);

/** A workbook of sizes with formulas beside them. */
const book = ({ Workbook, blankBook }, rows, formulas) => {
  const workbook = Workbook.read(blankBook('Rows'));
  const cells = new Map();
  for (let r = 2; r < rows + 2; r++) {
    for (const [i, value] of [20 + (r % 80), 10 + (r % 30), 5 + (r % 20), 1 + (r % 120)].entries())
      cells.set(`${'ABCD'[i]}${r}`, { value });
    for (const [i, formula] of formulas(r).entries()) {
      const address = `${'EFGHIJKLMNOPQRSTUVWXYZ'[i]}${r}`;
      cells.set(address, { value: 0, formula, ...(formula.startsWith('_xldudf') ? { arrayRef: address } : {}) });
    }
  }
  workbook.patch('Rows', cells);
  return workbook.bytes();
};

const size = (name) => {
  const bytes = readFileSync(join(root, 'dist', name));
  return [
    name,
    (bytes.length / 1e6).toFixed(2),
    'MB',
    `${(gzipSync(bytes, { level: 9 }).length / 1e6).toFixed(2)} packed`,
  ];
};

/** Milliseconds from the start of the page to its first paint, to the calculated sample. */
const start = async (browser, address) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator('html[data-ready]').waitFor({ timeout: 60_000 });
  const times = await page.evaluate(() => [
    performance.getEntriesByType('paint')[0]?.startTime ?? Number.NaN,
    Number(document.documentElement.dataset.ready),
  ]);
  await context.close();
  return times;
};

/** Median milliseconds from a changed cell to results in the cells. */
const edits = async (browser, address, bytes) => {
  const context = await browser.newContext({ viewport: { width: 1280, height: 800 } });
  const page = await context.newPage();
  await page.goto(address);
  await page.locator('html[data-ready]').waitFor({ timeout: 60_000 });
  const times = await page.evaluate(
    async ([packed, count]) => {
      const { bench } = window;
      await bench.open(
        Uint8Array.from(atob(packed), (sign) => sign.charCodeAt(0)),
        'rows.xlsx',
      );
      await bench.settled();
      const { api } = bench.grid;
      const cell = api.getActiveWorkbook().getActiveSheet().getRange(5, 0);
      const measured = [];
      for (let i = 0; i < count; i++) {
        const begin = performance.now();
        const done = new Promise((resolve) => {
          const waiting = api.getFormula().calculationResultApplied(() => {
            waiting.dispose();
            resolve(performance.now() - begin);
          });
        });
        cell.setValue(50 + i);
        measured.push(await done);
        await bench.settled();
      }
      return measured;
    },
    [Buffer.from(bytes).toString('base64'), EDITS],
  );
  await context.close();
  return median(times);
};

/** Rows for the table. `compiled` loads a module of the build folder. */
export const workbench = async (compiled) => {
  const { Workbook } = await compiled('workbook/index.js');
  const { blankBook } = await compiled('workbench/blank-book.js');
  const { address, close } = await serve({ port: 0 });
  const browser = await chromium.launch({ executablePath: ensureChromium(), args: launchArgs() });
  try {
    const starts = [];
    for (let i = 0; i < STARTS; i++) starts.push(await start(browser, address));
    const small = book({ Workbook, blankBook }, 500, JACKETS);
    const large = book({ Workbook, blankBook }, 1000, (r) => [...JACKETS(r), ...BUILT_IN(r)]);
    return [
      size('workbench.js'),
      size('workbench.css'),
      ['first paint', median(starts.map(([paint]) => paint)).toFixed(0), 'ms', 'aim 1000'],
      ['sample calculated', median(starts.map(([, ready]) => ready)).toFixed(0), 'ms', 'aim 3000'],
      ['one cell, 500 rows of 8 formulas of ours', (await edits(browser, address, small)).toFixed(0), 'ms', 'aim 200'],
      ['one cell, 16,000 formulas', (await edits(browser, address, large)).toFixed(0), 'ms', 'aim 500'],
    ];
  } finally {
    await browser.close();
    await close();
  }
};
