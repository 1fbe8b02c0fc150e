/** Looks of cells as the grid takes them. */

import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IBorderData,
  type IStyleData,
  VerticalAlign,
  WrapStrategy,
} from '@univerjs/core';
import type { AlignmentLook, BorderSide, CellLook, FontLook } from '../workbook/styles.ts';

const LINES: ReadonlyMap<string, BorderStyleTypes> = new Map([
  ['thin', BorderStyleTypes.THIN],
  ['hair', BorderStyleTypes.HAIR],
  ['dotted', BorderStyleTypes.DOTTED],
  ['dashed', BorderStyleTypes.DASHED],
  ['dashDot', BorderStyleTypes.DASH_DOT],
  ['dashDotDot', BorderStyleTypes.DASH_DOT_DOT],
  ['double', BorderStyleTypes.DOUBLE],
  ['medium', BorderStyleTypes.MEDIUM],
  ['mediumDashed', BorderStyleTypes.MEDIUM_DASHED],
  ['mediumDashDot', BorderStyleTypes.MEDIUM_DASH_DOT],
  ['mediumDashDotDot', BorderStyleTypes.MEDIUM_DASH_DOT_DOT],
  ['slantDashDot', BorderStyleTypes.SLANT_DASH_DOT],
  ['thick', BorderStyleTypes.THICK],
]);

const SIDES: Readonly<Record<BorderSide, 't' | 'r' | 'b' | 'l'>> = { top: 't', right: 'r', bottom: 'b', left: 'l' };

const HORIZONTAL: ReadonlyMap<string, HorizontalAlign> = new Map([
  ['left', HorizontalAlign.LEFT],
  ['center', HorizontalAlign.CENTER],
  ['centerContinuous', HorizontalAlign.CENTER],
  ['right', HorizontalAlign.RIGHT],
  ['justify', HorizontalAlign.JUSTIFIED],
  ['distributed', HorizontalAlign.DISTRIBUTED],
]);

const VERTICAL: ReadonlyMap<string, VerticalAlign> = new Map([
  ['top', VerticalAlign.TOP],
  ['center', VerticalAlign.MIDDLE],
  ['bottom', VerticalAlign.BOTTOM],
]);

/** Letters below each other. */
const STACKED = 255;
/** Width of one step of indent, pixels. */
const INDENT = 9;
const BASELINE = { superscript: 3, subscript: 2 } as const;

const colour = (rgb: string): { rgb: string } => ({ rgb });

/** A font, for cells and for what conditional formats lay over them. */
export function fontStyle(font: FontLook): IStyleData {
  return {
    ...(font.name === undefined ? {} : { ff: font.name }),
    ...(font.size === undefined ? {} : { fs: font.size }),
    ...(font.bold ? { bl: BooleanNumber.TRUE } : {}),
    ...(font.italic ? { it: BooleanNumber.TRUE } : {}),
    ...(font.underline ? { ul: { s: BooleanNumber.TRUE } } : {}),
    ...(font.strike ? { st: { s: BooleanNumber.TRUE } } : {}),
    ...(font.colour === undefined ? {} : { cl: colour(font.colour) }),
    ...(font.script === undefined ? {} : { va: BASELINE[font.script] }),
  };
}

function borderStyle(borders: CellLook['borders']): IBorderData {
  const data: IBorderData = {};
  for (const [side, line] of Object.entries(borders)) {
    const style = LINES.get(line.style);
    if (style !== undefined) data[SIDES[side as BorderSide]] = { s: style, cl: colour(line.colour ?? '#23272B') };
  }
  return data;
}

function alignmentStyle({ horizontal, vertical, wrap, indent, rotation }: AlignmentLook): IStyleData {
  const across = HORIZONTAL.get(horizontal ?? '');
  return {
    ...(across === undefined ? {} : { ht: across }),
    // Files put text at the bottom unless they say otherwise.
    vt: VERTICAL.get(vertical ?? 'bottom') ?? VerticalAlign.MIDDLE,
    tb: wrap ? WrapStrategy.WRAP : WrapStrategy.OVERFLOW,
    ...(rotation ? { tr: rotation === STACKED ? { a: 0, v: BooleanNumber.TRUE } : { a: -rotation } } : {}),
    ...(indent ? { pd: across === HorizontalAlign.RIGHT ? { r: indent * INDENT } : { l: indent * INDENT } } : {}),
  };
}

/** One look of the file as a style of the grid. */
export function cellStyle(look: CellLook): IStyleData {
  const borders = borderStyle(look.borders);
  return {
    ...fontStyle(look.font),
    ...alignmentStyle(look.alignment),
    ...(look.fill === undefined ? {} : { bg: colour(look.fill) }),
    ...(Object.keys(borders).length > 0 ? { bd: borders } : {}),
    ...(look.numberFormat === 'General' ? {} : { n: { pattern: look.numberFormat } }),
  };
}
