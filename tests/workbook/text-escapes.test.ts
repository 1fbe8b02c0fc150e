import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { decodeEscapes, escapeAttribute, escapeFormula, escapeText } from '../../src/workbook/text-escapes.ts';
import { XmlReader } from '../../src/workbook/xml.ts';

describe('texts', () => {
  test.each([
    ['bell\x07', 'bell_x0007_'],
    ['two\r\nlines', 'two_x000D_\nlines'],
    ['tab\tstays', 'tab\tstays'],
    ['_x0041_', '_x005F_x0041_'],
    ['_x41_ and x0041_', '_x41_ and x0041_'],
    ['a < b & "c" > d', 'a &lt; b &amp; "c" &gt; d'],
    ['half \ud83e', 'half _xD83E_'],
    ['\udf00 half', '_xDF00_ half'],
    ['whole \u{1F9B4}', 'whole \u{1F9B4}'],
  ])('%j is stored as %j', (text, stored) => {
    expect(escapeText(text)).toBe(stored);
  });

  test('any text comes back, in any combination', () => {
    const piece = fc.oneof(
      fc.constantFrom('_', 'x', '_x0041_', '_x005F_', '00', '\r', '\n', '&', '<', ']]>', '\0', '\ufffe'),
      fc.string({ unit: 'binary' }),
      fc.integer({ min: 0, max: 0xffff }).map((code) => String.fromCharCode(code)),
    );
    fc.assert(
      fc.property(fc.array(piece), (pieces) => {
        const text = pieces.join('');
        const reader = new XmlReader(`<t>${escapeText(text)}</t>`, () => new Error('broken'));
        reader.next();
        // Pairs that meet from two pieces are one character, as in any text.
        expect(decodeEscapes(reader.textInside())).toBe(text);
      }),
      { seed: 20261125, numRuns: 1000 },
    );
  });
});

test('formulas keep their underscores', () => {
  expect(escapeFormula('"_x0041_"&A1<B1')).toBe('"_x0041_"&amp;A1&lt;B1');
});

test('attributes', () => {
  expect(escapeAttribute('a "b" <&>')).toBe('a &quot;b&quot; &lt;&amp;&gt;');
});
