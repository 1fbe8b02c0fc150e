/** Every number of a function that can hurt somebody stands in one block with its limits, its source and its cautions. */
import { describe, expect, test } from 'vitest';
import { block } from '../../../src/build/help/caution-block.ts';
import { functions } from '../../../src/functions/index.ts';
import { cautionsFor } from '../../../src/texts/cautions.ts';
import { attributes, htmlFiles, words } from './site.ts';

/** Blocks of a page: from one opening to its end. */
const blocks = (html: string): { readonly inside: readonly string[]; readonly rest: string } => {
  const inside: string[] = [];
  let rest = html;
  for (;;) {
    const at = rest.indexOf('<div class="worked"');
    if (at < 0) return { inside, rest };
    let depth = 0;
    let end = at;
    for (const tag of rest.slice(at).matchAll(/<(\/?)div\b[^>]*>/g)) {
      depth += tag[1] ? -1 : 1;
      end = at + tag.index + tag[0].length;
      if (depth === 0) break;
    }
    inside.push(rest.slice(at, end));
    rest = rest.slice(0, at) + rest.slice(end);
  }
};

const hurting = (ids: string): typeof functions =>
  functions.filter((f) => f.hurts?.length && ids.split(' ').includes(f.id));

/** What is missing beside the numbers of a page. */
const missing = (html: string): string[] => {
  const { inside, rest } = blocks(html);
  const outside = attributes(rest, 'data-result').flatMap((ids) => hurting(ids).map(({ id }) => `${id}: no block`));
  const within = inside.flatMap((one) =>
    attributes(one, 'data-result').flatMap((ids) =>
      hurting(ids).flatMap((f) => [
        ...(attributes(one, 'data-limit').includes(f.id) ? [] : [`${f.id}: no limit`]),
        ...(attributes(one, 'data-source').includes(f.id) && words(one).includes(f.source.slice(1))
          ? []
          : [`${f.id}: no source`]),
        ...cautionsFor(f.hurts!)
          .filter(({ id, text }) => !attributes(one, 'data-caution').includes(id) || !words(one).includes(text))
          .map(({ id }) => `${f.id}: no caution about ${id}`),
      ]),
    ),
  );
  return [...outside, ...within];
};

test('nothing is missing on any page', () => {
  expect(htmlFiles.flatMap(([name, html]) => missing(html).map((what) => `${name}: ${what}`))).toEqual([]);
});

test('each function that can hurt somebody has its number on its page', () => {
  for (const f of functions.filter(({ hurts }) => hurts?.length)) {
    const html = new Map(htmlFiles).get(`${f.id.toLowerCase().replaceAll('_', '-')}.html`)!;
    expect(attributes(html, 'data-result'), f.id).toContain(f.id);
  }
});

describe('planted pages', () => {
  const plaster = functions.find(({ id }) => id === 'PLASTER')!;
  const result = '<p data-result="PLASTER">18.3 kg</p>';

  test('a whole block is let through', () => {
    expect(missing(`<main>${block(result, [plaster])}</main>`)).toEqual([]);
  });
  test('a number outside of a block is found', () => {
    expect(missing(`<main>${result}${block(result, [plaster])}</main>`)).toEqual(['PLASTER: no block']);
  });
  test('a block without a limit, a source or a caution is found', () => {
    const whole = block(result, [plaster]);
    expect(missing(whole.replace(/<p data-limit[\s\S]*?<\/p>/, ''))).toEqual(['PLASTER: no limit']);
    expect(missing(whole.replace(/<p data-source[\s\S]*?<\/p>/, ''))).toEqual(['PLASTER: no source']);
    expect(missing(whole.replace(/<li data-caution="heat"[\s\S]*?<\/li>/, ''))).toEqual([
      'PLASTER: no caution about heat',
    ]);
  });
  test('a block that names no function has no cautions', () => {
    const sources = missing(block(result, []));
    expect(sources).toContain('PLASTER: no limit');
    expect(sources).toContain('PLASTER: no caution about dust');
  });
});
