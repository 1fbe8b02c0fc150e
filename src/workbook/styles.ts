/** How cells look: fonts, fills, borders, alignment. For drawing a workbook only; nothing of it is ever written back. */

import { colourOf, readTheme, type ThemeColours } from './colours.ts';
import { eachChild, eachInRoot, isTrue, numberOf } from './elements.ts';
import { BUILT_IN_FORMATS } from './number-formats.ts';
import { isType, type Parts } from './parts.ts';
import type { WorkbookPart } from './read-workbook.ts';
import { decodeEscapes } from './text-escapes.ts';
import type { XmlReader } from './xml.ts';

export interface FontLook {
  readonly name?: string;
  /** Points. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly underline?: boolean;
  readonly strike?: boolean;
  /** `#RRGGBB`; left out for the automatic colour. */
  readonly colour?: string;
  readonly script?: 'superscript' | 'subscript';
}

export interface BorderLine {
  /** Name of the line style in the file, such as `thin` or `mediumDashed`. */
  readonly style: string;
  readonly colour?: string;
}

export type BorderSide = 'top' | 'right' | 'bottom' | 'left';

export interface AlignmentLook {
  readonly horizontal?: string;
  readonly vertical?: string;
  readonly wrap?: boolean;
  readonly indent?: number;
  /** Degrees, positive turns upwards; 255 stands for letters below each other. */
  readonly rotation?: number;
}

/** How one kind of cell looks. */
export interface CellLook {
  readonly font: FontLook;
  /** `#RRGGBB` behind the text. */
  readonly fill?: string;
  readonly borders: Readonly<Partial<Record<BorderSide, BorderLine>>>;
  readonly alignment: AlignmentLook;
  readonly numberFormat: string;
}

/** Looks that conditional formats lay over a cell: only what they set. */
export interface OverlayLook {
  readonly font: FontLook;
  readonly fill?: string;
}

export interface Styles {
  /** By style index of a cell. The first is the general one. */
  readonly cells: readonly CellLook[];
  readonly overlays: readonly OverlayLook[];
  readonly theme: ThemeColours;
}

const SIDES: ReadonlyMap<string, BorderSide> = new Map([
  ['top', 'top'],
  ['right', 'right'],
  ['end', 'right'],
  ['bottom', 'bottom'],
  ['left', 'left'],
  ['start', 'left'],
]);

/** A switch that is on unless it says otherwise, such as `<b/>`. */
const isOn = (reader: XmlReader): boolean => {
  const value = reader.attribute('val');
  return value === undefined || isTrue(value);
};

function readFont(reader: XmlReader, theme: ThemeColours): FontLook {
  const font: { -readonly [K in keyof FontLook]: FontLook[K] } = {};
  eachChild(reader, (name) => {
    const value = reader.attribute('val');
    if (name === 'name') font.name = value;
    else if (name === 'sz') font.size = numberOf(value);
    else if (name === 'b') font.bold = isOn(reader);
    else if (name === 'i') font.italic = isOn(reader);
    else if (name === 'strike') font.strike = isOn(reader);
    else if (name === 'u') font.underline = value !== 'none';
    else if (name === 'color') font.colour = colourOf(reader, theme);
    else if (name === 'vertAlign' && (value === 'superscript' || value === 'subscript')) font.script = value;
  });
  return font;
}

/** The one colour that a fill comes to: patterns and gradients are drawn as their main colour. `overlay` swaps the two colours of a solid fill. */
function readFill(reader: XmlReader, theme: ThemeColours, overlay: boolean): string | undefined {
  let front: string | undefined;
  let back: string | undefined;
  let pattern: string | undefined = overlay ? 'solid' : undefined;
  eachChild(reader, (kind) => {
    if (kind === 'gradientFill') {
      pattern = 'solid';
      eachChild(reader, () => {
        eachChild(reader, (name) => {
          if (name === 'color') front ??= colourOf(reader, theme);
        });
      });
      return;
    }
    if (kind !== 'patternFill') return;
    pattern = reader.attribute('patternType') ?? pattern;
    eachChild(reader, (name) => {
      if (name === 'fgColor') front = colourOf(reader, theme);
      if (name === 'bgColor') back = colourOf(reader, theme);
    });
  });
  if (pattern === undefined || pattern === 'none') return undefined;
  if (overlay) return back ?? front;
  return pattern === 'solid' ? front : (back ?? front);
}

