/** Fills made of lines: they tell materials apart in any colour and on paper. */

import { element, FAINT, INK, THIN } from './svg.ts';

/** `felt`: slanted strokes, like fibres. `foam`: small rings, like cells. `cross`: two ways of slanted strokes. `section`: cut through. `grain`: dots. */
export type Hatch = 'felt' | 'foam' | 'cross' | 'section' | 'grain';

/** Side of the repeated square [px], and what is drawn in it. Our own drawings. */
const TILES: Readonly<Record<Hatch, { readonly side: number; readonly path: string }>> = {
  felt: { side: 6, path: 'M-1 7L7 -1M-1 1L1 -1M5 7L7 5' },
  foam: { side: 8, path: 'M2 .5a1.5 1.5 0 1 0 .01 0M6 4.5a1.5 1.5 0 1 0 .01 0' },
  cross: { side: 6, path: 'M-1 7L7 -1M-1 -1L7 7' },
  section: { side: 5, path: 'M-1 6L6 -1M-1 1L1 -1M4 6L6 4' },
  grain: { side: 5, path: 'M2.5 2.5h.01' },
};

/** Definition of a hatch; `id` is that of the drawing. */
export const hatchPattern = (id: string, hatch: Hatch): string => {
  const { side, path } = TILES[hatch];
  return element(
    'pattern',
    { id: `${id}-${hatch}`, width: side, height: side, patternUnits: 'userSpaceOnUse' },
    element('path', {
      d: path,
      stroke: hatch === 'section' ? INK : FAINT,
      'stroke-width': hatch === 'grain' ? 1.5 : THIN,
      'stroke-linecap': hatch === 'grain' ? 'round' : undefined,
    }),
  );
};

/** Value of `fill` for a hatch of the drawing `id`. */
export const hatched = (id: string, hatch: Hatch): string => `url(#${id}-${hatch})`;

export const hatchPatterns = (id: string, hatches: readonly Hatch[]): string =>
  element('defs', {}, ...hatches.map((hatch) => hatchPattern(id, hatch)));
