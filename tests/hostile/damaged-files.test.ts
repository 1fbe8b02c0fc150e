/** Files that are damaged, or made to exhaust or mislead: each is refused or filled soon, with one clear line. */
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { deflateSync, strFromU8, strToU8, unzipSync, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { crc32 } from '../../src/workbook/crc32.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { WorkbookError } from '../../src/workbook/workbook-error.ts';
import { book, bookParts, MAIN, zipParts } from '../workbook/make-book.ts';
import { fillFile } from './fill-file.ts';
import { CODE_WORDS } from './judge.ts';
import { randomNumbers } from './random-numbers.ts';

const SEED = 20261125;

/** Longest time for one file [ms]. Two seconds on a free machine; others may use this one too. */
const LONGEST = 8000;

/** Most memory that this whole file of tests may take [KiB]: about twice what it took on the machine it was written on. */
const MOST_MEMORY = 1_500_000;

const FOLDER = join(import.meta.dirname, 'fixtures');
const fixture = (name: string): Uint8Array => new Uint8Array(readFileSync(join(FOLDER, name)));

/** One line for people, which names the file first. Parts of the file may be named in it. */
function isClear(line: string, name: string): boolean {
  const [, said] = line.split(name);
  const words = said?.replaceAll(
    /(?:xl|_rels|docProps|_xmlsignatures)\/\S+|\S+\.(?:xml|rels)\b|\[Content_Types\]/g,
    '',
  );
  return words !== undefined && !line.includes('\n') && !CODE_WORDS.test(words);
}

/** Reads everything in a file and changes it a little. Answers the line with which it was refused, if it was; anything else is thrown. */
function readAll(bytes: Uint8Array): string | undefined {
  try {
    const workbook = Workbook.read(bytes, 'book.xlsx');
    for (const sheet of workbook.sheets) {
      let count = 0;
      for (const cell of sheet.cells()) if (cell.style >= 0) count++;
      sheet.layout();
      const updates = new Map([
        ['B2', { value: 1 }],
        ['ZZ9', { value: 'new', formula: 'A1+1' }],
      ]);
      workbook.patch(sheet.name, updates);
      if (count < 0) throw new Error('no cells');
    }
    Workbook.read(workbook.bytes(), 'book.xlsx');
    return undefined;
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    return error.message;
  }
}

/** Reads one damaged file; says with what it was damaged where that goes wrong. */
function tryOne(bytes: Uint8Array, how: string): 'read' | 'refused' {
  const begin = performance.now();
  let line: string | undefined;
  try {
    line = readAll(bytes);
  } catch (error) {
    throw new Error(`${how}: ${(error as Error).stack}`);
  }
  if (performance.now() - begin > LONGEST) throw new Error(`${how}: took ${Math.round(performance.now() - begin)} ms`);
  if (line !== undefined && !isClear(line, 'book.xlsx')) throw new Error(`${how}: «${line}»`);
  return line === undefined ? 'read' : 'refused';
}

describe('damage', () => {
  const names = ['xlsxwriter-book.xlsx', 'openpyxl-book.xlsx', 'office-suite.xlsx', 'prefixed.xlsx'];

  test.each(names)('%s with bytes flipped in the packed file', (name) => {
    const bytes = fixture(name);
    const random = randomNumbers(SEED);
    const seen = { read: 0, refused: 0 };
    for (let i = 0; i < 600; i++) {
      const flipped = bytes.slice();
      const at: number[] = [];
      for (let k = 0; k < 1 + (i % 4); k++) {
        at.push(random(bytes.length));
        flipped[at.at(-1)!]! ^= 1 + random(255);
      }
      seen[tryOne(flipped, `seed ${SEED}, file ${i}, bytes ${at}`)]++;
    }
    expect(seen.refused).toBeGreaterThan(300);
  });

  test.each(names)('%s cut short at every 37th byte', (name) => {
    const bytes = fixture(name);
    for (let length = 0; length < bytes.length; length += 37)
      expect(tryOne(bytes.subarray(0, length), `cut to ${length}`)).toBe('refused');
  });

  /** Texts that stand in the way of what a reader expects. */
  const PIECES = [
    '',
    '<',
    '>',
    '"',
    '&',
    '&#x0;',
    '</c>',
    '<c>',
    '<row r="0">',
    ' r="A0"',
    '<!DOCTYPE x>',
    '<![CDATA[',
    '-1',
    '1e999',
    '\u0000',
  ];

  test.each(names)('%s with characters changed inside of its parts, packed again', (name) => {
    const parts = unzipSync(fixture(name));
    const texts = Object.keys(parts).filter((part) => /\.(xml|rels)$/.test(part));
    const random = randomNumbers(SEED + 1);
    const seen = { read: 0, refused: 0 };
    for (let i = 0; i < 500; i++) {
      const part = texts[random(texts.length)]!;
      const text = strFromU8(parts[part]!);
      const at = random(text.length);
      const piece = PIECES[random(PIECES.length)]!;
      const changed = text.slice(0, at) + piece + text.slice(at + random(6));
      const bytes = zipSync({ ...parts, [part]: strToU8(changed) }, { level: 0 });
      seen[tryOne(bytes, `seed ${SEED + 1}, file ${i}: ${part} at ${at}: «${piece}»`)]++;
    }
    expect(seen.read).toBeGreaterThan(50);
    expect(seen.refused).toBeGreaterThan(50);
  });

  test('fill on damaged formulas: filled or refused, never an exception', async () => {
    const parts = unzipSync(fixture('xlsxwriter-book.xlsx'));
    const sheet = 'xl/worksheets/sheet1.xml';
    const text = strFromU8(parts[sheet]!);
    const spans = [...text.matchAll(/<f[^>]*>([^<]+)<\/f>/g)].map(
      (found) => [found.index + found[0].indexOf('>') + 1, found[1]!.length] as const,
    );
    const random = randomNumbers(SEED + 2);
    const marks = [
      '(',
      ')',
      '{',
      '}',
      '"',
      "'",
      '!',
      ':',
      ',',
      ';',
      '#',
      '@',
      '[',
      ']',
      ' ',
      '-',
      '^',
      '%',
      'A1',
      'LET(',
      '1e9',
      '$',
      '_xlfn.',
    ];
    for (let round = 0; round < 25; round++) {
      // Every formula of the sheet gets a slip of its own.
      let changed = '';
      let from = 0;
      for (const [start, length] of spans) {
        const at = start + random(length + 1);
        changed += text.slice(from, at) + marks[random(marks.length)]!;
        from = at + random(2);
      }
      const bytes = zipSync({ ...parts, [sheet]: strToU8(changed + text.slice(from)) }, { level: 0 });
      const { status, error } = await fillFile(bytes);
      if (status !== 0) expect(isClear(error, 'book.xlsx'), `seed ${SEED + 2}, round ${round}: ${error}`).toBe(true);
    }
  });
});

/** A stored entry of a zip file by hand: local header, name, content; and its record in the directory. */
function entry(
  name: string,
  content: Uint8Array,
  at: number,
  said: { size?: number; packed?: number; method?: number; flags?: number; crc?: number } = {},
) {
  const nameBytes = strToU8(name);
  const make = (length: number, signature: number, shift: number): DataView => {
    const data = new DataView(new ArrayBuffer(length + nameBytes.length));
    data.setUint32(0, signature, true);
    data.setUint16(shift + 4, 20, true);
    data.setUint16(shift + 6, said.flags ?? 0, true);
    data.setUint16(shift + 8, said.method ?? 8, true);
    data.setUint32(shift + 14, said.crc ?? 0, true);
    data.setUint32(shift + 18, said.packed ?? content.length, true);
    data.setUint32(shift + 22, said.size ?? content.length, true);
    data.setUint16(shift + 26, nameBytes.length, true);
    new Uint8Array(data.buffer).set(nameBytes, length);
    return data;
  };
  const local = make(30, 0x04034b50, 0);
  const central = make(46, 0x02014b50, 2);
  central.setUint32(42, at, true);
  return {
    local: new Uint8Array([...new Uint8Array(local.buffer), ...content]),
    central: new Uint8Array(central.buffer),
  };
}

function zipByHand(
  entries: { name: string; content: Uint8Array; said?: Parameters<typeof entry>[3] }[],
  count = entries.length,
): Uint8Array {
  const pieces: Uint8Array[] = [];
  const directory: Uint8Array[] = [];
  let at = 0;
  for (const { name, content, said } of entries) {
    const { local, central } = entry(name, content, at, said);
    pieces.push(local);
    directory.push(central);
    at += local.length;
  }
  const end = new DataView(new ArrayBuffer(22));
  end.setUint32(0, 0x06054b50, true);
  end.setUint16(8, count, true);
  end.setUint16(10, count, true);
  end.setUint32(
    12,
    directory.reduce((sum, record) => sum + record.length, 0),
    true,
  );
  end.setUint32(16, at, true);
  return Buffer.concat([...pieces, ...directory, new Uint8Array(end.buffer)]);
}

/** A workbook one part of which holds these packed bytes, with what is said of them. */
const withPart = (part: string, content: Uint8Array, said: Parameters<typeof entry>[3]): Uint8Array =>
  zipByHand(
    Object.entries(bookParts('')).map(([name, text]) => {
      const bytes = strToU8(text);
      return name === part
        ? { name, content, said }
        : { name, content: deflateSync(bytes), said: { size: bytes.length, crc: crc32(bytes) } };
    }),
  );

const zeros = (length: number): Uint8Array => deflateSync(new Uint8Array(length), { level: 9 });
const cellsWith = (formula: string, more = ''): string => `<row r="1"><c r="A1"><f${more}>${formula}</f></c></row>`;
const named = (count: number, each: (i: number) => string): string =>
  Array.from({ length: count }, (_, i) => each(i)).join('');
const sheetOnly = (sheet: string) => zipParts({ ...bookParts(''), 'xl/worksheets/sheet1.xml': sheet });
const workbookWith = (more: string) =>
  book('', { 'xl/workbook.xml': bookParts('')['xl/workbook.xml']!.replace('</workbook>', `${more}</workbook>`) });

/** Each with the line that is said, or `filled`. */
const HOSTILE: readonly (readonly [what: string, make: () => Uint8Array, line: RegExp | 'filled'])[] = [
  ['nothing', () => new Uint8Array(0), /is not a \.xlsx or \.xlsm workbook$/],
  [
    'a bomb: 900 MB of zeros in one sheet',
    () => zipByHand([{ name: 'xl/worksheets/sheet1.xml', content: zeros(20_000_000), said: { size: 900_000_000 } }]),
    /is packed more than 400 times/,
  ],
  [
    'a bomb of many parts of 15 MB each',
    () => {
      const part = zeros(15_000_000);
      return zipByHand(
        Array.from({ length: 100 }, (_, i) => ({ name: `a${i}.xml`, content: part, said: { size: 15_000_000 } })),
      );
    },
    /unpacks to more than 1 GB/,
  ],
  [
    'a size that is stated too small',
    () => withPart('xl/worksheets/sheet1.xml', zeros(50_000_000), { size: 100 }),
    /is incomplete or damaged/,
  ],
  [
    'a size that is stated too large',
    () => withPart('xl/workbook.xml', zeros(10), { size: 15_000_000 }),
    /is incomplete or damaged/,
  ],
  [
    '65,535 entries',
    () => zipByHand(Array.from({ length: 65_000 }, (_, i) => ({ name: `x${i}`, content: new Uint8Array(0) }))),
    /holds more than 20000 parts/,
  ],
  [
    'more entries stated than there are',
    () => zipByHand([{ name: 'a', content: zeros(1), said: { size: 1 } }], 3),
    /is incomplete or damaged/,
  ],
  [
    'workbooks inside of a workbook',
    () => {
      let inner: Uint8Array = zipParts({ a: 'b' });
      for (let i = 0; i < 20; i++) inner = zipSync({ 'book.xlsx': inner });
      return inner;
    },
    /is not a \.xlsx or \.xlsm workbook$/,
  ],
  [
    'two parts of one name',
    () => zipByHand([1, 2].map(() => ({ name: 'xl/workbook.xml', content: zeros(10), said: { size: 10 } }))),
    /two parts called xl\/workbook\.xml/,
  ],
  [
    'two parts of one name in other letters',
    () =>
      zipByHand(
        ['xl/workbook.xml', 'XL/Workbook.xml'].map((name) => ({ name, content: zeros(10), said: { size: 10 } })),
      ),
    /two parts called/,
  ],
  [
    'a path out of the folder',
    () => zipByHand([{ name: '../../etc/passwd', content: zeros(10), said: { size: 10 } }]),
    /points outside/,
  ],
  [
    'an absolute path',
    () => zipByHand([{ name: '/etc/passwd', content: zeros(10), said: { size: 10 } }]),
    /points outside/,
  ],
  [
    'a path of the other kind',
    () => zipByHand([{ name: 'xl\\..\\..\\x', content: zeros(10), said: { size: 10 } }]),
    /points outside/,
  ],
  [
    'an encrypted part',
    () => zipByHand([{ name: 'a', content: zeros(10), said: { size: 10, flags: 1 } }]),
    /is encrypted/,
  ],
  [
    'a way of packing that nobody knows',
    () => withPart('xl/workbook.xml', zeros(10), { size: 10, method: 99 }),
    /damaged/,
  ],
  [
    'entities that stand for each other',
    () =>
      sheetOnly(
        `<!DOCTYPE w [<!ENTITY a "aaaaaaaaaa">${named(9, (i) => `<!ENTITY ${'bcdefghij'[i]} "${`&${'abcdefghi'[i]};`.repeat(10)}">`)}]><worksheet xmlns="${MAIN}"><sheetData>&j;</sheetData></worksheet>`,
      ),
    /sheet1\.xml cannot be read/,
  ],
  [
    'an entity that reads a file',
    () =>
      sheetOnly(
        `<!DOCTYPE w [<!ENTITY x SYSTEM "file:///etc/passwd">]><worksheet xmlns="${MAIN}"><sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>&x;</t></is></c></row></sheetData></worksheet>`,
      ),
    /sheet1\.xml cannot be read/,
  ],
  [
    '100,000 elements inside each other',
    () =>
      sheetOnly(`<worksheet xmlns="${MAIN}">${'<a>'.repeat(100_000)}${'</a>'.repeat(100_000)}<sheetData/></worksheet>`),
    /sheet1\.xml cannot be read/,
  ],
  [
    '100,000 elements inside each other, each with its own namespace',
    () =>
      sheetOnly(
        `<worksheet xmlns="${MAIN}">${named(900, (i) => `<a xmlns:n${i}="u">`)}${'</a>'.repeat(900)}<sheetData/></worksheet>`,
      ),
    'filled',
  ],
  [
    'two million attributes on one element',
    () =>
      sheetOnly(
        `<worksheet xmlns="${MAIN}"><sheetData><row r="1" ${named(2_000_000, (i) => `a${i}="" `)}><c r="A1"><f>1+1</f></c></row></sheetData></worksheet>`,
      ),
    /sheet1\.xml cannot be read/,
  ],
  [
    'a million attributes over cells',
    () => book(`<row r="1">${named(16_000, () => `<c ${named(60, (k) => `a${k}="" `)}/>`)}</row>`),
    'filled',
  ],
  [
    'a text of a million characters',
    () =>
      book(
        `<row r="1"><c r="A1" t="inlineStr"><is><t>${'x'.repeat(1_000_000)}</t></is></c><c r="B1"><f>A1&amp;"y"</f></c></row>`,
      ),
    'filled',
  ],
  [
    'a text of a million entities',
    () => book(`<row r="1"><c r="A1" t="inlineStr"><is><t>${'&amp;'.repeat(1_000_000)}</t></is></c></row>`),
    'filled',
  ],
  ['a formula of a million characters', () => book(cellsWith(`1${'+1'.repeat(500_000)}`)), 'filled'],
  ['a formula of 100,000 brackets', () => book(cellsWith(`${'('.repeat(50_000)}1${')'.repeat(50_000)}`)), 'filled'],
  [
    'a formula of 60 calls inside each other',
    () => book(cellsWith(`${'ABS('.repeat(60)}1${')'.repeat(60)}`)),
    'filled',
  ],
  [
    'a formula of 60 names inside each other',
    () => book(cellsWith(`${'LET(x,1,'.repeat(60)}x${')'.repeat(60)}`)),
    /^\S+book\.xlsx holds something that cannot be calculated here\. Nothing was written\.$/,
  ],
  [
    'a name of a million characters',
    () => workbookWith(`<definedNames><definedName name="${'n'.repeat(1_000_000)}">1</definedName></definedNames>`),
    'filled',
  ],
  [
    '20,000 names',
    () =>
      workbookWith(
        `<definedNames>${named(20_000, (i) => `<definedName name="n${i}">n${i + 1}+1</definedName>`)}</definedNames>`,
      ),
    'filled',
  ],
  [
    'names in a circle',
    () =>
      book(cellsWith('a+1'), {
        'xl/workbook.xml': bookParts('')['xl/workbook.xml']!.replace(
          '</workbook>',
          '<definedNames><definedName name="a">b</definedName><definedName name="b">a</definedName></definedNames></workbook>',
        ),
      }),
    'filled',
  ],
  [
    'a row beyond the last',
    () => book('<row r="1048577"><c r="A1048577"><v>1</v></c></row>'),
    /row 1048577 of its part xl\/worksheets\/sheet1\.xml cannot be read/,
  ],
  ['row numbers that are none', () => book('<row r="1e3"/><row r="-1"/>'), /row -1 of/],
  ['a row number of a million digits', () => book(`<row r="${'9'.repeat(1_000_000)}"/>`), /row 9{16}… of/],
  ['an address of a million letters', () => book(`<row r="1"><c r="${'A'.repeat(1_000_000)}1"/></row>`), /A{20}… of/],
  ['a cell in another row', () => book('<row r="1"><c r="A2"><v>1</v></c></row>'), /A2 of/],
  ['more columns than there are', () => book(`<row r="1">${'<c/>'.repeat(16_385)}</row>`), /XFE1 of/],
  [
    'two cells of one address',
    () => book(`<row r="1"><c r="A1"><f>1+1</f></c><c r="A1"><f>2+2</f></c></row>`),
    /not in order|filled/,
  ],
  [
    'rows in the wrong order',
    () => book(`<row r="9"><c r="A9"><f>1+1</f></c></row><row r="1"><c r="A1"><f>1+1</f></c></row>`),
    /not in order/,
  ],
  ['the last cell of a sheet', () => book('<row r="1048576"><c r="XFD1048576"><f>1+1</f></c></row>'), 'filled'],
  ['an area that is none', () => book(cellsWith('1+1', ' t="array" ref="ZZZZ9:B"')), 'filled'],
  ['an area over the whole sheet', () => book(cellsWith('1', ' t="array" ref="A1:XFD1048576"')), 'filled'],
  [
    'a dynamic array that filled the whole sheet',
    () => book('<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:XFD1048576">1+1</f></c></row>'),
    'filled',
  ],
  [
    'a shared formula without a first cell',
    () => book('<row r="1"><c r="A1"><f t="shared" si="7"/><v>3</v></c></row>'),
    'filled',
  ],
  [
    '20,000 shared formulas whose first cell comes last',
    () =>
      book(
        named(20_000, (i) => `<row r="${i + 1}"><c r="A${i + 1}"><f t="shared" si="0"/></c></row>`) +
          '<row r="20001"><c r="A20001"><f t="shared" si="0" ref="A1:A20001">B20001</f></c></row>',
      ),
    'filled',
  ],
  [
    '20,000 shared groups of one cell',
    () =>
      book(
        named(
          20_000,
          (i) => `<row r="${i + 1}"><c r="A${i + 1}"><f t="shared" si="${i}" ref="A${i + 1}">B${i + 1}</f></c></row>`,
        ),
      ),
    'filled',
  ],
  [
    'a shared formula of 8,000 characters over 20 cells',
    () =>
      book(
        named(
          20,
          (i) =>
            `<row r="${i + 1}"><c r="A${i + 1}"><f t="shared" si="0"${i ? '/>' : ` ref="A1:A20">${'B1+'.repeat(2600)}1</f>`}</c></row>`,
        ),
      ),
    'filled',
  ],
  [
    '1,000 tables that filled two cells each',
    () =>
      book(
        named(
          1_000,
          (i) =>
            `<row r="${i + 1}"><c r="A${i + 1}" cm="1"><f t="array" ref="A${i + 1}:B${i + 1}">{1,2}</f><v>0</v></c><c r="B${i + 1}"><v>0</v></c></row>`,
        ),
      ),
    'filled',
  ],
  [
    'a part whose name has a line end and a thousand letters',
    () => zipByHand([1, 2].map(() => ({ name: `xl/a\n${'b'.repeat(1000)}`, content: zeros(10), said: { size: 10 } }))),
    /two parts called xl\/a b+…$/,
  ],
  [
    'a chain of 20,000 cells',
    () => book(named(20_000, (i) => `<row r="${i + 1}"><c r="A${i + 1}"><f>A${i + 2}+1</f></c></row>`)),
    'filled',
  ],
  [
    'a circle of 5,000 cells',
    () => book(named(5000, (i) => `<row r="${i + 1}"><c r="A${i + 1}"><f>A${((i + 1) % 5000) + 1}+1</f></c></row>`)),
    'filled',
  ],
  [
    'a text doubled 60 times',
    () =>
      book(
        `<row r="1"><c r="A1" t="inlineStr"><is><t>x</t></is></c></row>${named(60, (i) => `<row r="${i + 2}"><c r="A${i + 2}"><f>A${i + 1}&amp;A${i + 1}</f></c></row>`)}`,
      ),
    'filled',
  ],
  ['a sum over all cells', () => book(cellsWith('SUM(B1:XFD1048576)')), 'filled'],
  [
    'tables of any size',
    () =>
      book(
        named(
          4,
          (i) =>
            `<row r="${i + 1}"><c r="A${i + 1}"><f>SUM(${['SEQUENCE(1048576,16384)', 'MUNIT(30000)', '_xlfn.EXPAND(1,1000000,1000)', 'MAKEARRAY(30000,30000,LAMBDA(a,b,1))'][i]})</f></c></row>`,
        ),
      ),
    'filled',
  ],
  [
    'a part that is not in UTF-8',
    () =>
      zipSync({
        ...Object.fromEntries(Object.entries(bookParts('<sheetData/>')).map(([name, text]) => [name, strToU8(text)])),
        'xl/workbook.xml': Uint8Array.of(0xff, 0xfe, 60, 0),
      }),
    /not in UTF-8/,
  ],
  [
    'relationships in a circle',
    () =>
      book('<sheetData/>', {
        'xl/_rels/workbook.xml.rels': bookParts('')['xl/_rels/workbook.xml.rels']!.replace(
          'worksheets/sheet1.xml',
          'workbook.xml',
        ),
      }),
    /cannot be read|filled/,
  ],
  [
    'a table that is no table',
    () =>
      book('<sheetData/>', {
        'xl/worksheets/_rels/sheet1.xml.rels':
          '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/table" Target="../workbook.xml"/></Relationships>',
      }),
    /cannot be read/,
  ],
];

describe('made to exhaust or mislead', () => {
  test.each(HOSTILE)('%s', async (_, make, line) => {
    const bytes = make();
    const begin = performance.now();
    const { status, error, after } = await fillFile(bytes);
    expect(performance.now() - begin).toBeLessThan(LONGEST);
    if (status === 0) {
      expect(line === 'filled' || line.source.includes('filled')).toBe(true);
      expect(error).toBe('');
      expect(after!.length).toBeGreaterThan(0);
    } else {
      expect(line, error.slice(0, 300)).not.toBe('filled');
      expect(error).toMatch(line);
      expect(error.length).toBeLessThan(400);
      expect(isClear(error, 'book.xlsx'), error).toBe(true);
    }
  });
});

test('all of that within bounded memory', () => {
  const { maxRSS } = process.resourceUsage();
  expect(maxRSS).toBeLessThan(MOST_MEMORY);
});
