/** The site as a whole: every page that must be there, every link, nothing from outside, HTML by the rules. */
import { mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { HtmlValidate } from 'html-validate';
import { describe, expect, test } from 'vitest';
import { GUIDES } from '../../../src/build/help/guides/index.ts';
import { helpFile, topicFile } from '../../../src/build/help/names.ts';
import { writeHelp } from '../../../src/build/site.ts';
import { SETTINGS } from '../../../src/calculation/settings.ts';
import { TOPICS } from '../../../src/functions/define.ts';
import { functions } from '../../../src/functions/index.ts';
import { ASSETS, attributes, files, htmlFiles } from './site.ts';

test('there is a page for each function, topic and guide, and for settings, sources and cautions', () => {
  const expected = [
    'index.html',
    ...functions.map((f) => helpFile(f.id)),
    ...TOPICS.map(topicFile),
    ...GUIDES.map(({ file }) => file),
    'guide-cautions.html',
    'list-settings.html',
    'list-sources.html',
    'search-index.js',
  ];
  expect([...files.keys()].sort()).toEqual(expected.sort());
});

test('pages are written with what they load beside them, and nothing of before stays', () => {
  const folder = mkdtempSync(join(tmpdir(), 'jacket-help-'));
  try {
    const to = join(folder, 'help');
    mkdirSync(to);
    writeFileSync(join(to, 'gone.html'), 'a page of before');
    writeHelp(resolve('.'), to);
    expect(readdirSync(to).sort()).toEqual([...files.keys(), ...ASSETS].sort());
    expect(readdirSync(folder)).toEqual(['help']);
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
});

/** What a link of a page leads to, or why it leads nowhere. */
const brokenLink = (from: string, html: string, address: string): string | undefined => {
  const [path, fragment] = address.split('#');
  const target = path ? files.get(path) : html;
  if (path && ASSETS.includes(path)) return undefined;
  if (target === undefined) return `${from}: there is no ${path}`;
  if (fragment !== undefined && !attributes(target, 'id').includes(fragment))
    return `${from}: no #${fragment} in ${path || from}`;
  return undefined;
};

test('every link and every fragment leads somewhere', () => {
  const broken = htmlFiles.flatMap(([name, html]) =>
    [...attributes(html, 'href'), ...attributes(html, 'src')].flatMap((to) => brokenLink(name, html, to) ?? []),
  );
  expect(broken).toEqual([]);
});

test('a link that leads nowhere is found', () => {
  const html = '<p><a href="nowhere.html">a</a> <a href="index.html#nothing">b</a></p>';
  expect(attributes(html, 'href').map((to) => brokenLink('planted', html, to))).toEqual([
    'planted: there is no nowhere.html',
    'planted: no #nothing in index.html',
  ]);
});

test('the search leads to pages and settings that are there', () => {
  const text = files.get('search-index.js')!;
  const entries = JSON.parse(text.replace(/^globalThis\.HELP_INDEX = /, '').replace(/;\n$/, '')) as { to: string }[];
  expect(entries.length).toBe(htmlFiles.length - 1 + Object.keys(SETTINGS).length);
  expect(entries.flatMap(({ to }) => brokenLink('search', '', to) ?? [])).toEqual([]);
});

/** Addresses outside of the site. The name of the MathML and SVG languages is written as one but never asked for. */
const outside = (html: string): string[] =>
  (html.match(/(?:https?:)?\/\/[\w.-]+[^\s"'<]*/g) ?? []).filter(
    (found) => !/^http:\/\/www\.w3\.org\/(1998\/Math\/MathML|2000\/svg)$/.test(found),
  );

test('no page holds an address outside of the site', () => {
  expect(htmlFiles.flatMap(([name, html]) => outside(html).map((found) => `${name}: ${found}`))).toEqual([]);
  expect(outside('<img src="//example.org/a.png"><a href="https://example.org">')).toHaveLength(2);
});

test('no page holds a script or a style of its own, so that a strict policy lets it through', () => {
  for (const [name, html] of htmlFiles) {
    expect(html, name).not.toMatch(/<script(?![^>]*\ssrc=)|<style|\sstyle="|\son\w+="/);
  }
});

test('titles and headings differ, and each page has one heading of the first order', () => {
  const titles = htmlFiles.map(([, html]) => /<title>([^<]*)/.exec(html)![1]!);
  expect(new Set(titles).size).toBe(titles.length);
  for (const [name, html] of htmlFiles) expect(html.match(/<h1>/g), name).toHaveLength(1);
});

describe('HTML by the rules', () => {
  const validator = new HtmlValidate({
    extends: ['html-validate:recommended'],
    rules: {
      // A line is as long as its sentence.
      'long-title': 'off',
      // Pages are written without blanks at line ends by their templates or not; it means nothing to a reader.
      'no-trailing-whitespace': 'off',
      // role="region" and role="group" name places that scroll; a section element would put each into the outline.
      'prefer-native-element': 'off',
    },
  });

  test('all pages', { timeout: 30_000 }, async () => {
    const complaints: string[] = [];
    for (const [name, html] of htmlFiles) {
      const { results } = await validator.validateString(html, name);
      for (const { messages } of results)
        for (const m of messages) complaints.push(`${name}:${m.line}:${m.column} ${m.ruleId} ${m.message}`);
    }
    expect(complaints).toEqual([]);
  });

  test('a planted fault is found', async () => {
    const { valid } = await validator.validateString(files.get('index.html')!.replace('<main', '<p><main'));
    expect(valid).toBe(false);
  });
});
