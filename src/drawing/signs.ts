/**
 * The signs that stand beside cautions and buttons: our own one-stroke drawings on a grid of 24 units.
 *
 * They take the colour of the text around them and hold no text. Each is hidden from screen readers, so a word always stands beside it.
 */

/** Paths of the signs, one each. A step of 0 draws a dot, since the ends of strokes are round. */
const PATHS = {
  /** A heap of powder, and what rises from it. */
  dust: 'M2.5 20.5h19M4.5 20.5l5-5.5q2.5-2.5 5 0l5 5.5M12.5 9.5v0M16.5 11v0M8.5 8.5v0M15 6.5v0M19 8v0M11 4.5v0M17.5 3.5v0M21 5v0',
  /** An eye behind a shield with its strap. */
  eye: 'M1.5 12h2M20.5 12h2M7 5.5h10a3.5 3.5 0 0 1 3.5 3.5v6a3.5 3.5 0 0 1-3.5 3.5h-10a3.5 3.5 0 0 1-3.5-3.5v-6a3.5 3.5 0 0 1 3.5-3.5zM7 12q5-5.5 10 0q-5 5.5-10 0zM12 12v0',
  /** A gloved hand, and heat. */
  'hand-heat':
    'M6 21.5v-5l-3-3.5a1.5 1.5 0 0 1 2.3-1.9l1.7 1.9v-6.5a3.2 3.2 0 0 1 6.5 0v15zM6 18.5h7.5M17.5 18c-1.3-1.6-1.3-3.2 0-4.8s1.3-3.2 0-4.8M21 18c-1.3-1.6-1.3-3.2 0-4.8s1.3-3.2 0-4.8',
  /** A person with bent knees, and a load that goes up. */
  lifting:
    'M8 2.3a2 2 0 1 0 .01 0M7.3 9.5l-2.3 5.5l5 1l-1.5 5.5h2.5M7.3 9.5l3 3.2h3M13.5 11h7.5v6.5h-7.5zM17.25 7.5v-5M15 4.5l2.25-2.25l2.25 2.25',
  /** A flame on a liquid. */
  flame:
    'M7 18.5c-3-3-2.5-6.5 0-9.5 .2 1.5 .8 2.4 1.8 3-.4-4 .7-7.5 3.9-10 .2 3.2 1.2 5 2.8 7 .5-.7 .7-1.3 .8-2.2 2.7 3.2 3.4 8.2 .7 11.7M3 21.5q2.25-1.6 4.5 0t4.5 0t4.5 0t4.5 0',
  /** A half of a jacket, turned over. */
  turning:
    'M1.5 20.5h9.5M2.8 20.5a3.45 5 0 0 1 6.9 0M13 15.5h9.5M14.3 15.5a3.45 5 0 0 0 6.9 0M5.5 11.5a6.5 6.5 0 0 1 12.3-1.5M18.8 5.8l-.8 4.4l-4.3-1.2',
  /** Take care: a shop tag on its string, with a stroke and a dot. */
  warning: 'M12 1.5v3M8.5 4.5h7l4 4.5v10a2.5 2.5 0 0 1-2.5 2.5h-10a2.5 2.5 0 0 1-2.5-2.5v-10zM12 9v5M12 17.7v0',
  /** Show what is folded away. */
  unfold: 'M6 9.5l6 5.5l6-5.5',
  /** Fold away. */
  fold: 'M6 14.5l6-5.5l6 5.5',
  /** Two sheets. */
  copy: 'M4 16v-12.5h10.5M8.5 8h11.5v12.5h-11.5zM11.5 12.5h5.5M11.5 16h3.5',
  /** Put in the cell. */
  insert: 'M2.5 13.5h19v7h-19zM8.5 13.5v7M15.5 13.5v7M12 2.5v7.5M8.8 7l3.2 3.2l3.2-3.2',
} as const;

export type SignName = keyof typeof PATHS;

export const SIGN_NAMES = Object.keys(PATHS) as readonly SignName[];

/** Side of the grid the signs are drawn on [units]. Our own choice. */
export const SIGN_GRID = 24;

/** Width of the stroke [units]. Our own choice: clear at 24 px, not heavy at 48 px. */
export const SIGN_STROKE = 1.75;

/**
 * @param name which sign
 * @param size width and height [px]
 * @returns an SVG element as text, in the colour of the text around it, hidden from screen readers
 */
export const sign = (name: SignName, size: number = SIGN_GRID): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${SIGN_GRID} ${SIGN_GRID}" width="${size}" height="${size}" fill="none" ` +
  `stroke="currentColor" stroke-width="${SIGN_STROKE}" stroke-linecap="round" stroke-linejoin="round" aria-hidden="true" ` +
  `focusable="false"><path d="${PATHS[name]}"/></svg>`;
