/** Colours as files name them, by number, by theme or as they are, turned into `#RRGGBB`. */

import { eachChild } from './elements.ts';
import type { XmlReader } from './xml.ts';

/** Colours by number. Source: ECMA-376 part 1, 18.8.27, from 8 on; 0 to 7 are 8 to 15 again. */
const INDEXED =
  '000000 FFFFFF FF0000 00FF00 0000FF FFFF00 FF00FF 00FFFF 800000 008000 000080 808000 800080 008080 C0C0C0 808080 9999FF 993366 FFFFCC CCFFFF 660066 FF8080 0066CC CCCCFF 000080 FF00FF FFFF00 00FFFF 800080 800000 008080 0000FF 00CCFF CCFFFF CCFFCC FFFF99 99CCFF FF99CC CC99FF FFCC99 3366FF 33CCCC 99CC00 FFCC00 FF9900 FF6600 666699 969696 003366 339966 003300 333300 993300 993366 333399 333333'.split(
    ' ',
  );
/** Number of the first colour of the list. */
const FIRST_INDEXED = 8;

/** Order in which cells number the colours of a theme: light and dark of each pair are swapped against the theme's own order. */
const THEME_ORDER = [
  'lt1',
  'dk1',
  'lt2',
  'dk2',
  'accent1',
  'accent2',
  'accent3',
  'accent4',
  'accent5',
  'accent6',
  'hlink',
  'folHlink',
] as const;

/** The colours of a theme in the order in which cells number them. */
export type ThemeColours = readonly (string | undefined)[];

/** Reads the colours of a theme part. */
export function readTheme(reader: XmlReader): ThemeColours {
  const found = new Map<string, string>();
  for (let event = reader.next(); event !== 'end'; event = reader.next()) {
    if (event !== 'open' || reader.local !== 'clrScheme') continue;
    eachChild(reader, (name) => {
      eachChild(reader, (kind) => {
        const colour = kind === 'sysClr' ? reader.attribute('lastClr') : reader.attribute('val');
        if (colour !== undefined && /^[\da-f]{6}$/i.test(colour)) found.set(name, colour.toUpperCase());
      });
    });
  }
  return THEME_ORDER.map((name) => found.get(name));
}

const HEX = 16;
const MOST = 255;

const channels = (rgb: string): number[] => [0, 2, 4].map((at) => Number.parseInt(rgb.slice(at, at + 2), HEX) / MOST);

/** Lightens or darkens: `tint` from -1 (black) to 1 (white) moves the lightness. Source: ECMA-376 part 1, 18.8.19. */
export function tinted(rgb: string, tint: number): string {
  const [red, green, blue] = channels(rgb) as [number, number, number];
  const high = Math.max(red, green, blue);
  const low = Math.min(red, green, blue);
  const lightness = (high + low) / 2;
  const moved = tint < 0 ? lightness * (1 + tint) : lightness * (1 - tint) + tint;
  const range = high - low;
  const saturation = range === 0 ? 0 : range / (1 - Math.abs(2 * lightness - 1));
  const newRange = saturation * (1 - Math.abs(2 * moved - 1));
  const base = moved - newRange / 2;
  return [red, green, blue]
    .map((channel) => {
      const value = base + (range === 0 ? 0 : ((channel - low) / range) * newRange);
      return Math.round(Math.min(1, Math.max(0, value)) * MOST)
        .toString(HEX)
        .padStart(2, '0')
        .toUpperCase();
    })
    .join('');
}

/** The colour of the element that has just opened, or undefined for the automatic one. */
export function colourOf(reader: XmlReader, theme: ThemeColours): string | undefined {
  const rgb = reader.attribute('rgb');
  const themed = reader.attribute('theme');
  const indexed = reader.attribute('indexed');
  let colour: string | undefined;
  if (rgb !== undefined && /^(?:[\da-f]{2})?[\da-f]{6}$/i.test(rgb)) colour = rgb.slice(-6).toUpperCase();
  else if (themed !== undefined) colour = theme[Number(themed)];
  else if (indexed !== undefined) {
    const number = Number(indexed);
    colour = INDEXED[number < FIRST_INDEXED ? number : number - FIRST_INDEXED];
  }
  if (colour === undefined) return undefined;
  const tint = Number(reader.attribute('tint') ?? 0);
  return `#${tint === 0 || !(Math.abs(tint) <= 1) ? colour : tinted(colour, tint)}`;
}
