import { spawnSync } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { afterAll, expect, it } from 'vitest';
import { filesIn } from '../../src/build/site.ts';

const script = resolve(import.meta.dirname, '../../src/build/build.mjs');
const folder = mkdtempSync(join(tmpdir(), 'jacket-out-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const build = (...args: string[]) =>
  spawnSync(process.execPath, [script, '--only', 'functions', ...args], { encoding: 'utf8' });

it('builds a whole site for another address into another folder', () => {
  const { status, stderr } = build('--base-url', 'https://example.org/jackets/', '--out', folder);
  expect(stderr).toBe('');
  expect(status).toBe(0);
  const files = filesIn(folder);
  for (const file of [
    'taskpane.html',
    'functions.js',
    'functions.css',
    'functions.json',
    'manifest.xml',
    'look.css',
    'help/index.html',
    'help/plaster.html',
    'icons/icon-80.png',
  ])
    expect(files).toContain(file);
  for (const file of ['manifest.xml', 'functions.json']) {
    const text = readFileSync(join(folder, file), 'utf8');
    expect(text).toContain('https://example.org/jackets/');
    expect(text).not.toContain('localhost');
  }
});

it('says in one line what is wrong with an address', () => {
  const { status, stderr } = build('--base-url', 'http://example.org', '--out', folder);
  expect(status).toBe(1);
  expect(stderr).toBe('"http://example.org" is not an https address. Spreadsheets load add-ins over https only.\n');
});
