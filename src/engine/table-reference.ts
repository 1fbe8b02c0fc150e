/** References into tables: `Jackets[Length]`, `Jackets[[#Totals],[Area]]`, `Jackets[[Length]:[Width]]`. */

export const SECTIONS = ['#all', '#data', '#headers', '#totals', '#this row'] as const;
export type Section = (typeof SECTIONS)[number];

export interface TableReference {
  readonly table: string;
  /** Which rows; the data where there are none. */
  readonly sections: readonly Section[];
  /** First and last column; all columns where there are none. */
  readonly columns?: readonly [first: string, last: string];
}

/** Signs in the name of a column that stand behind an apostrophe. */
const unescaped = (name: string): string => name.replace(/'(.)/g, '$1').trim();

const PART = /\[((?:[^[\]']|'.)*)\]|([,:])|\s+/y;

/** What a reference points at, or nothing where it cannot be read. */
export function readTableReference(text: string): TableReference | undefined {
  const start = text.indexOf('[');
  if (start < 0) return { table: text, sections: [] };
  const table = text.slice(0, start);
  const inside = text.slice(start + 1, -1).trim();
  if (inside === '') return { table, sections: [] };
  if (!inside.startsWith('[')) return readParts(table, [inside], []);
  const parts: string[] = [];
  const signs: string[] = [];
  PART.lastIndex = 0;
  while (PART.lastIndex < inside.length) {
    const found = PART.exec(inside);
    if (found === null) return undefined;
    if (found[1] !== undefined) parts.push(found[1]);
    if (found[2] !== undefined) signs.push(found[2]);
  }
  return signs.length === parts.length - 1 ? readParts(table, parts, signs) : undefined;
}

function readParts(table: string, parts: readonly string[], signs: readonly string[]): TableReference | undefined {
  const sections: Section[] = [];
  const columns: string[] = [];
  for (const [i, part] of parts.entries()) {
    const section = SECTIONS.find((name) => name === part.trim().toLowerCase().replace(/\s+/g, ' '));
    const sign = signs[i - 1];
    if (section !== undefined) {
      if (columns.length > 0 || sign === ':') return undefined;
      sections.push(section);
    } else {
      if (columns.length > 0 && sign !== ':') return undefined;
      columns.push(unescaped(part));
    }
  }
  if (columns.length > 2 || (sections.length > 1 && sections.includes('#this row'))) return undefined;
  const [first, last = first] = columns;
  return { table, sections, ...(first === undefined ? {} : { columns: [first, last!] as const }) };
}

/** Rows of a table on its sheet, from 0. */
export interface TableRows {
  readonly headers: number | undefined;
  readonly first: number;
  readonly last: number;
  readonly totals: number | undefined;
}

/** The rows that the sections of a reference name, or nothing where the table has none of them. */
export function rowsOfSections(
  sections: readonly Section[],
  rows: TableRows,
): readonly [first: number, last: number] | undefined {
  const found: (number | undefined)[] = [];
  for (const section of sections.length === 0 ? ['#data'] : sections) {
    if (section === '#headers') found.push(rows.headers);
    else if (section === '#totals') found.push(rows.totals);
    else if (section === '#all') found.push(rows.headers ?? rows.first, rows.totals ?? rows.last);
    else found.push(rows.first, rows.last);
  }
  const numbers = found.filter((row) => row !== undefined);
  return numbers.length < found.length ? undefined : [Math.min(...numbers), Math.max(...numbers)];
}
