/** `npm run fill -- IN OUT`: calculates a workbook and writes the values of its formulas back. */

import { readFileSync } from 'node:fs';
import { parseArgs } from 'node:util';
import type { SheetValue } from '../engine/book.ts';
import { type Calculated, calculateBook, type SheetResult } from '../engine/calculate-book.ts';
import { createEngine } from '../engine/engine.ts';
import { addressOf, isSame, refOf, workbookBook } from '../engine/workbook-book.ts';
import { functions } from '../functions/index.ts';
import { type CellUpdate, Workbook, WorkbookError } from '../workbook/index.ts';
import { writeBeside } from '../workbook/write-beside.ts';
import type { Output } from './output.ts';
import { isSameFile } from './same-file.ts';

export const FILL_USAGE = `npm run fill -- IN OUT
npm run fill -- --check IN

Calculates the workbook IN and writes it to OUT with the values filled in. Only cells whose value changes are written; everything else stays
as it is. --check writes nothing.

Exit status 0: written, or nothing to change, 1: --check found cells that would change, 2: the workbook cannot be read or written.`;

/** Lines of a list that are printed; the rest is counted. */
const MOST_LINES = 50;

/** A progress line is written again when so many more formulas are calculated. */
const PROGRESS_STEP = 500;

/** What has to be written for one formula: nothing where its values are what the file says. */
function updatesFor(
  { cell, rows }: Calculated,
  before: ReadonlyMap<string, SheetValue>,
  updates: Map<string, CellUpdate>,
): void {
  const { row, column, formula } = cell;
  const { area } = formula!;
  const ref = refOf(row, column, rows.length, rows[0]!.length);
  const wasRef =
    area &&
    refOf(area.firstRow, area.firstColumn, area.lastRow - area.firstRow + 1, area.lastColumn - area.firstColumn + 1);
  const moved = formula!.fills === 'dynamic' && wasRef !== undefined && ref !== wasRef;
  rows.forEach((values, r) => {
    values.forEach((value, c) => {
      const address = addressOf(row + r, column + c);
      const isFirst = r === 0 && c === 0;
      const same = isSame(before.get(address) ?? null, value);
      if (isFirst && (moved || !same)) updates.set(address, moved ? { value, arrayRef: ref } : { value });
      else if (!isFirst && !same) updates.set(address, { value, spill: true });
    });
  });
}

function changeSheet(workbook: Workbook, { sheet, calculated }: SheetResult): string[] {
  const before = new Map(sheet.cells.map(({ row, column, value }) => [addressOf(row, column), value]));
  const updates = new Map<string, CellUpdate>();
  for (const result of calculated) updatesFor(result, before, updates);
  return updates.size === 0 ? [] : workbook.patch(sheet.name, updates);
}

function listed(title: string, lines: readonly string[]): string[] {
  if (lines.length === 0) return [];
  const more = lines.length - MOST_LINES;
  const shown = lines.slice(0, MOST_LINES).map((line) => `  ${line}`);
  return [`${title}:`, ...shown, ...(more > 0 ? [`  and ${more} more`] : [])];
}

const quotedSheet = (name: string): string =>
  /^[\p{L}_][\p{L}\p{N}_.]*$/u.test(name) ? name : `'${name.replaceAll("'", "''")}'`;

function summary(results: readonly SheetResult[], changed: number, check: boolean): string {
  const errors: string[] = [];
  const notChecked: string[] = [];
  let formulas = 0;
  for (const { sheet, calculated, notChecked: kept } of results) {
    formulas += calculated.length + kept.length;
    const place = (row: number, column: number): string => `${quotedSheet(sheet.name)}!${addressOf(row, column)}`;
    for (const { cell, reason } of kept) notChecked.push(`${place(cell.row, cell.column)} ${reason}`);
    for (const { cell, rows, reason } of calculated) {
      const error = rows.flat().find((value) => typeof value === 'object' && value !== null);
      if (typeof error === 'object' && error !== null)
        errors.push([place(cell.row, cell.column), error.error, reason ?? ''].join(' ').trimEnd());
    }
  }
  return [
    `formulas: ${formulas}`,
    `${check ? 'would change' : 'changed'}: ${changed}`,
    `not checked: ${notChecked.length}`,
    `errors: ${errors.length}`,
    ...listed('Not checked, kept as they were', notChecked),
    ...listed('Errors', errors),
  ].join('\n');
}

interface Arguments {
  readonly check: boolean;
  readonly input: string;
  readonly target: string | undefined;
}

function readArguments(args: readonly string[]): Arguments | 'help' | undefined {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { check: { type: 'boolean', default: false }, help: { type: 'boolean', short: 'h', default: false } },
    });
    if (values.help) return 'help';
    const [input, target, ...more] = positionals;
    if (input === undefined || more.length > 0 || (target === undefined && !values.check)) return undefined;
    return { check: values.check, input, target };
  } catch {
    return undefined;
  }
}

/** Runs the command and answers its exit status. */
export async function fill(args: readonly string[], output: Output): Promise<number> {
  const given = readArguments(args);
  if (given === 'help') {
    output.out(FILL_USAGE);
    return 0;
  }
  if (given === undefined) {
    output.error(FILL_USAGE);
    return 2;
  }
  const { check, input, target } = given;
  if (!check && isSameFile(input, target!)) {
    output.error(`${target} is the workbook itself; name another file to write to.`);
    return 2;
  }
  try {
    const workbook = Workbook.read(readFileSync(input), input);
    const results = await calculate(workbook, output);
    const changed = results.reduce((count, result) => count + changeSheet(workbook, result).length, 0);
    if (!check) await writeBeside(target!, workbook.bytes());
    if (!check && changed > 0 && workbook.signed)
      output.error(`The digital signature of ${input} does not hold for ${target}. Sign that file anew.`);
    output.out(summary(results, changed, check));
    return check && changed > 0 ? 1 : 0;
  } catch (error) {
    const line = fileFault(error, input);
    output.error(line ?? `${input} holds something that cannot be calculated here. Nothing was written.`);
    return 2;
  }
}

async function calculate(workbook: Workbook, output: Output): Promise<SheetResult[]> {
  const engine = createEngine(functions);
  let shown = 0;
  try {
    return await calculateBook(engine, workbookBook(workbook), (done, all) => {
      if (Math.abs(done - shown) < PROGRESS_STEP) return;
      shown = done;
      output.progress(`${done} of ${all} formulas`);
    });
  } finally {
    engine.dispose();
  }
}

/** What went wrong with a file, in one line; nothing where it is no matter of files. */
function fileFault(error: unknown, input: string): string | undefined {
  if (error instanceof WorkbookError) return error.message;
  const { code, path } = error as NodeJS.ErrnoException;
  const file = path ?? input;
  if (code === 'ENOENT') return `${file} is not there.`;
  if (code === 'EISDIR') return `${file} is a folder; name a file.`;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return `${file} may not be read or written.`;
  if (code === 'ENOSPC') return `There is no room left to write ${file}.`;
  return code === undefined ? undefined : `${file} cannot be read or written (${code}).`;
}
