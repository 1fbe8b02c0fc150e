/** Comma-separated text: read with any of the usual separators, written with commas as RFC 4180 says. */

/** Tried in this order where they are equally frequent. */
const SEPARATORS = [',', ';', '\t'] as const;

/** The separator that the first line uses most, outside of quotation marks. */
function separatorOf(text: string): string {
  const firstLine = /^(?:"(?:[^"]|"")*"|[^"\r\n])*/.exec(text)?.[0].replace(/"(?:[^"]|"")*"/g, '') ?? '';
  const count = (separator: string): number => firstLine.split(separator).length - 1;
  return SEPARATORS.reduce((best, separator) => (count(separator) > count(best) ? separator : best));
}

/** Rows of cells as they are written, quotation marks taken off. */
export function readCsv(text: string): string[][] {
  const body = text.replace(/^\uFEFF/, '');
  if (body === '') return [];
  const separator = separatorOf(body);
  const rows: string[][] = [[]];
  let cell = '';
  let quoted = false;
  const endCell = (): void => {
    rows.at(-1)!.push(cell);
    cell = '';
  };
  for (let i = 0; i < body.length; i += 1) {
    const sign = body[i]!;
    if (quoted) {
      if (sign !== '"') cell += sign;
      else if (body[i + 1] === '"') {
        cell += '"';
        i += 1;
      } else quoted = false;
    } else if (sign === '"' && cell === '') quoted = true;
    else if (sign === separator) endCell();
    else if (sign === '\n' || sign === '\r') {
      if (sign === '\r' && body[i + 1] === '\n') i += 1;
      endCell();
      rows.push([]);
    } else cell += sign;
  }
  endCell();
  // A last line break ends the last row and begins none.
  if (rows.at(-1)!.length === 1 && rows.at(-1)![0] === '') rows.pop();
  return rows;
}

/** A number is written the same way back: `007` and `1e5` stay text. */
const NUMBER = /^-?(?:0|[1-9]\d*)(?:\.\d+)?$/;
/** Digits that a number keeps. */
const DIGITS = 15;

/** A cell's text as a value: plain numbers, TRUE and FALSE; everything else stays text, also what begins with `=`. */
export function csvValue(text: string): string | number | boolean | null {
  if (text === '') return null;
  const trimmed = text.trim();
  if (NUMBER.test(trimmed) && trimmed.replace(/\D/g, '').length <= DIGITS) return Number(trimmed);
  if (trimmed === 'TRUE') return true;
  if (trimmed === 'FALSE') return false;
  return text;
}

const quoted = (text: string): string => (/[",\r\n]|^\s|\s$/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** Rows of texts as one text, lines ended as RFC 4180 says. */
export const writeCsv = (rows: readonly (readonly string[])[]): string =>
  rows.map((row) => `${row.map(quoted).join(',')}\r\n`).join('');
