/**
 * A small builder of SVG text.
 *
 * Drawings are strings: the same in a page, on paper and in a test. They take the ink of the text around them (`currentColor`) and the tokens of
 * the page where it has them, with the light ones as fallback. Nothing in them depends on a tint: what matters is told by line styles, so that a
 * drawing reads the same in black on white. One unit of a drawing is one pixel, so that its letters are as large as those around it: draw it for the width
 * that it is shown at.
 */

/** Rows of a table that says the same as a drawing; the first is its header. */
export type Table = readonly (readonly string[])[];

/** A drawing, and the same in words. */
export interface Drawing {
  readonly svg: string;
  readonly table: Table;
}

export type Attributes = Readonly<Record<string, string | number | undefined>>;

/** Ink of the text around. */
export const INK = 'currentColor';
/** Ink of what stands back: centre lines, captions. Token with its light value, 4.5:1 on paper. */
export const FAINT = 'var(--faint-ink, #5a6067)';
/** The one accent. Token with its light value. */
export const CLAY = 'var(--clay, #8a4b2f)';
/** What a drawing lies on. Token with its light value. */
export const PAPER = 'var(--sheet, #ffffff)';

/** Size of letters [px]: the small size of the scale 13, 16, 20, 26. */
export const LETTERS = 13;
/** Size of captions [px]: the least that is still easy to read. */
export const CAPTION = 11;

/** Widths of lines [px]: what is cut or seen, what helps, what measures. Our own choice. */
export const HEAVY = 1.75;
export const MEDIUM = 1.25;
export const THIN = 0.75;

/** Width of the border that keeps lines off letters, half of it outside [px]. */
const HALO_WIDTH = 4;

/** Width of a letter over its size [1]: above the mean of the usual system fonts, so that a text is rarely wider than thought. By trial. */
export const LETTER_WIDTH = 0.56;

/** Room a text takes [px], about. */
export const textWidth = (text: string, size: number = LETTERS): number => text.length * size * LETTER_WIDTH;

/** A text that fits into a width [px], with an ellipsis where it had to be cut. */
export const fitted = (text: string, width: number, size: number = LETTERS): string => {
  if (textWidth(text, size) <= width) return text;
  const letters = Math.max(1, Math.floor(width / (size * LETTER_WIDTH)) - 1);
  return `${text.slice(0, letters).trimEnd()}…`;
};

const ENTITIES: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;', '"': '&quot;' };

/** What no XML may hold: control characters but for white space, halves of letters, two signs that are none. */
const UNFIT = /(?![\t\n\r])[\p{Cc}\p{Cs}\ufffe\uffff]/gu;

/** Text as it may stand between tags and in attributes. */
export const escaped = (text: string): string => text.replace(UNFIT, '').replace(/[&<>"]/g, (sign) => ENTITIES[sign]!);

/** A number with two decimals at most, so that drawings do not differ by rounding. */
export const short = (x: number): string => String(Math.round(x * 100) / 100 + 0);

/** An element. Attributes that are undefined are left out; texts among the children must be escaped. */
export const element = (name: string, attributes: Attributes, ...children: readonly string[]): string => {
  const list = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${typeof value === 'number' ? short(value) : escaped(value!)}"`)
    .join('');
  return children.length ? `<${name}${list}>${children.join('')}</${name}>` : `<${name}${list}/>`;
};

/** A group whose parts share attributes. */
export const group = (attributes: Attributes, ...children: readonly string[]): string =>
  element('g', attributes, ...children);

export const line = (x1: number, y1: number, x2: number, y2: number, attributes: Attributes = {}): string =>
  element('line', { x1, y1, x2, y2, ...attributes });

interface TextOptions {
  readonly size?: number;
  readonly anchor?: 'start' | 'middle' | 'end';
  readonly fill?: string;
  readonly weight?: number;
  /** Lines behind it are kept off its letters. */
  readonly halo?: boolean;
  /** Turned about its own place [degrees]. */
  readonly turned?: number;
}

/** A text whose base line begins, has its middle, or ends at a point. */
export const words = (x: number, y: number, text: string, options: TextOptions = {}): string =>
  element(
    'text',
    {
      x,
      y,
      'font-size': options.size ?? LETTERS,
      'text-anchor': options.anchor === 'start' ? undefined : options.anchor,
      fill: options.fill ?? INK,
      'font-weight': options.weight,
      stroke: options.halo ? PAPER : undefined,
      'stroke-width': options.halo ? HALO_WIDTH : undefined,
      'stroke-linejoin': options.halo ? 'round' : undefined,
      'paint-order': options.halo ? 'stroke' : undefined,
      transform: options.turned === undefined ? undefined : `rotate(${options.turned} ${short(x)} ${short(y)})`,
    },
    escaped(text),
  );

/** A closed or open path through points. */
export const pathThrough = (points: readonly (readonly [number, number])[], closed = false): string =>
  points.map(([x, y], i) => `${i ? 'L' : 'M'}${short(x)} ${short(y)}`).join('') + (closed ? 'Z' : '');

interface Sheet {
  /** Beginning of all ids in it: another for each drawing of a page. */
  readonly id: string;
  readonly width: number;
  readonly height: number;
  /** What it shows, in a few words. */
  readonly title: string;
  /** What can be seen, for people who do not see it. */
  readonly description: string;
}

/** The whole drawing. */
export const sheet = ({ id, width, height, title, description }: Sheet, ...children: readonly string[]): string =>
  element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      viewBox: `0 0 ${short(width)} ${short(height)}`,
      width,
      height,
      role: 'img',
      'aria-labelledby': `${id}-title ${id}-desc`,
      'font-family': 'system-ui, sans-serif',
      fill: 'none',
      stroke: 'none',
    },
    element('title', { id: `${id}-title` }, escaped(title)),
    element('desc', { id: `${id}-desc` }, escaped(description)),
    ...children.map((child) => `\n${child}`),
    '\n',
  );

/** The same drawing for a place without our tokens, such as a picture in a sheet: light colours, black ink. */
export const standalone = (svg: string): string =>
  svg.replace(/var\(--[a-z-]+, ([^)]+)\)/g, '$1').replaceAll('currentColor', '#000000');
