/** The block at the foot of a drawing: what it is of, its units, and a field left blank for the date. */

import { CAPTION, element, FAINT, fitted, group, INK, LETTERS, line, MEDIUM, THIN, words } from './svg.ts';

/** Height of the block [px]: a caption and a line of text. */
export const BLOCK_HEIGHT = 40;

/** Shares of the width [1]: specimen, units, date. Our own choice. */
const SHARES = [0.5, 0.25, 0.25] as const;

const INSET = 8;

/**
 * @param specimen number or name; may be blank
 * @param units such as «cm, kg»
 */
export const titleBlock = (left: number, top: number, width: number, specimen: string, units: string): string => {
  const fields = [
    ['specimen', specimen],
    ['units', units],
    ['date', ''],
  ] as const;
  let x = left;
  const parts: string[] = [];
  for (const [i, [caption, value]] of fields.entries()) {
    const room = SHARES[i]! * width;
    if (i > 0) parts.push(line(x, top, x, top + BLOCK_HEIGHT, { stroke: INK, 'stroke-width': THIN }));
    parts.push(words(x + INSET, top + CAPTION + 3, caption, { size: CAPTION, fill: FAINT }));
    if (value) parts.push(words(x + INSET, top + BLOCK_HEIGHT - 9, fitted(value, room - 2 * INSET, LETTERS)));
    x += room;
  }
  return group(
    {},
    element('rect', { x: left, y: top, width, height: BLOCK_HEIGHT, stroke: INK, 'stroke-width': MEDIUM }),
    ...parts,
  );
};
