import { describe, expect, it } from 'vitest';
import {
  element,
  escaped,
  fitted,
  pathThrough,
  sheet,
  short,
  standalone,
  textWidth,
  words,
} from '../../src/drawing/svg.ts';
import { readSvg } from './read-svg.ts';

describe('svg builder', () => {
  it('escapes text and attributes, and drops what no XML may hold', () => {
    expect(escaped('<b> & "c" \u0000\u001b\ud800é\n')).toBe('&lt;b&gt; &amp; &quot;c&quot; é\n');
    const svg = sheet(
      { id: 'x', width: 10, height: 10, title: 'a < b', description: '"&"' },
      words(1, 1, '</text><script>'),
    );
    const [root, title, desc, text] = readSvg(svg);
    expect([root!.name, title!.text, desc!.text, text!.text]).toEqual(['svg', 'a < b', '"&"', '</text><script>']);
    expect(element('g', { fill: '"><script>' })).toBe('<g fill="&quot;&gt;&lt;script&gt;"/>');
  });

  it('writes numbers with two decimals at most, and never -0', () => {
    expect([1 / 3, -0.001, 2, 1.005e2].map(short)).toEqual(['0.33', '0', '2', '100.5']);
    expect(
      pathThrough(
        [
          [0, 0],
          [1.234, 5.678],
        ],
        true,
      ),
    ).toBe('M0 0L1.23 5.68Z');
  });

  it('leaves out attributes that are undefined', () => {
    expect(element('rect', { x: 1, y: undefined })).toBe('<rect x="1"/>');
  });

  it('cuts a text that is too wide', () => {
    expect(fitted('short', 100)).toBe('short');
    const cut = fitted('a label that is far too long', 100);
    expect(cut).toMatch(/^a label.*…$/);
    expect(textWidth(cut)).toBeLessThanOrEqual(100);
    expect(fitted('word', 0)).toBe('w…');
  });

  it('can do without our tokens', () => {
    expect(standalone('<g fill="var(--clay, #8a4b2f)" stroke="currentColor"/>')).toBe(
      '<g fill="#8a4b2f" stroke="#000000"/>',
    );
  });
});
