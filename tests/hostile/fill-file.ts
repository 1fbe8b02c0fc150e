/** Runs `fill` in this process on a file of bytes. */
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fill } from '../../src/cli/fill.ts';
import type { BookValue } from '../../src/workbook/index.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { recorded } from '../cli/recorded.ts';

export interface Filled {
  readonly status: number;
  /** What was printed, and what was explained beside it. */
  readonly out: string;
  readonly error: string;
  /** The file that was written. */
  readonly after: Uint8Array | undefined;
}

/** Fills a file. What `fill` throws comes through: it must not throw. */
export async function fillFile(before: Uint8Array, name = 'book.xlsx'): Promise<Filled> {
  const folder = mkdtempSync(join(tmpdir(), 'hostile-'));
  try {
    const [input, target] = [join(folder, name), join(folder, `filled-${name}`)];
    writeFileSync(input, before);
    const output = recorded();
    const status = await fill([input, target], output);
    const after = status === 0 ? new Uint8Array(readFileSync(target)) : undefined;
    return { status, out: output.printed.join('\n'), error: output.explained.join('\n'), after };
  } finally {
    rmSync(folder, { recursive: true });
  }
}

/** Values of a sheet, by address. */
export const valuesOf = (bytes: Uint8Array, sheet: string): Map<string, BookValue> =>
  new Map(Array.from(Workbook.read(bytes).sheet(sheet)!.cells(), ({ address, value }) => [address, value]));
