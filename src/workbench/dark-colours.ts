/** Colours of a file on a dark page: light and dark change places between our own paper and ink, the hue stays. */

import type { Injector } from '@univerjs/core';
import { ICanvasColorService } from '@univerjs/preset-sheets-core';

type Rgb = readonly [number, number, number];

/** White becomes the dark sheet, black the light ink: the tokens of look.css. */
const SHEET: Rgb = [0x26, 0x29, 0x2d];
const INK: Rgb = [0xe9, 0xe4, 0xda];
const MOST = 255;
/** Lightness of those two, for colours with a hue. */
const DARKEST = 0.165;
const LIGHTEST = 0.885;

/** Relative luminance and contrast. Source: WCAG 2.2. */
function luminance(rgb: Rgb): number {
  const [red, green, blue] = rgb.map((channel) => {
    const share = channel / MOST;
    return share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4;
  }) as [number, number, number];
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue;
}

const contrast = (a: Rgb, b: Rgb): number => {
  const [one, other] = [luminance(a), luminance(b)];
  return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
};

const WHITE: Rgb = [MOST, MOST, MOST];
/** What small text needs. Source: WCAG 2.2, 1.4.3. */
const READABLE = 4.5;
const STEPS = 10;

/** A colour of the file as the dark page shows it: what can be read on white can be read here. */
export function onDark(rgb: Rgb): Rgb {
  const turned = lightened(rgb);
  const wanted = Math.min(READABLE + 0.1, contrast(rgb, WHITE));
  for (let step = 0; step <= STEPS; step += 1) {
    const mixed = turned.map((channel, i) =>
      Math.round(channel + ((INK[i]! - channel) * step) / STEPS),
    ) as unknown as Rgb;
    if (contrast(mixed, SHEET) >= wanted) return mixed;
  }
  return turned;
}

function lightened([red, green, blue]: Rgb): Rgb {
  const high = Math.max(red, green, blue) / MOST;
  const low = Math.min(red, green, blue) / MOST;
  const lightness = (high + low) / 2;
  const range = high - low;
  const neutral = SHEET.map((dark, i) => dark + (INK[i]! - dark) * (1 - lightness));
  if (range === 0) return neutral.map(Math.round) as unknown as Rgb;
  const saturation = range / (1 - Math.abs(2 * lightness - 1));
  const turned = DARKEST + (1 - lightness) * (LIGHTEST - DARKEST);
  const newRange = Math.min(1, saturation) * (1 - Math.abs(2 * turned - 1));
  const base = turned - newRange / 2;
  // A pale tint is nearly a grey, so it takes most of its colour from the paper.
  const share = Math.min(1, range * 2);
  return [red, green, blue].map((channel, i) => {
    const own = (base + ((channel / MOST - low) / range) * newRange) * MOST;
    return Math.round(neutral[i]! * (1 - share) + own * share);
  }) as unknown as Rgb;
}

/** Puts our way in place of the grid's, which turns pale fills black. */
export function installDarkColours(injector: Injector): void {
  const service = injector.get(ICanvasColorService) as unknown as { _invertAlgo: (rgb: Rgb) => Rgb };
  service._invertAlgo = onDark;
}
