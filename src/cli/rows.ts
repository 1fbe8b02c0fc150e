/** `npm run rows -- IN OUT`: one row of results for each specimen of a file, however long it is. */
import { createReadStream } from 'node:fs';
import { parseArgs } from 'node:util';
import { isFault } from '../calculation/result.ts';
import { counted } from '../functions/calling/arguments.ts';
import type { Argument, Cell } from '../functions/calling/cell.ts';
import { type CollectionTable, collectionTable } from '../functions/calling/collection-table.ts';
import { plainName } from '../functions/calling/names.ts';
import { isUnitSystem, type ReadSettings, readSettings } from '../functions/calling/read-settings.ts';
import { reasonOf, valueError } from '../functions/calling/reasons.ts';
import { type TableCell, tableCells } from '../functions/calling/tables.ts';
import type { UnitSystem } from '../functions/calling/units.ts';
import { WorkbookError } from '../workbook/workbook-error.ts';
import { type Put, writePieces } from '../workbook/write-beside.ts';
import { CsvError, CsvReader, LINE_END } from './csv.ts';
import { cellOf, fieldOf } from './csv-cells.ts';
import { type Output, terminal } from './output.ts';
import { isSameFile } from './same-file.ts';

export const ROWS_USAGE = `npm run rows -- IN OUT [--settings FILE]

Reads specimens from the file IN, comma-separated values under a row of names such as length, width, height and weight, and writes what their
jackets need to OUT, a row for each. FILE holds names and values of settings; us or metric in its place are defaults in those units.
A row that cannot be calculated has the reason in its note, and the others go on.

Exit status 0: written, 2: a file cannot be read or written.`;

/** A progress line is written again after so many rows. */
const PROGRESS_STEP = 5_000;

/** What is written at once [characters]. */
const WRITE_SIZE = 1 << 16;

/** Something about a file that people can mend. */
class FileError extends Error {}

/** Text of a file, piece by piece. */
async function* textOf(path: string): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  const decode = (bytes?: Uint8Array): string => {
    try {
      return bytes ? decoder.decode(bytes, { stream: true }) : decoder.decode();
    } catch {
      throw new FileError(`${path} is not plain text in UTF-8; save it as comma-separated values in UTF-8.`);
    }
  };
  for await (const bytes of createReadStream(path)) yield decode(bytes as Uint8Array);
  yield decode();
}

/** Records of a file, some at a time. */
async function* recordsOf(path: string): AsyncGenerator<string[][]> {
  const reader = new CsvReader();
  for await (const piece of textOf(path)) yield reader.push(piece);
  yield reader.end();
}

const settingsFrom = async (given: string | undefined): Promise<ReadSettings> => {
  let argument: Argument = null;
  if (given !== undefined && isUnitSystem(plainName(given))) argument = given;
  else if (given !== undefined) {
    const records: string[][] = [];
    for await (const some of recordsOf(given)) records.push(...some);
    const width = Math.max(2, ...records.map((fields) => fields.length));
    argument = records.map((fields) => Array.from({ length: width }, (_, i): Cell => cellOf(fields[i] ?? '')));
    if (records.length === 0) throw new FileError(`${given} is empty; give rows of a name and a value.`);
  }
  const read = readSettings(argument);
  if (isFault(read)) throw new FileError(`${given}: ${reasonOf(read, 'metric')}`);
  return read;
};

interface Counts {
  rows: number;
  blank: number;
  noted: number;
}

/** What is wrong with a first line that has no commas but other marks that part fields. */
const otherSeparator = ([only = '', ...others]: readonly string[]): string | undefined => {
  const mark = others.length ? undefined : ['semicolons', 'tabs'].find((_, i) => only.includes(i ? '\t' : ';'));
  return mark && `${mark} part the fields; save it with commas between them and with decimal points`;
};

/** Turns records into lines of the file that comes out. */
class Lines {
  readonly counts: Counts = { rows: 0, blank: 0, noted: 0 };
  private table: CollectionTable | undefined;
  private fields = 0;
  private readonly settings: ReadSettings;
  private readonly input: string;

  constructor(settings: ReadSettings, input: string) {
    this.settings = settings;
    this.input = input;
  }

