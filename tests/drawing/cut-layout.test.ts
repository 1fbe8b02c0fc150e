import { describe, expect, it } from 'vitest';
import { cutLayoutDrawing } from '../../src/drawing/cut-layout.ts';
import { cutInput } from './inputs.ts';
import { attribute, expectDrawing, readSvg } from './read-svg.ts';

const cases = ['skull', 'femur', 'small'].flatMap((name) => [320, 700].map((width) => [name, width] as const));

/** Areas of the pieces of each fill, by the paths that draw them [px²]. */
const areasOf = (svg: string) => {
  const areas = new Map<string, number>();
  for (const { name, attributes } of readSvg(svg)) {
    if (name !== 'path' || !attributes.d!.includes('h')) continue;
    const fill = /-(\w+)\)$/.exec(attributes.fill ?? '')?.[1] ?? 'cover';
    for (const [, w, h] of attributes.d!.matchAll(/h(-?[\d.]+)v(-?[\d.]+)h/g))
      areas.set(fill, (areas.get(fill) ?? 0) + Number(w) * Number(h));
  }
  return areas;
};

describe.each(cases)('cut layout of the %s at %d px', (name, width) => {
  const input = cutInput(name, width);
  const { svg, table } = cutLayoutDrawing(input);

  it('is as it was', async () => {
    await expect(svg).toMatchFileSnapshot(`__snapshots__/cut-layout-${name}-${width}.svg`);
  });

  it('keeps the rules of all drawings', () => {
    expectDrawing(svg, input.id);
    expect(attribute(readSvg(svg)[0]!, 'width')).toBe(width);
  });

  it('draws all pieces to one scale', () => {
    const areas = areasOf(svg);
    const scales = input.list.cuts.map(({ length, width: across, count }, i) => {
      const fill = ['cover', 'felt', 'grain', 'cross'][i]!;
      return areas.get(fill)! / (count * length * across);
    });
    // Two decimals are drawn: a hundredth of a pixel on some pixels for the smallest pieces.
    for (const scale of scales) expect(Math.abs(scale / scales[0]! - 1)).toBeLessThan(0.01);
  });

  it('says the same in its table and key', () => {
    expect(table).toHaveLength(6);
    expect(table.at(-1)).toEqual(['', 'roll', input.labels.length, `${input.labels.roll} wide`]);
    for (const [i, { purpose, count }] of input.list.cuts.entries()) {
      expect(table[i + 1]!.slice(1)).toEqual([purpose, String(count), input.labels.sizes[i]]);
      expect(svg).toContain(`${purpose}: ${count} of ${input.labels.sizes[i]}`);
    }
  });
});

describe('cutLayoutDrawing', () => {
  it('draws a long roll in lengths that follow each other, and stays small with thousands of pieces', () => {
    const one = cutInput('femur', 320);
    const copies = 60;
    const placed = Array.from({ length: copies }, (_, i) =>
      one.list.layout.placed.map((piece) => ({ ...piece, along: piece.along + i * one.list.layout.length })),
    ).flat();
    const layout = { placed, length: copies * one.list.layout.length };
    const { svg } = cutLayoutDrawing({ ...one, list: { ...one.list, layout } });
    expect(placed.length).toBeGreaterThan(10_000);
    expect(svg).toContain('drawn in 8 lengths');
    expect(svg.length).toBeLessThan(600_000);
    expect(readSvg(svg).length).toBeLessThan(200);
  });

  it('leaves purposes without pieces out of the key', () => {
    const input = cutInput('small', 320);
    const cuts = input.list.cuts.map((cut) => (cut.purpose === 'tip patch' ? { ...cut, count: 0 } : cut));
    const placed = input.list.layout.placed.filter(({ kind }) => kind !== 3);
    const { svg } = cutLayoutDrawing({
      ...input,
      list: { ...input.list, cuts, layout: { ...input.list.layout, placed } },
    });
    expect(svg).not.toContain('tip patch');
  });
});
