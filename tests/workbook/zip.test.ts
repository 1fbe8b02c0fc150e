import { readFileSync } from 'node:fs';
import { strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { Zip } from '../../src/workbook/zip.ts';
import { refusal } from './make-book.ts';

const mtime = new Date(2026, 0, 2, 3, 4, 6);
const three = () =>
  zipSync(
    {
      'b.xml': strToU8('<b/>'.repeat(50)),
      'a.bin': [Uint8Array.of(1, 2, 3, 4), { level: 0 }],
      'c/d.xml': strToU8('<d/>'),
    },
    { mtime },
  );
const open = (bytes: Uint8Array) => new Zip(bytes, 'book.xlsx');

/** The place of a record's signature `PK` with these two bytes, the n-th of them. */
function record(bytes: Uint8Array, a: number, b: number, n = 0): number {
  for (let at = 0, seen = 0; at < bytes.length; at++) {
    const isOne = bytes[at] === 0x50 && bytes[at + 1] === 0x4b && bytes[at + 2] === a && bytes[at + 3] === b;
    if (isOne && seen++ === n) return at;
  }
  throw new Error('no such record');
}
const with_ = (bytes: Uint8Array, at: number, ...values: number[]): Uint8Array => {
  const copy = bytes.slice();
  copy.set(values, at);
  return copy;
};

describe('reading', () => {
  test('names in the order of the file, contents as they were', () => {
    const zip = open(three());
    expect(zip.names()).toEqual(['b.xml', 'a.bin', 'c/d.xml']);
    expect(zip.read('A.BIN')).toEqual(Uint8Array.of(1, 2, 3, 4));
    expect(new TextDecoder().decode(zip.read('b.xml'))).toBe('<b/>'.repeat(50));
  });

  test('bytes before the first entry shift it', () => {
    const shifted = Uint8Array.from([...strToU8('some bytes'), ...three()]);
    const zip = open(shifted);
    expect(zip.read('a.bin')).toEqual(Uint8Array.of(1, 2, 3, 4));
    zip.write('a.bin', Uint8Array.of(9));
    const out = zip.bytes();
    expect(out.slice(0, 10)).toEqual(strToU8('some bytes'));
    expect(open(out).read('a.bin')).toEqual(Uint8Array.of(9));
    expect(open(out).read('c/d.xml')).toEqual(strToU8('<d/>'));
  });
});

describe('writing', () => {
  test('nothing changed: the very bytes', () => {
    const bytes = three();
    expect(open(bytes).bytes()).toBe(bytes);
  });

  test('one entry changed: the others keep their raw records and their places', () => {
    const before = open(three());
    const after = open(three());
    after.write('a.bin', strToU8('new content'));
    const reread = open(after.bytes());
    expect(reread.names()).toEqual(before.names());
    for (const name of ['b.xml', 'c/d.xml']) expect(reread.raw(name)).toEqual(before.raw(name));
    expect(reread.read('a.bin')).toEqual(strToU8('new content'));
    // A second opinion: the library's own reader.
    expect(unzipSync(after.bytes())['a.bin']).toEqual(strToU8('new content'));
    // Its time stays: two bytes of time and two of date.
    expect(reread.raw('a.bin').slice(10, 14)).toEqual(before.raw('a.bin').slice(10, 14));
  });

  test("the file's comment stays", () => {
    const bytes = Uint8Array.from([...three(), ...strToU8('kept')]);
    bytes[bytes.length - 6] = 4;
    const zip = open(bytes);
    zip.remove('a.bin');
    expect(new TextDecoder().decode(zip.bytes().slice(-4))).toBe('kept');
    expect(open(zip.bytes()).names()).toEqual(['b.xml', 'c/d.xml']);
  });

  test('an entry with its sizes behind the data gets them in front when it changes', () => {
    const zip = open(new Uint8Array(readFileSync(new URL('fixtures/prefixed.xlsx', import.meta.url))));
    const flag = (bytes: Uint8Array, at: number) => bytes[at]! & 8;
    expect(flag(zip.raw('xl/workbook.xml'), 6)).toBe(8);
    zip.write('xl/workbook.xml', strToU8('<new/>'));
    expect(flag(zip.raw('xl/workbook.xml'), 6)).toBe(0);
    const out = zip.bytes();
    const central = record(out, 1, 2, zip.names().indexOf('xl/workbook.xml'));
    expect(flag(out, central + 8)).toBe(0);
    expect(flag(out, record(out, 1, 2) + 8)).toBe(8);
    expect(open(out).read('xl/workbook.xml')).toEqual(strToU8('<new/>'));
  });

  test('the extra field of large files goes when an entry changes, others stay', () => {
    const own = Uint8Array.of(9, 9);
    const zip = open(zipSync({ 'a.xml': [strToU8('<a/>'), { extra: { 1: new Uint8Array(16), 16706: own } }] }));
    const old = open(zip.bytes()).raw('a.xml');
    zip.write('a.xml', strToU8('<b/>'));
    const raw = zip.raw('a.xml');
    const extra = (bytes: Uint8Array) => [...bytes.slice(30 + 'a.xml'.length, 30 + 'a.xml'.length + bytes[28]!)];
    expect(extra(old).length).toBe(4 + 16 + 4 + 2);
    expect(extra(raw)).toEqual([0x42, 0x41, 2, 0, 9, 9]);
    expect(unzipSync(zip.bytes())['a.xml']).toEqual(strToU8('<b/>'));
  });

  test('removing and adding', () => {
    const zip = open(three());
    zip.remove('b.xml');
    zip.write('new.xml', strToU8('<n/>'));
    expect(open(zip.bytes()).names()).toEqual(['a.bin', 'c/d.xml', 'new.xml']);
    expect(Object.keys(unzipSync(zip.bytes()))).toEqual(['a.bin', 'c/d.xml', 'new.xml']);
    expect(open(zip.bytes()).read('new.xml')).toEqual(strToU8('<n/>'));
  });
});

describe('refused in one line', () => {
  const damaged = 'book.xlsx is incomplete or damaged. Fetch it again, or open it in a spreadsheet and save it anew';
  const central = (n: number) => record(three(), 1, 2, n);
  const end = () => record(three(), 5, 6);

  test.each<[string, () => Uint8Array, string]>([
    ['no zip', () => strToU8('specimen,length\n1,2'), 'book.xlsx is not a .xlsx or .xlsm workbook'],
    ['nothing at all', () => new Uint8Array(0), 'book.xlsx is not a .xlsx or .xlsm workbook'],
    [
      'the old container',
      () => Uint8Array.from([0xd0, 0xcf, 0x11, 0xe0, ...new Uint8Array(600)]),
      'book.xlsx is encrypted or an old .xls. Save it as .xlsx without a password',
    ],
    ['cut short', () => three().slice(0, -30), damaged],
    ['cut in half', () => three().slice(0, 100), damaged],
    ['encrypted entry', () => with_(three(), central(0) + 8, 1), 'book.xlsx is encrypted. Save it without a password'],
    ['directory points at nothing', () => with_(three(), central(1) + 42, 255, 255), damaged],
    ['two entries share their bytes', () => with_(three(), central(1) + 42, 0, 0), damaged],
    ['packed size beyond the entry', () => with_(three(), central(0) + 20, 0xff, 0x0f), damaged],
    ['another name in the entry itself', () => with_(three(), record(three(), 3, 4) + 30, 0x7a), damaged],
    [
      'zip64',
      () => with_(three(), end() + 16, 255, 255, 255, 255),
      'book.xlsx is packed in the large-file form of zip (zip64), which is not read here. Save it anew from a spreadsheet',
    ],
    ['several disks', () => with_(three(), end() + 4, 1), damaged],
    [
      'a name twice, in two spellings',
      () => zipSync({ 'a.xml': strToU8('1'), 'A.xml': strToU8('2') }),
      'book.xlsx holds two parts called A.xml, so it is unclear which one counts',
    ],
    [
      'a name with a line end and of any length',
      () => zipSync({ [`a\n${'b'.repeat(400)}`]: strToU8('1'), [`A\n${'b'.repeat(400)}`]: strToU8('2') }),
      `book.xlsx holds two parts called A ${'b'.repeat(250 - 'holds two parts called A '.length - 1)}…`,
    ],
    ...['../a.xml', 'x/../../a.xml', '/a.xml', 'x\\a.xml', 'C:a.xml', './a.xml'].map(
      (name): [string, () => Uint8Array, string] => [
        `name ${name}`,
        () => zipSync({ [name]: strToU8('1') }),
        'book.xlsx holds a part whose name points outside of the workbook',
      ],
    ),
    [
      'far more packed than any workbook',
      () => zipSync({ 'a.xml': new Uint8Array(20_000_000) }),
      'book.xlsx is packed more than 400 times, which no workbook is',
    ],
    [
      'more than 1 GB stated',
      () => {
        let bytes: Uint8Array = zipSync(
          Object.fromEntries(Array.from({ length: 100 }, (_, i) => [`${i}.xml`, new Uint8Array(20_000)])),
        );
        for (let i = 0; i < 100; i++) bytes = with_(bytes, record(bytes, 1, 2, i) + 24, 0, 0, 0xf0, 0);
        return bytes;
      },
      'book.xlsx unpacks to more than 1 GB, the most that is read here',
    ],
    [
      'larger than 100 MB',
      () => new Uint8Array(100_000_001),
      'book.xlsx is larger than 100 MB, the most that is read here',
    ],
  ])('%s', (_, bytes, line) => {
    expect(refusal(() => open(bytes()))).toBe(line);
  });

  test.each<[string, (bytes: Uint8Array) => Uint8Array]>([
    ['holds more than stated', (bytes) => with_(bytes, record(bytes, 1, 2) + 24, 10)],
    ['holds less than stated', (bytes) => with_(bytes, record(bytes, 1, 2) + 24, 250)],
    ['check sum differs', (bytes) => with_(bytes, record(bytes, 1, 2) + 16, 1, 2)],
    ['packed bytes are broken', (bytes) => with_(bytes, 35, 0xff, 0xff, 0xff)],
    ['packed in an unknown way', (bytes) => with_(bytes, record(bytes, 1, 2) + 10, 12)],
  ])('at the first look into it: %s', (_, change) => {
    const zip = open(change(three()));
    expect(refusal(() => zip.read('b.xml'))).toBe(damaged);
    expect(zip.read('a.bin')).toEqual(Uint8Array.of(1, 2, 3, 4));
  });
});
