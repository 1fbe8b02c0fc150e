/**
 * Tables of the revised NIOSH lifting equation, retyped row by row as printed, to check the calculation against.
 *
 * Source: Waters, Putz-Anderson and Garg, DHHS (NIOSH) Publication 94-110. How known: read in a public copy of the manual's tables that
 * cites its printed pages (frequency table: page 15); the twist table in a handbook that reprints it.
 */

/** Columns: work up to 1 h, 1 to 2 h, 2 to 8 h; in each, hands below 30 in (75 cm), then at 30 in and above. */
export const FREQUENCY_COLUMNS = [
  { hours: 1, low: true },
  { hours: 1, low: false },
  { hours: 2, low: true },
  { hours: 2, low: false },
  { hours: 8, low: true },
  { hours: 8, low: false },
] as const;

/** Lifts a minute, then the multiplier in each column. */
export const FREQUENCY_ROWS: readonly (readonly number[])[] = [
  [0.2, 1, 1, 0.95, 0.95, 0.85, 0.85],
  [0.5, 0.97, 0.97, 0.92, 0.92, 0.81, 0.81],
  [1, 0.94, 0.94, 0.88, 0.88, 0.75, 0.75],
  [2, 0.91, 0.91, 0.84, 0.84, 0.65, 0.65],
  [3, 0.88, 0.88, 0.79, 0.79, 0.55, 0.55],
  [4, 0.84, 0.84, 0.72, 0.72, 0.45, 0.45],
  [5, 0.8, 0.8, 0.6, 0.6, 0.35, 0.35],
  [6, 0.75, 0.75, 0.5, 0.5, 0.27, 0.27],
  [7, 0.7, 0.7, 0.42, 0.42, 0.22, 0.22],
  [8, 0.6, 0.6, 0.35, 0.35, 0.18, 0.18],
  [9, 0.52, 0.52, 0.3, 0.3, 0, 0.15],
  [10, 0.45, 0.45, 0.26, 0.26, 0, 0.13],
  [11, 0.41, 0.41, 0, 0.23, 0, 0],
  [12, 0.37, 0.37, 0, 0.21, 0, 0],
  [13, 0, 0.34, 0, 0, 0, 0],
  [14, 0, 0.31, 0, 0, 0, 0],
  [15, 0, 0.28, 0, 0, 0, 0],
];

/** Grip, multiplier with the hands below 30 in (75 cm), multiplier at 30 in and above. */
export const COUPLING_ROWS = [
  ['good', 1, 1],
  ['fair', 0.95, 1],
  ['poor', 0.9, 0.9],
] as const;

/** Twist in degrees, multiplier rounded to two decimals. */
export const TWIST_ROWS = [
  [0, 1],
  [15, 0.95],
  [30, 0.9],
  [45, 0.86],
  [60, 0.81],
  [75, 0.76],
  [90, 0.71],
  [105, 0.66],
  [120, 0.62],
  [135, 0.57],
] as const;
