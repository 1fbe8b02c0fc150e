/**
 * Published limits of dust in the air of a workplace, as averages: 8 hours for OSHA, up to 10 hours for NIOSH.
 *
 * Limits: two authorities of the United States; local rules come first and may be lower. Plaster dust that holds silica has to keep to
 * the limit of silica as well.
 * Source: beside each number. Example: plaster, respirable: 5 mg/m³.
 */

import { noAnswer, type Result } from '../result.ts';

/** Plaster, total dust [mg/m³]. OSHA, 29 CFR 1910.1000, table Z-1. */
export const PLASTER_TOTAL_OSHA = 15;

/** Plaster, respirable dust [mg/m³]. OSHA, 29 CFR 1910.1000, table Z-1. */
export const PLASTER_RESPIRABLE_OSHA = 5;

/** Plaster, total dust [mg/m³]. NIOSH recommended exposure limit. */
export const PLASTER_TOTAL_NIOSH = 10;

/** Plaster, respirable dust [mg/m³]. NIOSH recommended exposure limit. */
export const PLASTER_RESPIRABLE_NIOSH = 5;

/** Crystalline silica, respirable dust [mg/m³]. OSHA, 29 CFR 1910.1053(c): 50 µg/m³. */
export const SILICA_RESPIRABLE_OSHA = 0.05;

/** Crystalline silica, respirable dust [mg/m³]. NIOSH recommended exposure limit: 50 µg/m³. */
export const SILICA_RESPIRABLE_NIOSH = 0.05;

export const SUBSTANCES = ['plaster', 'silica'] as const;
export const FRACTIONS = ['total', 'respirable'] as const;
export const AUTHORITIES = ['OSHA', 'NIOSH'] as const;

export type Substance = (typeof SUBSTANCES)[number];
export type Fraction = (typeof FRACTIONS)[number];
export type Authority = (typeof AUTHORITIES)[number];

/** Limits on record, by substance, fraction and authority [mg/m³]. */
export const DUST_LIMITS: {
  readonly [S in Substance]: { readonly [F in Fraction]?: { readonly [A in Authority]: number } };
} = {
  plaster: {
    total: { OSHA: PLASTER_TOTAL_OSHA, NIOSH: PLASTER_TOTAL_NIOSH },
    respirable: { OSHA: PLASTER_RESPIRABLE_OSHA, NIOSH: PLASTER_RESPIRABLE_NIOSH },
  },
  silica: {
    respirable: { OSHA: SILICA_RESPIRABLE_OSHA, NIOSH: SILICA_RESPIRABLE_NIOSH },
  },
};

/** The fraction meant where none is named. */
export const DEFAULT_FRACTION: { readonly [S in Substance]: Fraction } = { plaster: 'total', silica: 'respirable' };

/** The authority meant where none is named. */
export const DEFAULT_AUTHORITY: Authority = 'OSHA';

/**
 * @param substance plaster or silica
 * @param fraction total or respirable; null: total for plaster, respirable for silica
 * @param authority OSHA or NIOSH; null: OSHA
 * @returns limit [mg/m³]; no answer where none is on record
 */
export const dustLimit = (
  substance: Substance,
  fraction: Fraction | null = null,
  authority: Authority | null = null,
): Result<number> => {
  const part = fraction ?? DEFAULT_FRACTION[substance];
  const limit = DUST_LIMITS[substance][part]?.[authority ?? DEFAULT_AUTHORITY];
  if (limit !== undefined) return limit;
  const listed = FRACTIONS.filter((known) => DUST_LIMITS[substance][known]);
  return noAnswer(`no limit on record for ${part} dust of ${substance}; on record: ${listed.join(', ')}`);
};
