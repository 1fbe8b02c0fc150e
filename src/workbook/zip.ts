/**
 * The zip container of a workbook: keeps every untouched entry as raw bytes.
 *
 * An entry is the span from its local header to the next one's, so packed bytes, flags, times, extra fields and data descriptors come out
 * as they went in. Only a replaced entry is packed anew.
 */

import { deflateSync } from 'fflate';
import { crc32 } from './crc32.ts';
import { LARGEST_FILE, LARGEST_RATIO, LARGEST_UNPACKED, MOST_ENTRIES, SMALL_PART } from './limits.ts';
import { unpack } from './unpack.ts';
import { WorkbookError } from './workbook-error.ts';
import {
  CENTRAL,
  CENTRAL_LENGTH,
  centralRecord,
  DEFLATED,
  END,
  END_LENGTH,
  type Entry,
  FLAG_ENCRYPTED,
  FLAG_UTF8,
  LOCAL,
  LOCAL_LENGTH,
  LONGEST_COMMENT,
  localRecord,
  newEntry,
  OLD_CONTAINER,
  STORED,
  view,
  ZIP64_LOCATOR,
  ZIP64_LOCATOR_LENGTH,
} from './zip-records.ts';

/** Names that would leave the folder they are unpacked into, or that two systems read differently. */
const isUnsafeName = (name: string): boolean =>
  name === '' ||
  name.startsWith('/') ||
  /[\\:\0]/.test(name) ||
  name.split('/').some((step) => step === '..' || step === '.');

/** Longest that an error's line is behind the file's name [characters]. */
const LONGEST_LINE = 250;

export class Zip {
  readonly #bytes: Uint8Array;
  readonly #fileName: string;
  /** Directory order; keys are names in small letters, since part names ignore letter case. */
  readonly #entries = new Map<string, Entry>();
  /** Where the local records start and end, and the span of the closing record. */
  #firstLocal = 0;
  #directoryEnd = 0;
  #endRecord = 0;
  #isChanged = false;

  constructor(bytes: Uint8Array, fileName: string) {
    this.#bytes = bytes;
    this.#fileName = fileName;
    this.#readDirectory();
  }

  /** An error whose line starts with the file's name. What a file says of itself may be of any length and hold line ends. */
  refuse(what: string): WorkbookError {
    const line = what.replace(/\p{Cc}+/gu, ' ');
    return new WorkbookError(
      `${this.#fileName} ${line.length > LONGEST_LINE ? `${line.slice(0, LONGEST_LINE - 1)}…` : line}`,
    );
  }

