import { expect, test } from 'vitest';
import { onDark } from '../../src/workbench/dark-colours.ts';

test('white becomes the dark sheet, black the light ink', () => {
  expect(onDark([255, 255, 255])).toEqual([0x26, 0x29, 0x2d]);
  expect(onDark([0, 0, 0])).toEqual([0xe9, 0xe4, 0xda]);
});

/** WCAG 2.2, relative luminance and contrast. */
const luminance = (rgb: readonly number[]): number => {
  const [r, g, b] = rgb.map((channel) => {
    const c = channel / 255;
    return c <= 0.04045 ? c / 12.92 : ((c + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * r + 0.7152 * g + 0.0722 * b;
};
const contrast = (a: readonly number[], b: readonly number[]): number => {
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
};

test('text that can be read on white paper can be read on the dark sheet', () => {
  const inks: (readonly [number, number, number])[] = [
    [0x23, 0x27, 0x2b],
    [0x5a, 0x60, 0x67],
    [0x8a, 0x4b, 0x2f],
    [0x7a, 0x52, 0x00],
    [0x00, 0x00, 0x80],
    [0xa0, 0x00, 0x00],
    [0x00, 0x60, 0x00],
  ];
  for (const ink of inks) expect(contrast(onDark(ink), onDark([255, 255, 255])), ink.join()).toBeGreaterThan(4.5);
});

test('every channel stays within 0 and 255', () => {
  for (let r = 0; r <= 255; r += 51)
    for (let g = 0; g <= 255; g += 51)
      for (let b = 0; b <= 255; b += 51)
        for (const channel of onDark([r, g, b])) {
          expect(channel).toBeGreaterThanOrEqual(0);
          expect(channel).toBeLessThanOrEqual(255);
        }
});
