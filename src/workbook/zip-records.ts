/**
 * The records of a zip file: how an entry looks in front of its packed bytes and in the directory.
 *
 * Source of the layout: PKWARE APPNOTE 6.3.10, sections 4.3 and 4.4.
 */

import { crc32 } from './crc32.ts';

/** Signatures and lengths of the records, little endian. */
export const LOCAL = 0x04034b50;
export const LOCAL_LENGTH = 30;
export const CENTRAL = 0x02014b50;
export const CENTRAL_LENGTH = 46;
export const END = 0x06054b50;
export const END_LENGTH = 22;
export const LONGEST_COMMENT = 0xffff;
export const ZIP64_LOCATOR = 0x07064b50;
export const ZIP64_LOCATOR_LENGTH = 20;
export const ZIP64_FIELD = 0x0001;
/** Header of the older container that encrypted workbooks and .xls files use. */
export const OLD_CONTAINER = [0xd0, 0xcf, 0x11, 0xe0];

export const STORED = 0;
export const DEFLATED = 8;
export const FLAG_ENCRYPTED = 0x0001;
export const FLAG_DESCRIPTOR = 0x0008;
export const FLAG_UTF8 = 0x0800;
/** 1 January 1980, the first day this format knows: new entries carry no clock time. */
export const FIRST_DAY = 0x0021;
export const VERSION_DEFLATE = 20;

export interface Entry {
  readonly name: string;
  /** Span of the local record in the file read; empty for a new entry. */
  readonly start: number;
  readonly end: number;
  readonly dataStart: number;
  readonly packedSize: number;
  readonly size: number;
  readonly crc: number;
  readonly method: number;
  /** The local header with name and extra fields, and the record in the directory. */
  readonly local: Uint8Array;
  readonly central: Uint8Array;
  /** New content, packed. */
  changed?: { readonly packed: Uint8Array; readonly content: Uint8Array };
}

export const view = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

export function newEntry(name: string): Entry {
  const none = new Uint8Array(0);
  return {
    name,
    start: 0,
    end: 0,
    dataStart: 0,
    packedSize: 0,
    size: 0,
    crc: 0,
    method: DEFLATED,
    local: none,
    central: none,
  };
}

/** Extra fields without the one for large files, whose sizes would now be wrong. */
function withoutZip64(extra: Uint8Array): Uint8Array {
  const data = view(extra);
  for (let at = 0; at + 4 <= extra.length; ) {
    const next = at + 4 + data.getUint16(at + 2, true);
    if (data.getUint16(at, true) === ZIP64_FIELD) {
      return Uint8Array.from([...extra.subarray(0, at), ...withoutZip64(extra.subarray(next))]);
    }
    at = next;
  }
  return extra;
}

/** Header, name, extra fields and packed bytes of a changed entry. Time and name stay; sizes stand in the header, so no descriptor follows. */
export function localRecord(entry: Entry): Uint8Array {
  const { packed, content } = entry.changed!;
  const isNew = entry.local.length === 0;
  const name = isNew
    ? new TextEncoder().encode(entry.name)
    : entry.local.subarray(LOCAL_LENGTH, LOCAL_LENGTH + view(entry.local).getUint16(26, true));
  const extra = isNew ? new Uint8Array(0) : withoutZip64(entry.local.subarray(LOCAL_LENGTH + name.length));
  const out = new Uint8Array(LOCAL_LENGTH + name.length + extra.length + packed.length);
  const data = view(out);
  if (isNew) {
    data.setUint32(0, LOCAL, true);
    data.setUint16(4, VERSION_DEFLATE, true);
    data.setUint16(6, FLAG_UTF8, true);
    data.setUint16(12, FIRST_DAY, true);
  } else out.set(entry.local.subarray(0, LOCAL_LENGTH));
  data.setUint16(6, data.getUint16(6, true) & ~FLAG_DESCRIPTOR, true);
  data.setUint16(8, DEFLATED, true);
  data.setUint32(14, crc32(content), true);
  data.setUint32(18, packed.length, true);
  data.setUint32(22, content.length, true);
  data.setUint16(26, name.length, true);
  data.setUint16(28, extra.length, true);
  out.set(name, LOCAL_LENGTH);
  out.set(extra, LOCAL_LENGTH + name.length);
  out.set(packed, LOCAL_LENGTH + name.length + extra.length);
  return out;
}

/** The directory's record of an entry: the old one with its new offset and, if changed, its new sizes. */
export function centralRecord(entry: Entry, offset: number): Uint8Array {
  const isNew = entry.central.length === 0;
  const name = new TextEncoder().encode(entry.name);
  const out = isNew ? new Uint8Array(CENTRAL_LENGTH + name.length) : entry.central.slice();
  const data = view(out);
  if (isNew) {
    data.setUint32(0, CENTRAL, true);
    data.setUint16(4, VERSION_DEFLATE, true);
    data.setUint16(6, VERSION_DEFLATE, true);
    data.setUint16(8, FLAG_UTF8, true);
    data.setUint16(14, FIRST_DAY, true);
    data.setUint16(28, name.length, true);
    out.set(name, CENTRAL_LENGTH);
  }
  if (entry.changed) {
    data.setUint16(8, data.getUint16(8, true) & ~FLAG_DESCRIPTOR, true);
    data.setUint16(10, DEFLATED, true);
    data.setUint32(16, crc32(entry.changed.content), true);
    data.setUint32(20, entry.changed.packed.length, true);
    data.setUint32(24, entry.changed.content.length, true);
  }
  data.setUint32(42, offset, true);
  return out;
}
