/**
 * Comma-separated values as RFC 4180 has them, read piece by piece: a file of any length takes no more room than its longest record.
 *
 * A field in quotation marks may hold commas, line ends and doubled quotation marks. Lines end in LF, CR LF or CR.
 */

/** A record longer than this is no record: a quotation mark was never closed [characters]. */
export const LONGEST_RECORD = 1_000_000;

export class CsvError extends Error {}

const QUOTE = '"';

/** Where a record begins, for people: lines count from 1. */
const unclosed = (line: number): CsvError =>
  new CsvError(`line ${line}: a quotation mark is not closed; close it, or double it where it is part of the text`);

/** Reads records from pieces of a text. */
export class CsvReader {
  /** What of the text is not yet a whole record. */
  private rest = '';
  /** Line on which it begins. */
  private line = 1;

  /**
   * @param piece the next piece of the text
   * @returns the records that are whole by now, each a list of fields
   */
  push(piece: string): string[][] {
    this.rest += piece;
    const records = this.take(false);
    if (this.rest.length > LONGEST_RECORD) throw unclosed(this.line);
    return records;
  }

  /** What is left when the text ends. A last line without a line end is a record too. */
  end(): string[][] {
    const records = this.take(true);
    if (this.rest !== '') throw unclosed(this.line);
    return records;
  }

  private take(last: boolean): string[][] {
    const text = this.rest;
    const records: string[][] = [];
    let begin = 0;
    while (begin < text.length) {
      const fields: string[] = [];
      const next = readRecord(text, begin, last, fields);
      if (next < 0) break;
      this.line += lineEnds(text, begin, next);
      records.push(fields);
      begin = next;
    }
    this.rest = text.slice(begin);
    return records;
  }
}

const lineEnds = (text: string, from: number, to: number): number => {
  let count = 0;
  for (let i = text.indexOf('\n', from); i >= 0 && i < to; i = text.indexOf('\n', i + 1)) count++;
  return count || 1;
};

/** Where the text after a line end begins; -1 where a CR is the last that is known, since an LF may follow. */
const afterLineEnd = (text: string, i: number, last: boolean): number => {
  if (text[i] === '\n') return i + 1;
  if (i + 1 < text.length) return text[i + 1] === '\n' ? i + 2 : i + 1;
  return last ? i + 1 : -1;
};

/** Reads one record into `fields`. Answers where the next one begins, or -1 where this one is not whole. */
const readRecord = (text: string, begin: number, last: boolean, fields: string[]): number => {
  let i = begin;
  for (;;) {
    let field = '';
    if (text[i] === QUOTE) {
      let from = i + 1;
      for (;;) {
        const close = text.indexOf(QUOTE, from);
        if (close < 0 || (close === text.length - 1 && !last)) return -1;
        field += text.slice(from, close);
        i = close + 1;
        if (text[i] !== QUOTE) break;
        field += QUOTE;
        from = i + 1;
      }
    }
    const from = i;
    while (i < text.length && text[i] !== ',' && text[i] !== '\n' && text[i] !== '\r') i++;
    if (i === text.length && !last) return -1;
    // What stands behind a closed quotation mark is kept as it is.
    fields.push(field + text.slice(from, i));
    if (i === text.length) return i;
    if (text[i] !== ',') return afterLineEnd(text, i, last);
    i++;
    if (i === text.length && last) {
      fields.push('');
      return i;
    }
  }
};

/** A number as files write it; no thousands separators, a decimal point. */
const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

export const isNumberText = (text: string): boolean => NUMBER.test(text);

/** How a text begins that a spreadsheet would take for a formula when it opens the file. */
const FORMULA = /^[=+\-@\t\r\n]/;

const NEEDS_QUOTES = /[",\r\n]|^\s|\s$/;

/** A text as a field. One that would be taken for a formula gets an apostrophe before it; a number written as text stays one. */
export const csvText = (text: string): string => {
  const safe = FORMULA.test(text) && !isNumberText(text) ? `'${text}` : text;
  return NEEDS_QUOTES.test(safe) ? `${QUOTE}${safe.replaceAll(QUOTE, QUOTE + QUOTE)}${QUOTE}` : safe;
};

/** Line end of RFC 4180. */
export const LINE_END = '\r\n';
