// Draws the add-in's icons: manifest/icons/*.svg to PNG in the sizes that hosts ask for, with a Chromium of this computer.
// Run it after a change of a drawing: node src/build/icons.mjs. CHROME_PATH names the browser where it is in an unusual place.
//
// Each picture carries the SHA-256 of the drawing it was made from, so that a test can tell an old picture without a browser.
import { createHash } from 'node:crypto';
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { crc32 } from 'node:zlib';
import { chromium } from 'playwright-core';

const folder = resolve(import.meta.dirname, '../../manifest/icons');

/** Sizes [px], and the drawing of each. At 16 and 32 px the full drawing would be a blur, so they have their own. */
const ICONS = [
  { size: 16, drawing: 'icon-16.svg' },
  { size: 32, drawing: 'icon-32.svg' },
  { size: 64, drawing: 'icon.svg' },
  { size: 80, drawing: 'icon.svg' },
];

const BROWSERS = [
  '/usr/bin/chromium',
  '/usr/bin/chromium-browser',
  '/usr/bin/google-chrome',
  '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
];

/** Length of the signature and the first chunk of every PNG [bytes]. PNG specification. */
const HEADER_LENGTH = 33;

/** A PNG with a line of text after its header. */
const withText = (png, keyword, text) => {
  const body = Buffer.from(`tEXt${keyword}\0${text}`, 'latin1');
  const chunk = Buffer.alloc(body.length + 8);
  chunk.writeUInt32BE(body.length - 4, 0);
  body.copy(chunk, 4);
  chunk.writeUInt32BE(crc32(body), body.length + 4);
  return Buffer.concat([png.subarray(0, HEADER_LENGTH), chunk, png.subarray(HEADER_LENGTH)]);
};

const executablePath = process.env.CHROME_PATH ?? BROWSERS.find((path) => existsSync(path));
if (!executablePath) {
  console.error('No Chromium was found. Install one, or set CHROME_PATH to it, and run this again.');
  process.exit(1);
}

const browser = await chromium.launch({ executablePath, args: process.getuid?.() === 0 ? ['--no-sandbox'] : [] });
try {
  const page = await browser.newPage();
  for (const { size, drawing } of ICONS) {
    const svg = readFileSync(join(folder, drawing), 'utf8').replaceAll('\r\n', '\n');
    await page.setContent(`<style>body{margin:0}svg{display:block;width:${size}px;height:${size}px}</style>${svg}`);
    const png = await page.screenshot({ omitBackground: true, clip: { x: 0, y: 0, width: size, height: size } });
    const made = createHash('sha256').update(svg).digest('hex');
    writeFileSync(join(folder, `icon-${size}.png`), withText(png, 'Drawing SHA-256', made));
  }
} finally {
  await browser.close();
}
