// The add-in through the host's own JavaScript, with a stand-in for the host's native half: what the script's side costs. A real sheet adds its
// own time, which cannot be measured here.
import { join } from 'node:path';
import { chromium } from 'playwright-core';
import { ensureChromium, launchArgs } from '../../src/build/ensure-chromium.mjs';
import { answerFor, HOST, SITE } from '../end-to-end/add-in-files.mjs';
import { median } from './table.mjs';

const ROUNDS = 5;
const MANY = 10_000;
const CHAIN = 8;
const COLUMN = 50_000;

/** Longer than the host's script waits between two rounds of results, so that rounds do not meet. */
const REST_MS = 1_200;

const open = async (browser) => {
  const context = await browser.newContext({ viewport: { width: 320, height: 800 } });
  await context.route('**/*', (route) => {
    const answer = answerFor(route.request().url());
    return answer ? route.fulfill(answer) : route.abort();
  });
  await context.addInitScript({ path: join(import.meta.dirname, '../end-to-end/host-stand-in.js') });
  const page = await context.newPage();
  await page.goto(`${SITE}taskpane.html${HOST}`);
  await page.waitForSelector('.pane');
  return { context, page };
};

/** Milliseconds from opening the page to its first words, and to the pane. */
const loading = async (browser) => {
  const times = [];
  for (let i = 0; i < ROUNDS; i++) {
    const { context, page } = await open(browser);
    times.push(
      await page.evaluate(() => ({
        paint: performance.getEntriesByName('first-contentful-paint')[0].startTime,
        pane: performance.now(),
      })),
    );
    await context.close();
  }
  return { paint: median(times.map((one) => one.paint)), pane: median(times.map((one) => one.pane)) };
};

/** Milliseconds of a piece of work in the page, median of rounds with a rest between. */
const timed = async (page, work, size) => {
  const times = [];
  for (let i = 0; i < ROUNDS; i++) {
    await page.waitForTimeout(REST_MS);
    times.push(await page.evaluate(work, size));
  }
  return median(times);
};

const one = async () => {
  const begin = performance.now();
  await window.hostStandIn.call('PLASTER', [[[1]], [[8]], null]);
  return performance.now() - begin;
};

const many = async (count) => {
  const calls = Array.from({ length: count }, (_, i) => ({ id: 'PLASTER', args: [[[1 + i / count]], [[8]], null] }));
  const begin = performance.now();
  await window.hostStandIn.callMany(calls);
  return performance.now() - begin;
};

const chain = async (length) => {
  const begin = performance.now();
  let value = 1;
  for (let i = 0; i < length; i++)
    value = (await window.hostStandIn.call('PLASTER', [[[value]], [[4]], null])).value[0][0];
  return performance.now() - begin;
};

const column = async (rows) => {
  const areas = Array.from({ length: rows }, (_, i) => [1 + i / rows]);
  const begin = performance.now();
  await window.hostStandIn.call('PLASTER', [areas, [[8]], null]);
  return performance.now() - begin;
};

/**
 * Needs the built add-in in dist/ and compiled modules in build/.
 *
 * @returns rows of what, measured, unit, beside
 */
export const addIn = async () => {
  const browser = await chromium.launch({ executablePath: ensureChromium(), args: launchArgs() });
  try {
    const { paint, pane } = await loading(browser);
    const { page } = await open(browser);
    const row = (what, ms, beside = '') => [what, ms.toFixed(0), 'ms', beside];
    return [
      row('page to first words', paint),
      row('page to the pane', pane),
      row('one call', await timed(page, one), 'the host waits 50 ms for more results'),
      row(`${MANY} calls that depend on nothing`, await timed(page, many, MANY)),
      row(`${CHAIN} calls, each on the one before`, await timed(page, chain, CHAIN), 'the host rests 500 ms between'),
      row(`one call over ${COLUMN} rows`, await timed(page, column, COLUMN)),
    ];
  } finally {
    await browser.close();
  }
};
