import type { XmlReader } from './xml.ts';

/**
 * Calls `visit` for each element right inside the one that has just opened, and reads on to its end. What `visit` leaves unread is skipped.
 */
export function eachChild(reader: XmlReader, visit: (local: string) => void): void {
  const { depth } = reader;
  for (let event = reader.next(); event !== 'close' || reader.depth >= depth; event = reader.next()) {
    if (event !== 'open') continue;
    visit(reader.local);
    if (reader.depth > depth) reader.skip();
  }
}

/** Reads a part to its end and calls `visit` for each element right inside its root. */
export function eachInRoot(reader: XmlReader, visit: (local: string) => void): void {
  if (reader.next() === 'open') eachChild(reader, visit);
}

/** A yes-or-no attribute. */
export const isTrue = (text: string | undefined): boolean => text === '1' || text === 'true' || text === 'on';

/** A number attribute, or undefined where there is none or it is no number. */
export function numberOf(text: string | undefined): number | undefined {
  const value = text === undefined || text === '' ? Number.NaN : Number(text);
  return value > -Infinity && value < Infinity ? value : undefined;
}
