/** Reads a drawing back: elements with their attributes, boxes of its texts, and what no drawing may hold. */

import { SaxesParser } from 'saxes';
import { expect } from 'vitest';

export interface Read {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  /** Own text of the element. */
  text: string;
}

export const readSvg = (svg: string): Read[] => {
  const all: Read[] = [];
  const open: Read[] = [];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element = { name, attributes: attributes as Record<string, string>, text: '' };
    all.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    const last = open.at(-1);
    if (last) last.text += text;
  });
  parser.on('closetag', () => void open.pop());
  parser.write(svg).close();
  return all;
};

export const numbersOf = (text: string): number[] => (text.match(/-?\d+(\.\d+)?/g) ?? []).map(Number);

export const attribute = ({ attributes }: Read, name: string): number => Number(attributes[name]);

interface TextBox {
  readonly text: string;
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Mean width and height of letters over their size in usual system fonts, measured in a browser [1]. */
const WIDE = 0.54;
const HIGH = 0.75;
const DEEP = 0.2;

export const textBoxes = (all: readonly Read[]): TextBox[] =>
  all
    .filter(({ name }) => name === 'text')
    .map((element) => {
      const { text, attributes } = element;
      const [x, y, size] = ['x', 'y', 'font-size'].map((name) => attribute(element, name)) as [number, number, number];
      const width = text.length * size * WIDE;
      const anchor = attributes['text-anchor'];
      const before = anchor === 'middle' ? width / 2 : anchor === 'end' ? width : 0;
      if (attributes.transform)
        return { text, left: x - HIGH * size, right: x + DEEP * size, top: y - before, bottom: y - before + width };
      return { text, left: x - before, right: x - before + width, top: y - HIGH * size, bottom: y + DEEP * size };
    });

/** What holds for every drawing. */
export const expectDrawing = (svg: string, id: string): void => {
  const all = readSvg(svg);
  const root = all[0]!;
  const [, , width, height] = numbersOf(root.attributes.viewBox!) as [number, number, number, number];
  expect(root.name).toBe('svg');
  expect(root.attributes).toMatchObject({ role: 'img', 'aria-labelledby': `${id}-title ${id}-desc` });
  expect(attribute(root, 'width')).toBe(width);
  for (const [name, suffix] of [
    ['title', 'title'],
    ['desc', 'desc'],
  ] as const) {
    const found = all.find((element) => element.name === name)!;
    expect(found.attributes.id).toBe(`${id}-${suffix}`);
    expect(found.text.length).toBeGreaterThan(8);
  }
  const ids = all.flatMap(({ attributes }) => attributes.id ?? []);
  expect(new Set(ids).size).toBe(ids.length);
  for (const one of ids) expect(one.startsWith(`${id}-`)).toBe(true);
  for (const [, used] of svg.matchAll(/url\(#([^)]+)\)/g)) expect(ids).toContain(used);
  for (const { name, attributes } of all) {
    expect(['script', 'style', 'image', 'a', 'use', 'foreignObject']).not.toContain(name);
    for (const key of Object.keys(attributes)) expect(key).not.toMatch(/^on|href|^style$/);
  }
  expect(svg).not.toMatch(/NaN|Infinity|undefined|null/);
  // Colours are the ink of the text, or tokens with a fallback.
  for (const [, paint] of svg.matchAll(/(?:fill|stroke)="([^"]+)"/g))
    expect(paint).toMatch(/^(none|currentColor|url\(#[^)]+\)|var\(--[a-z-]+, #[0-9a-f]{6}\))$/);

  const boxes = textBoxes(all);
  for (const { text, left, top, right, bottom } of boxes)
    expect(left >= 0 && top >= 0 && right <= width && bottom <= height, `«${text}» is inside of the drawing`).toBe(
      true,
    );
  for (const [i, a] of boxes.entries())
    for (const b of boxes.slice(i + 1)) {
      const apart = a.right <= b.left || b.right <= a.left || a.bottom <= b.top || b.bottom <= a.top;
      expect(apart, `«${a.text}» and «${b.text}» stand apart`).toBe(true);
    }
};
