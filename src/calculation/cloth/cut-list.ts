import { footPatchSize, tipPatchSize } from '../feet/foot.ts';
import { amount, finite, isFault, isPositive, mustBePositive, noAnswer, type Result } from '../result.ts';
import type { Settings } from '../settings.ts';
import { seam } from '../shell/seam.ts';
import { shellArea } from '../shell/shell-area.ts';
import { wholeUp } from '../whole-up.ts';
import { fitsRoll, type Kind, type Layout } from './packing/layout.ts';
import { pack } from './packing/pack.ts';

/** Feet of a closed jacket, three on each half [1]. Common practice, no source. */
export const ALL_FEET = 6;

/** Halves of a jacket [1]. Definition. */
export const HALVES = 2;

/** Pieces that are laid out at most [1]. Our own choice: some four times what the largest block takes, and laid out in a tenth of a second. */
export const MOST_PIECES = 10_000;

export const PURPOSES = ['cover', 'edge strip', 'foot patch', 'tip patch'] as const;
export type Purpose = (typeof PURPOSES)[number];

/** Pieces of one size for one purpose. */
export interface Cut extends Kind {
  readonly purpose: Purpose;
}

/** What to cut and how it lies on the roll. `kind` of a placed piece counts in `cuts`. */
export interface CutList {
  readonly cuts: readonly Cut[];
  readonly layout: Layout;
  /** Width of the roll [m]. */
  readonly roll: number;
}

/** Squares for patches: none where there is no size. */
const patches = (purpose: Purpose, perFoot: number, size: number): Cut => ({
  purpose,
  length: size,
  width: size,
  count: size > 0 ? ALL_FEET * perFoot : 0,
});

/** Pieces for a jacket, all four purposes, with a count of 0 where there are none. */
const cutsFor = (
  length: number,
  width: number,
  height: number,
  layers: number,
  settings: Settings,
): Result<readonly Cut[]> => {
  const shell = shellArea(length, width, height, settings);
  if (isFault(shell)) return shell;
  const edge = seam(length, width, settings);
  if (isFault(edge)) return edge;
  const { pieceSize, lap, edgeStripWidth, edgeStripLayers, footPatches, tipPatches } = settings;
  const step = pieceSize - lap;
  return [
    {
      purpose: 'cover',
      length: pieceSize,
      width: pieceSize,
      count: HALVES * wholeUp(layers) * Math.max(1, wholeUp(shell / HALVES / step / step)),
    },
    {
      purpose: 'edge strip',
      length: pieceSize,
      width: edgeStripWidth,
      count: edgeStripWidth > 0 ? HALVES * edgeStripLayers * Math.max(1, wholeUp(edge / step)) : 0,
    },
    patches('foot patch', footPatches, footPatchSize(settings, length, width)),
    patches('tip patch', tipPatches, tipPatchSize(settings, length, width)),
  ];
};

/** What pieces are called in reasons. */
const PLURAL: Readonly<Record<Purpose, string>> = {
  cover: 'cover pieces',
  'edge strip': 'edge strips',
  'foot patch': 'foot patches',
  'tip patch': 'tip patches',
};

/** The setting that a piece has its width from, for the reason that it does not fit. */
const SIZE_SETTING: Readonly<Record<Purpose, string>> = {
  cover: 'piece size',
  'edge strip': 'piece size',
  'foot patch': 'foot patch size',
  'tip patch': 'tip patch size',
};

/**
 * Pieces of cloth to cut for a jacket, laid out on the roll.
 *
 * Cover: 2·⌈layers⌉·⌈(shell area/2)/(piece − lap)²⌉ squares. Edge strips: 2·edge strip layers·⌈seam/(piece − lap)⌉. Patches: 6 feet × patches to
 * a foot, and to a tip. No waste.
 *
 * @param length size along the long axis [m]
 * @param width size across it, seen from above [m]
 * @param height size from the table up [m]
 * @param layers layers of cloth and plaster, rounded up [1]
 * @param settings as for `shellArea`, and piece size, lap, edge strips, feet and their patches, roll width
 * @returns pieces and their places
 * Limits: no piece wider than the roll, 10000 pieces at most; real pieces are trimmed to the shape, so that a few more or fewer do. Source: geometry;
 * strips of 4 in and the numbers of patches: common practice, no source.
 * Example: 0.6, 0.4, 0.3 m in 6 layers, 36 cover squares.
 */
export const cutList = (
  length: number,
  width: number,
  height: number,
  layers: number,
  settings: Settings,
): Result<CutList> => {
  if (!isPositive(layers)) return mustBePositive('layers');
  const cuts = cutsFor(length, width, height, layers, settings);
  if (isFault(cuts)) return cuts;
  const roll = settings.rollWidth;
  const wide = cuts.find((cut) => cut.count > 0 && !fitsRoll(cut, roll));
  if (wide)
    return noAnswer(
      `a roll {roll} wide is too narrow for ${PLURAL[wide.purpose]} of {size}; set a smaller ${SIZE_SETTING[wide.purpose]}, or the roll width of a wider roll`,
      { roll: amount(roll, 'length'), size: amount(Math.min(wide.length, wide.width), 'length') },
    );
  const pieces = finite(cuts.reduce((sum, { count }) => sum + count, 0));
  if (isFault(pieces)) return pieces;
  if (pieces > MOST_PIECES)
    return noAnswer(
      'this takes {pieces} pieces, more than the {most} that are laid out; set a larger piece size, or take the length from CLOTH',
      { pieces: amount(pieces, 'count'), most: amount(MOST_PIECES, 'count') },
    );
  // End to end they would take this much; where that is a number, so is every place on the roll.
  const endToEnd = finite(cuts.reduce((sum, cut) => sum + cut.count * Math.max(cut.length, cut.width), 0));
  if (isFault(endToEnd)) return endToEnd;
  return { cuts, layout: pack(cuts, roll), roll };
};