  #damaged(): WorkbookError {
    return this.refuse('is incomplete or damaged. Fetch it again, or open it in a spreadsheet and save it anew');
  }

  #readDirectory(): void {
    const bytes = this.#bytes;
    if (bytes.length > LARGEST_FILE) throw this.refuse('is larger than 100 MB, the most that is read here');
    if (OLD_CONTAINER.every((byte, i) => bytes[i] === byte)) {
      throw this.refuse('is encrypted or an old .xls. Save it as .xlsx without a password');
    }
    const data = view(bytes);
    const end = this.#findEnd(data);
    this.#endRecord = end;
    const count = data.getUint16(end + 10, true);
    const size = data.getUint32(end + 12, true);
    const offset = data.getUint32(end + 16, true);
    const zip64 = end >= ZIP64_LOCATOR_LENGTH && data.getUint32(end - ZIP64_LOCATOR_LENGTH, true) === ZIP64_LOCATOR;
    if (zip64 || count === 0xffff || size === 0xffffffff || offset === 0xffffffff) throw this.#zip64();
    if (data.getUint16(end + 4, true) !== 0 || data.getUint16(end + 6, true) !== 0) throw this.#damaged();
    if (count > MOST_ENTRIES) throw this.refuse(`holds more than ${MOST_ENTRIES} parts, the most that are read here`);
    if (offset + size > end) throw this.#damaged();
    // Bytes before the first entry shift every stated offset by the same length.
    const isCentral = (at: number): boolean => at + 4 <= end && data.getUint32(at, true) === CENTRAL;
    const directory = isCentral(end - size) ? end - size : offset;
    const shift = directory - offset;
    if (count > 0 && !isCentral(directory)) throw this.#damaged();

    const records: { at: number; length: number; local: number }[] = [];
    let at = directory;
    for (let i = 0; i < count; i++) {
      if (at + CENTRAL_LENGTH > end || data.getUint32(at, true) !== CENTRAL) throw this.#damaged();
      const length =
        CENTRAL_LENGTH + data.getUint16(at + 28, true) + data.getUint16(at + 30, true) + data.getUint16(at + 32, true);
      if (at + length > end) throw this.#damaged();
      records.push({ at, length, local: data.getUint32(at + 42, true) + shift });
      at += length;
    }
    this.#directoryEnd = at;
    const starts = records.map((record) => record.local).sort((a, b) => a - b);
    this.#firstLocal = starts[0] ?? directory;
    const following = new Map(starts.map((start, i) => [start, starts[i + 1] ?? directory]));
    let unpacked = 0;
    for (const record of records) {
      const entry = this.#readEntry(data, record, following.get(record.local)!);
      const key = entry.name.toLowerCase();
      if (this.#entries.has(key))
        throw this.refuse(`holds two parts called ${entry.name}, so it is unclear which one counts`);
      this.#entries.set(key, entry);
      unpacked += entry.size;
      if (unpacked > LARGEST_UNPACKED) throw this.refuse('unpacks to more than 1 GB, the most that is read here');
    }
  }

  #findEnd(data: DataView): number {
    const last = data.byteLength - END_LENGTH;
    for (let at = last; at >= 0 && at >= last - LONGEST_COMMENT; at--) {
      if (data.getUint32(at, true) === END && at + END_LENGTH + data.getUint16(at + 20, true) === data.byteLength)
        return at;
    }
    const looksZipped = data.byteLength >= 4 && data.getUint32(0, true) === LOCAL;
    throw looksZipped ? this.#damaged() : this.refuse('is not a .xlsx or .xlsm workbook');
  }

  #zip64(): WorkbookError {
    return this.refuse(
      'is packed in the large-file form of zip (zip64), which is not read here. Save it anew from a spreadsheet',
    );
  }

  #readEntry(data: DataView, record: { at: number; length: number; local: number }, end: number): Entry {
    const { at, local } = record;
    const flags = data.getUint16(at + 8, true);
    const method = data.getUint16(at + 10, true);
    const packedSize = data.getUint32(at + 20, true);
    const size = data.getUint32(at + 24, true);
    const nameBytes = this.#bytes.subarray(at + CENTRAL_LENGTH, at + CENTRAL_LENGTH + data.getUint16(at + 28, true));
    const name = new TextDecoder(flags & FLAG_UTF8 ? 'utf-8' : 'latin1').decode(nameBytes);
    if (isUnsafeName(name)) throw this.refuse('holds a part whose name points outside of the workbook');
    if (flags & FLAG_ENCRYPTED) throw this.refuse('is encrypted. Save it without a password');
    if (packedSize === 0xffffffff || size === 0xffffffff || local === 0xffffffff) throw this.#zip64();
    if (local + LOCAL_LENGTH > end || data.getUint32(local, true) !== LOCAL) throw this.#damaged();
    const nameLength = data.getUint16(local + 26, true);
    const dataStart = local + LOCAL_LENGTH + nameLength + data.getUint16(local + 28, true);
    // Ends within its own span, so no two entries share packed bytes.
    if (dataStart + packedSize > end) throw this.#damaged();
    const localName = this.#bytes.subarray(local + LOCAL_LENGTH, local + LOCAL_LENGTH + nameLength);
    if (localName.length !== nameBytes.length || localName.some((byte, i) => byte !== nameBytes[i]))
      throw this.#damaged();
    if (method === STORED && size !== packedSize) throw this.#damaged();
    if (size > SMALL_PART && size > packedSize * LARGEST_RATIO) {
      throw this.refuse(`is packed more than ${LARGEST_RATIO} times, which no workbook is`);
    }
    return {
      name,
      start: local,
      end,
      dataStart,
      packedSize,
      size,
      crc: data.getUint32(at + 16, true),
      method,
      local: this.#bytes.subarray(local, dataStart),
      central: this.#bytes.subarray(at, at + record.length),
    };
  }

  /** Names in the order of the directory. */
  names(): string[] {
    return [...this.#entries.values()].map((entry) => entry.name);
  }

  has(name: string): boolean {
    return this.#entries.has(name.toLowerCase());
  }

  /** The name as the file spells it. */
  spelling(name: string): string | undefined {
    return this.#entries.get(name.toLowerCase())?.name;
  }

  /** Content of an entry, unpacked now. */
  read(name: string): Uint8Array {
    const entry = this.#entries.get(name.toLowerCase());
    if (!entry) throw this.refuse(`lacks its part ${name}. Open it in a spreadsheet and save it anew`);
    if (entry.changed) return entry.changed.content;
    const packed = this.#bytes.subarray(entry.dataStart, entry.dataStart + entry.packedSize);
    if (entry.method !== STORED && entry.method !== DEFLATED) throw this.#damaged();
    const content = entry.method === STORED ? packed : unpack(packed, entry.size);
    if (!content || crc32(content) !== entry.crc) throw this.#damaged();
    return content;
  }

  /** The raw local record of an entry: header, packed bytes, descriptor. */
  raw(name: string): Uint8Array {
    const entry = this.#entries.get(name.toLowerCase());
    if (!entry) throw this.refuse(`lacks its part ${name}`);
    return entry.changed ? localRecord(entry) : this.#bytes.subarray(entry.start, entry.end);
  }

  /** Replaces an entry's content, or appends a new entry. */
  write(name: string, content: Uint8Array): void {
    const key = name.toLowerCase();
    const entry = this.#entries.get(key) ?? newEntry(name);
    entry.changed = { packed: deflateSync(content), content };
    this.#entries.set(key, entry);
    this.#isChanged = true;
  }

  remove(name: string): void {
    if (this.#entries.delete(name.toLowerCase())) this.#isChanged = true;
  }

  /** The file. Unchanged, these are the bytes that were read. */
  bytes(): Uint8Array {
    if (!this.#isChanged) return this.#bytes;
    const entries = [...this.#entries.values()];
    const inFile = entries.filter((entry) => entry.local.length > 0).sort((a, b) => a.start - b.start);
    const added = entries.filter((entry) => entry.local.length === 0);
    const pieces: Uint8Array[] = [];
    let length = 0;
    const add = (piece: Uint8Array): number => {
      pieces.push(piece);
      length += piece.length;
      return length - piece.length;
    };
    add(this.#bytes.subarray(0, this.#firstLocal));
    const offsets = new Map<Entry, number>();
    for (const entry of [...inFile, ...added]) {
      offsets.set(entry, add(entry.changed ? localRecord(entry) : this.#bytes.subarray(entry.start, entry.end)));
    }
    const directory = length;
    for (const entry of entries) add(centralRecord(entry, offsets.get(entry)!));
    const directorySize = length - directory;
    add(this.#bytes.subarray(this.#directoryEnd, this.#endRecord));
    const end = this.#bytes.slice(this.#endRecord);
    const data = view(end);
    data.setUint16(8, entries.length, true);
    data.setUint16(10, entries.length, true);
    data.setUint32(12, directorySize, true);
    data.setUint32(16, directory, true);
    add(end);
    const out = new Uint8Array(length);
    let at = 0;
    for (const piece of pieces) {
      out.set(piece, at);
      at += piece.length;
    }
    return out;
  }
}
