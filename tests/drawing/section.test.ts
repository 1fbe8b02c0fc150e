import { describe, expect, it } from 'vitest';
import { sectionDrawing } from '../../src/drawing/section.ts';
import { expectDrawing, readSvg } from './read-svg.ts';

describe.each([320, 700])('section at %d px', (width) => {
  const { svg, table } = sectionDrawing({ id: 'section', width });

  it('is as it was', async () => {
    await expect(svg).toMatchFileSnapshot(`__snapshots__/section-${width}.svg`);
  });

  it('keeps the rules of all drawings', () => {
    expectDrawing(svg, 'section');
  });

  it('explains every letter that it shows, and shows every letter that it explains', () => {
    const shown = readSvg(svg).flatMap(({ name, text }) => (name === 'text' && text.length === 1 ? [text] : []));
    const explained = table.slice(1).flatMap(([letters]) => letters!.split(', '));
    expect(shown.sort()).toEqual(explained.sort());
  });
});
