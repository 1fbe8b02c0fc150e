import fc from 'fast-check';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { XmlReader } from '../../src/workbook/xml.ts';

const reader = (xml: string) => new XmlReader(xml, () => new Error('broken'));

/** Everything a reader reports, in one list. */
function events(xml: string): string[] {
  const r = reader(xml);
  const list: string[] = [];
  for (let event = r.next(); event !== 'end'; event = r.next()) {
    if (event === 'text') {
      const last = list.at(-1);
      if (last?.startsWith('text ')) list[list.length - 1] = last + r.text();
      else list.push(`text ${r.text()}`);
    } else list.push(`${event} {${r.space}}${r.local}`);
  }
  return list;
}

/** The same from a published parser. */
function secondOpinion(xml: string): string[] {
  const list: string[] = [];
  const parser = new SaxesParser({ xmlns: true });
  const text = (part: string) => {
    const last = list.at(-1);
    if (last?.startsWith('text ')) list[list.length - 1] = last + part;
    else list.push(`text ${part}`);
  };
  let depth = 0;
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    depth++;
    list.push(`open {${tag.uri}}${tag.local}`);
  });
  parser.on('closetag', (tag) => {
    depth--;
    list.push(`close {${tag.uri}}${tag.local}`);
  });
  parser.on('text', (part) => {
    if (depth > 0) text(part);
  });
  parser.on('cdata', text);
  parser.write(xml).close();
  return list;
}

describe('agrees with a published parser', () => {
  test.each([
    '<a/>',
    '<?xml version="1.0"?>\n<!-- note --><a b="1" c = \'2\' ><b/>text<c>&amp;&lt;&#65;&#x1F9B4;</c></a >\n<!-- end -->',
    '<x:a xmlns:x="u:1" xmlns="u:2"><b><x:b/><b xmlns="u:3"><c/></b><c/></b></x:a>',
    '<a><![CDATA[<not> &a; tag]]> and ]]&gt;<![CDATA[]]></a>',
    '<a>line\r\nline\rline<?go on?></a>',
    '<a b="&quot;>&apos;"><b c=">"/></a>',
    '\ufeff<a>bone</a>',
  ])('%j', (xml) => {
    expect(events(xml)).toEqual(secondOpinion(xml));
  });

  test('made at random', () => {
    const name = fc.constantFrom('a', 'b', 'x:a', 'x:b', 'y:c');
    const text = fc.string({ unit: 'grapheme' }).map((s) => s.replace(/[^\t\n\x20-\ud7ff]|[<&>]/g, ''));
    const { tree } = fc.letrec<{ tree: string }>((tie) => ({
      tree: fc.oneof(
        { depthSize: 'small' },
        text,
        fc.tuple(name, text, fc.array(tie('tree'), { maxLength: 4 })).map(([n, value, inside]) => {
          const attribute = value ? ` v="${value.replaceAll('"', '&quot;')}"` : '';
          return inside.length === 0 ? `<${n}${attribute}/>` : `<${n}${attribute}>${inside.join('')}</${n}>`;
        }),
      ),
    }));
    fc.assert(
      fc.property(fc.array(tree), (inside) => {
        const xml = `<root xmlns="u:0" xmlns:x="u:1" xmlns:y="u:2">${inside.join('')}</root>`;
        expect(events(xml)).toEqual(secondOpinion(xml));
      }),
      { seed: 20261125, numRuns: 300 },
    );
  });
});

test.each([
  '',
  '   ',
  'text',
  '<a>',
  '<a></b>',
  '<a></a><b/>',
  '<a/>text',
  '<a b></a>',
  '<a b=1/>',
  '<a b="1"c="2"/>',
  '<a b="1/>',
  '<a><b></a></b>',
  '<a>&unknown;</a>',
  '<a>&amp</a>',
  '<a>&#x110000;</a>',
  '<a><!-- open </a>',
  '<a><![CDATA[ open </a>',
  '<x:a/>',
  '<a></ab>',
  '< a/>',
  '<!DOCTYPE a><a/>',
  '<!DOCTYPE a [<!ENTITY b "bone">]><a>&b;</a>',
  '<a><!ENTITY b "bone"></a>',
  `${'<a>'.repeat(1001)}${'</a>'.repeat(1001)}`,
  `<a${Array.from({ length: 1001 }, (_, i) => ` b${i}=""`).join('')}/>`,
])('refused: %j', (xml) => {
  expect(() => events(xml)).toThrow('broken');
});

test('attributes, with and without prefix', () => {
  const r = reader('<a xmlns:r="u:r" id="1" r:id="2" text=" a&#10;b\nc&quot;"/>');
  r.next();
  expect(r.attribute('id')).toBe('1');
  expect(r.attributeIn(new Set(['u:r']), 'id')).toBe('2');
  expect(r.attributeIn(new Set(['u:x']), 'id')).toBeUndefined();
  expect(r.attribute('text')).toBe(' a\nb c"');
  expect(r.attribute('none')).toBeUndefined();
});

test('places in the text', () => {
  const xml = '<a>\u{1F9B4}<b x="1">é</b><c/></a>';
  const r = reader(xml);
  const spans: string[] = [];
  for (let event = r.next(); event !== 'end'; event = r.next()) spans.push(xml.slice(r.start, r.end));
  expect(spans).toEqual(['<a>', '\u{1F9B4}', '<b x="1">', 'é', '</b>', '<c/>', '', '</a>']);
});
