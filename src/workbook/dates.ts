/** Day number of 1 January 1970 where 1 January 1900 is day 1. */
export const UNIX_DAY_1900 = 25_569;

/** Day number of 1 January 1970 where 1 January 1904 is day 0. */
export const UNIX_DAY_1904 = 24_107;

/** Length of a day, milliseconds. */
export const DAY = 86_400_000;

/** Counting from 1900, day 60 is 29 February 1900, which never was: days before it are one less. ECMA-376 part 1, 18.17.4.1. */
export const FIRST_REAL_DAY = 61;

/** A date or time written out (ISO 8601), as the strict edition stores it, as a day number. Undefined for anything else. */
export function serialDate(text: string, date1904: boolean): number | undefined {
  const isTimeOnly = /^\d{2}:\d{2}/.test(text);
  const full = isTimeOnly ? `1970-01-01T${text}` : text;
  const hasZone = /(Z|[+-]\d{2}:\d{2})$/.test(full);
  const days = Date.parse(full.includes('T') && !hasZone ? `${full}Z` : full) / DAY;
  if (!(Math.abs(days) < Infinity)) return undefined;
  if (isTimeOnly) return days;
  if (date1904) return days + UNIX_DAY_1904;
  const serial = days + UNIX_DAY_1900;
  return serial >= FIRST_REAL_DAY ? serial : serial - 1;
}
