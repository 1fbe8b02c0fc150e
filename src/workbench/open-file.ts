/** Files into open workbooks. Whatever is wrong with a file is said in one sentence, and nothing that is open changes. */

import { addressOf } from '../engine/workbook-book.ts';
import { type CellUpdate, Workbook } from '../workbook/index.ts';
import { type BookLook, readLook } from '../workbook/look.ts';
import { blankBook } from './blank-book.ts';
import { csvValue, readCsv } from './csv.ts';

/** Largest .csv that is read, bytes (20 MB). Ours: what a grid still shows without waiting. */
const LARGEST_CSV = 20_000_000;
/** Largest workbook that the page opens, bytes (40 MB). Ours: above it a browser tab may run out of memory. */
export const LARGEST_WORKBOOK = 40_000_000;

/** A file as it was read; `bytes` never change. */
export interface OpenFile {
  readonly name: string;
  readonly kind: 'xlsx' | 'csv';
  /** Always a workbook: a .csv is laid out as one. */
  readonly bytes: Uint8Array;
  readonly workbook: Workbook;
  readonly look: BookLook;
}

/** Something to be told to people as it stands. */
export class FileProblem extends Error {
  override readonly name = 'FileProblem';
}

const megabytes = (bytes: number): string => `${Math.ceil(bytes / 1_000_000)} MB`;

/** A sheet's name from that of a file: without its ending and without signs that names of sheets may not have. */
const sheetNameOf = (fileName: string): string =>
  fileName
    .replace(/\.[^.]*$/, '')
    .replace(/[[\]:*?/\\']/g, ' ')
    .trim()
    .slice(0, 31) || 'Sheet 1';

function csvBytes(bytes: Uint8Array, name: string): Uint8Array {
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    text = new TextDecoder('windows-1252').decode(bytes);
  }
  if (text.includes('\u0000')) throw new FileProblem(`${name} is not a text of rows and cells.`);
  const sheet = sheetNameOf(name);
  const workbook = Workbook.read(blankBook(sheet), name);
  const updates = new Map<string, CellUpdate>();
  for (const [r, row] of readCsv(text).entries())
    for (const [c, cell] of row.entries()) {
      const value = csvValue(cell);
      if (value !== null) updates.set(addressOf(r + 1, c + 1), { value });
    }
  workbook.patch(sheet, updates);
  return workbook.bytes();
}

/** The same file again, from the bytes of its workbook. */
export function openBytes(bytes: Uint8Array, name: string, kind: OpenFile['kind']): OpenFile {
  const workbook = Workbook.read(bytes, name);
  if (workbook.sheets.every(({ state }) => state !== 'visible'))
    throw new FileProblem(`${name} has no sheet that can be shown.`);
  return { name, kind, bytes, workbook, look: readLook(bytes, name) };
}

/** Reads a file. Throws a `FileProblem` or a `WorkbookError`, whose messages are for people. */
export function openFile(bytes: Uint8Array, name: string): OpenFile {
  const isCsv = /\.(?:csv|tsv|txt)$/i.test(name);
  const most = isCsv ? LARGEST_CSV : LARGEST_WORKBOOK;
  if (bytes.length > most)
    throw new FileProblem(
      `${name} is larger than ${megabytes(most)}, the most that this page opens. Split it, or use npm run fill.`,
    );
  if (bytes.length === 0) throw new FileProblem(`${name} is empty.`);
  if (isCsv) return openBytes(csvBytes(bytes, name), name, 'csv');
  return openBytes(bytes, name, 'xlsx');
}

/** The sentence for whatever went wrong while a file was opened. */
export function problemText(error: unknown, name: string): string {
  const known = error instanceof Error && (error.name === 'FileProblem' || error.name === 'WorkbookError');
  const text = known ? error.message : `${name} could not be opened.`;
  return /[.?]$/.test(text) ? text : `${text}.`;
}
