/** Names that people type: compared without letter case and outer spaces, and the nearest one offered for a slip. */

/** The form in which names are compared. */
export const plainName = (text: string): string => text.trim().replace(/\s+/g, ' ').toLowerCase();

/** Letters to change, insert, leave out or swap to come from one word to the other. */
const distance = (a: string, b: string): number => {
  let before: number[] = [];
  let above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const step = a[i - 1] === b[j - 1] ? 0 : 1;
      let least = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + step);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) least = Math.min(least, before[j - 2]! + 1);
      row.push(least);
    }
    before = above;
    above = row;
  }
  return above[b.length]!;
};

/** Longer text is no slip of a name, and comparing it would cost time. */
const LONGEST_NAME = 60;

/** The known name nearest to what was typed. The first of several equals. */
export const nearestName = (typed: string, known: readonly string[]): string => {
  const text = plainName(typed).slice(0, LONGEST_NAME);
  let best = known[0] ?? '';
  let least = Number.POSITIVE_INFINITY;
  for (const name of known) {
    const plain = plainName(name);
    const contained = text.length > 2 && (plain.includes(text) || text.includes(plain)) ? 0.5 : 1;
    const d = distance(text, plain) * contained;
    if (d < least) {
      least = d;
      best = name;
    }
  }
  return best;
};

/** A number, TRUE or FALSE as a cell shows it. No host shows what lies outside of the range of numbers, so that is said in words. */
export const shownPlain = (value: unknown): string =>
  typeof value === 'number' && !Number.isFinite(value) ? 'a number out of range' : String(value).toUpperCase();

/** What was typed, short enough to stand inside a reason. */
export const quoted = (text: string, most = 40): string =>
  `"${text.length > most ? `${text.slice(0, most - 1)}…` : text}"`;

/** Says that a name is not known, and which is nearest. */
export const unknownName = (typed: string, known: readonly string[], what: string): string =>
  `${quoted(typed)} is not ${what}; did you mean ${nearestName(typed, known)}?`;
