/** Compares two workbook files part by part, to the byte. For tests and for the build. */

import { addressOf } from './address.ts';
import { applyEdits, type Edit, opened } from './edits.ts';
import { Parts } from './parts.ts';
import { sheetRows } from './read-sheet.ts';
import { readWorkbookPart } from './read-workbook.ts';

export interface Comparison {
  /** One line for each difference outside of cells: parts lost, added, moved or changed. */
  readonly differences: readonly string[];
  /** Addresses of the cells that differ, by the name of their sheet; sheets without any are left out. */
  readonly cells: Readonly<Record<string, readonly string[]>>;
}

const sameBytes = (a: Uint8Array, b: Uint8Array): boolean =>
  a.length === b.length && a.every((byte, i) => byte === b[i]);

/** A sheet's cells as they are written, by address. */
function writtenCells(parts: Parts, path: string): Map<string, string> {
  const xml = parts.text(path);
  const cells = new Map<string, string>();
  for (const row of sheetRows(parts, path).rows()) {
    for (const cell of row.cells) cells.set(addressOf(cell.row, cell.column), xml.slice(cell.start, cell.end));
  }
  return cells;
}

/** A sheet without some of its cells, and without rows that hold nothing and say nothing but their number. */
function without(parts: Parts, path: string, addresses: ReadonlySet<string>): string {
  const xml = parts.text(path);
  const edits: Edit[] = [];
  const rows = sheetRows(parts, path);
  for (const row of rows.rows()) {
    const out = row.cells.filter((cell) => addresses.has(addressOf(cell.row, cell.column)));
    const isEmpty = out.length === row.cells.length;
    const tag = opened(xml.slice(row.start, row.openEnd));
    const isBare = /^<[^\s>]+\s+r="\d+">$/.test(tag);
    const between = xml.slice(row.openEnd, row.closeStart);
    if (isEmpty && isBare && applyEdits(between, shift(out, row.openEnd)).trim() === '') {
      edits.push({ start: row.start, end: row.end, text: '' });
    } else if (row.selfClosing) edits.push({ start: row.start, end: row.end, text: `${tag}</row>` });
    else {
      for (const { start, end } of out) edits.push({ start, end, text: '' });
      if (isEmpty) edits.push({ start: row.closeStart, end: row.end, text: '</row>' });
    }
  }
  const { data } = rows;
  if (data?.selfClosing)
    edits.push({
      start: data.start,
      end: data.end,
      text: `${opened(xml.slice(data.start, data.openEnd))}</${data.prefix}sheetData>`,
    });
  return applyEdits(xml, edits);
}

const shift = (spans: readonly { start: number; end: number }[], by: number): Edit[] =>
  spans.map(({ start, end }) => ({ start: start - by, end: end - by, text: '' }));

/**
 * Compares two files: names and order of their parts, each part's bytes as packed, and sheets once the cells that differ are taken out.
 *
 * @example compareWorkbooks(before, after) // { differences: [], cells: { Jackets: ['B2'] } }
 */
export function compareWorkbooks(before: Uint8Array, after: Uint8Array): Comparison {
  const a = new Parts(before, 'The first file');
  const b = new Parts(after, 'The second file');
  const differences: string[] = [];
  const cells: Record<string, readonly string[]> = {};
  const oldNames = a.zip.names();
  const newNames = b.zip.names();
  for (const name of oldNames) if (!newNames.includes(name)) differences.push(`${name}: lost`);
  for (const name of newNames) if (!oldNames.includes(name)) differences.push(`${name}: added`);
  const common = oldNames.filter((name) => newNames.includes(name));
  const order = newNames.filter((name) => oldNames.includes(name));
  if (common.some((name, i) => name !== order[i])) differences.push('the order of the parts differs');
  const sheets = readWorkbookPart(a).sheets;
  for (const name of common) {
    if (sameBytes(a.zip.raw(name), b.zip.raw(name))) continue;
    const sheet = sheets.find(({ path }) => path === name);
    if (!sheet) {
      differences.push(`${name}: changed`);
      continue;
    }
    const old = writtenCells(a, name);
    const now = writtenCells(b, name);
    const differing = [...new Set([...old.keys(), ...now.keys()])].filter(
      (address) => old.get(address) !== now.get(address),
    );
    const taken = new Set(differing);
    if (without(a, name, taken) !== without(b, name, taken)) differences.push(`${name}: changed outside of its cells`);
    else if (differing.length === 0) differences.push(`${name}: packed anew`);
    if (differing.length > 0) cells[sheet.name] = differing;
  }
  return { differences, cells };
}