function readBorders(reader: XmlReader, theme: ThemeColours): CellLook['borders'] {
  const borders: Partial<Record<BorderSide, BorderLine>> = {};
  eachChild(reader, (name) => {
    const side = SIDES.get(name);
    const style = reader.attribute('style');
    if (side === undefined || style === undefined || style === 'none') return;
    let colour: string | undefined;
    eachChild(reader, (child) => {
      if (child === 'color') colour = colourOf(reader, theme);
    });
    borders[side] = { style, ...(colour === undefined ? {} : { colour }) };
  });
  return borders;
}

function readAlignment(reader: XmlReader): AlignmentLook {
  const alignment: { -readonly [K in keyof AlignmentLook]: AlignmentLook[K] } = {};
  eachChild(reader, (name) => {
    if (name !== 'alignment') return;
    alignment.horizontal = reader.attribute('horizontal');
    alignment.vertical = reader.attribute('vertical');
    alignment.wrap = isTrue(reader.attribute('wrapText'));
    alignment.indent = numberOf(reader.attribute('indent'));
    const turned = numberOf(reader.attribute('textRotation'));
    // 91 to 180 turn downwards, by what they exceed 90.
    alignment.rotation = turned !== undefined && turned > 90 && turned <= 180 ? 90 - turned : turned;
  });
  return alignment;
}

const PLAIN: CellLook = { font: {}, borders: {}, alignment: {}, numberFormat: 'General' };

/** Reads how the cells of a workbook look. A workbook without a styles part has one plain look. */
export function readStyles(parts: Parts, workbook: WorkbookPart): Styles {
  const target = (last: string): string | undefined => {
    const path = workbook.relationships.find((relationship) => isType(relationship, last))?.target;
    return path !== undefined && parts.has(path) ? path : undefined;
  };
  const themePath = target('theme');
  const theme = themePath === undefined ? [] : readTheme(parts.reader(themePath));
  const path = target('styles');
  if (path === undefined) return { cells: [PLAIN], overlays: [], theme };
  const fonts: FontLook[] = [];
  const fills: (string | undefined)[] = [];
  const borders: CellLook['borders'][] = [];
  const formats = new Map(BUILT_IN_FORMATS);
  const cells: CellLook[] = [];
  const overlays: OverlayLook[] = [];
  const reader = parts.reader(path);
  eachInRoot(reader, (list) => {
    if (list === 'fonts') eachChild(reader, () => fonts.push(readFont(reader, theme)));
    else if (list === 'fills') eachChild(reader, () => fills.push(readFill(reader, theme, false)));
    else if (list === 'borders') eachChild(reader, () => borders.push(readBorders(reader, theme)));
    else if (list === 'numFmts')
      eachChild(reader, () => {
        formats.set(Number(reader.attribute('numFmtId')), decodeEscapes(reader.attribute('formatCode') ?? 'General'));
      });
    else if (list === 'cellXfs')
      eachChild(reader, () => {
        const index = (name: string): number => Number(reader.attribute(name) ?? 0);
        const fill = fills[index('fillId')];
        const look = {
          font: fonts[index('fontId')] ?? {},
          borders: borders[index('borderId')] ?? {},
          numberFormat: formats.get(index('numFmtId')) ?? 'General',
          ...(fill === undefined ? {} : { fill }),
        };
        cells.push({ ...look, alignment: readAlignment(reader) });
      });
    else if (list === 'dxfs')
      eachChild(reader, () => {
        let font: FontLook = {};
        let fill: string | undefined;
        eachChild(reader, (name) => {
          if (name === 'font') font = readFont(reader, theme);
          else if (name === 'fill') fill = readFill(reader, theme, true);
        });
        overlays.push({ font, ...(fill === undefined ? {} : { fill }) });
      });
  });
  return { cells: cells.length > 0 ? cells : [PLAIN], overlays, theme };
}