  /** Lines for one more record: two for the first one where it is a specimen. */
  of(record: readonly string[]): string {
    if (this.table) return this.row(record, this.table);
    const { settings, system } = this.settings;
    const asCells = collectionTable(record.map(cellOf), settings, system);
    // Names come out as they came in: 007 is no 7 there.
    const table = !isFault(asCells) && asCells.named ? collectionTable(record, settings, system) : asCells;
    if (isFault(table)) throw new FileError(`${this.input}: ${otherSeparator(record) ?? reasonOf(table, system)}.`);
    this.table = table;
    this.fields = record.length;
    const header = line(table.header, system);
    return table.named ? header : header + this.row(record, table);
  }

  private row(record: readonly string[], table: CollectionTable): string {
    const { counts, fields } = this;
    counts.rows++;
    const cells = record.map((field, i): Cell => (table.inputs.has(i) ? cellOf(field) : field));
    const tooMany = record.slice(fields).some((field) => field.trim() !== '');
    const out = tooMany
      ? table.refused(
          cells,
          valueError(
            `the row has ${counted(record.length, 'field')}, the first one has ${fields}; put a text with a comma in quotation marks, and type numbers with a decimal point`,
          ),
        )
      : table.row(cells);
    if (out.at(-1) !== '') counts.noted++;
    else if (out.at(-2) === '') counts.blank++;
    return line(out, this.settings.system);
  }
}

const line = (cells: readonly TableCell[], system: UnitSystem): string =>
  `${tableCells([cells], system)[0]!.map(fieldOf).join(',')}${LINE_END}`;

const calculate = async (input: string, settings: ReadSettings, put: Put, output: Output): Promise<Counts> => {
  const lines = new Lines(settings, input);
  let text = '';
  let shown = 0;
  for await (const records of recordsOf(input)) {
    for (const record of records) {
      text += lines.of(record);
      if (text.length >= WRITE_SIZE) {
        await put(text);
        text = '';
      }
      if (lines.counts.rows - shown >= PROGRESS_STEP) {
        shown = lines.counts.rows;
        output.progress(`${counted(shown, 'row')} so far`);
      }
    }
  }
  if (text === '' && lines.counts.rows === 0) throw new FileError(`${input} is empty; give rows of specimens.`);
  await put(text);
  return lines.counts;
};

/** What is wrong with a file, in one line; nothing where it is no matter of files. */
const fileFault = (error: unknown, input: string): string | undefined => {
  if (error instanceof FileError) return error.message;
  if (error instanceof WorkbookError) return `${error.message}.`;
  if (error instanceof CsvError) return `${input}, ${error.message}.`;
  const { code, path } = error as NodeJS.ErrnoException;
  const file = path ?? input;
  if (code === 'ENOENT') return `${file} is not there.`;
  if (code === 'EISDIR') return `${file} is a folder; name a file.`;
  if (code === 'EACCES' || code === 'EPERM' || code === 'EROFS') return `${file} may not be read or written.`;
  return code === undefined ? undefined : `${file} cannot be read or written (${code}).`;
};

interface Given {
  readonly input: string;
  readonly target: string;
  readonly settings: string | undefined;
}

const readArguments = (args: readonly string[]): Given | 'help' | undefined => {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { settings: { type: 'string' }, help: { type: 'boolean', short: 'h', default: false } },
    });
    if (values.help) return 'help';
    const [input, target, ...more] = positionals;
    return input === undefined || target === undefined || more.length > 0
      ? undefined
      : { input, target, settings: values.settings };
  } catch {
    return undefined;
  }
};

/** Runs the command and answers its exit status. */
export async function rows(args: readonly string[], output: Output): Promise<number> {
  const given = readArguments(args);
  if (given === 'help') {
    output.out(ROWS_USAGE);
    return 0;
  }
  if (given === undefined) {
    output.error(ROWS_USAGE);
    return 2;
  }
  const { input, target } = given;
  const taken = [input, given.settings].find((file) => file !== undefined && isSameFile(file, target));
  if (taken !== undefined) {
    output.error(`${target} is the file that is read; name another file to write to.`);
    return 2;
  }
  try {
    const settings = await settingsFrom(given.settings);
    const counts = await writePieces(target, (put) => calculate(input, settings, put, output));
    output.out(`rows: ${counts.rows}\nblank: ${counts.blank}\nwith a note: ${counts.noted}`);
    return 0;
  } catch (error) {
    const text = fileFault(error, input);
    output.error(text ?? `${input} holds something that cannot be calculated here. Nothing was written.`);
    return 2;
  }
}

/** Runs the command for the shell. */
export async function main(args: readonly string[]): Promise<void> {
  process.exitCode = await rows(args.slice(1), terminal());
}
