import { readFileSync } from 'node:fs';
import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { BookCell } from '../../src/workbook/types.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { book, bookParts, MAIN, OFFICE, PACKAGE, refusal, zipParts } from './make-book.ts';

const fixture = (name: string) => new Uint8Array(readFileSync(new URL(`fixtures/${name}`, import.meta.url)));
const read = (bytes: Uint8Array) => Workbook.read(bytes, 'book.xlsx');
const cells = (rows: string, more?: Record<string, string>): BookCell[] => [
  ...read(book(rows, more)).sheets[0]!.cells(),
];
const values = (rows: string) => Object.fromEntries(cells(rows).map((cell) => [cell.address, cell.value]));

describe('values', () => {
  test('of every kind', () => {
    const inside = [
      '<c r="A1"><v>1.5</v></c><c r="B1" t="n"><v>1e-7</v></c><c r="C1" t="s"><v>0</v></c><c r="D1" t="s"><v>1</v></c>',
      '<c r="E1" t="b"><v>1</v></c><c r="F1" t="e"><v>#N/A</v></c><c r="G1" t="str"><f>"a"</f><v>a</v></c><c r="H1" s="2"/>',
      '<c r="I1" t="inlineStr"><is><r><t>in </t></r><r><t xml:space="preserve">place </t></r></is></c><c r="J1"><f>A1</f></c>',
      '<c r="K1" t="s"><v>2</v></c><c r="L1" t="str"><v>_x0007_</v></c><c r="M1" t="d"><v>2026-11-25</v></c><c r="N1" t="str"><v/></c>',
    ];
    expect(values(`<row r="1">${inside.join('')}</row>`)).toEqual({
      A1: 1.5,
      B1: 1e-7,
      C1: 'shared',
      D1: 'rich text',
      E1: true,
      F1: { error: '#N/A' },
      G1: 'a',
      H1: null,
      I1: 'in place ',
      J1: null,
      K1: 'tab\tand _x0041_',
      L1: '\x07',
      M1: 46351,
      N1: '',
    });
  });

  test('rows and cells without their numbers follow each other', () => {
    expect(
      values(
        '<row><c><v>1</v></c><c><v>2</v></c></row><row r="5"><c r="C5"><v>3</v></c><c><v>4</v></c></row><row><c><v>5</v></c></row>',
      ),
    ).toEqual({
      A1: 1,
      B1: 2,
      C5: 3,
      D5: 4,
      A6: 5,
    });
  });
});

describe('formulas', () => {
  test('kinds, areas, marks and styles', () => {
    const rows = `<row r="1"><c r="A1" s="3"><f>B1&amp;"&lt;"</f><v>0</v></c><c r="B1" cm="1"><f t="array" ref="B1:B2">_xldudf_JACKET_PLAN(A1)</f><v>1</v></c>
      <c r="C1"><f t="array" ref="C1">SUM(A1:A2*2)</f><v>1</v></c><c r="D1"><f t="dataTable" ref="D1:D3" dt2D="0" r1="A1"/><v>1</v></c></row>`;
    const found = cells(rows).map(({ address, formula, style }) => ({ address, formula, style }));
    expect(found).toEqual([
      { address: 'A1', formula: { text: 'B1&"<"', kind: 'normal', dynamic: false }, style: 3 },
      {
        address: 'B1',
        formula: { text: '_xldudf_JACKET_PLAN(A1)', kind: 'array', ref: 'B1:B2', dynamic: true },
        style: 0,
      },
      { address: 'C1', formula: { text: 'SUM(A1:A2*2)', kind: 'array', ref: 'C1', dynamic: false }, style: 0 },
      { address: 'D1', formula: { text: '', kind: 'dataTable', ref: 'D1:D3', dynamic: false }, style: 0 },
    ]);
  });

  test('members of a shared group carry their own text, also before the first cell', () => {
    const rows = `<row r="1"><c r="A1"><f t="shared" si="0"/></c><c r="B1"><f t="shared" ref="A1:B2" si="0">B$9+D1</f></c></row>
      <row r="2"><c r="A2"><f t="shared" si="0"/></c><c r="C2"><f t="shared" si="1"/></c></row>`;
    expect(cells(rows).map(({ formula }) => formula)).toEqual([
      { text: 'A$9+C1', kind: 'shared', si: '0', dynamic: false },
      { text: 'B$9+D1', kind: 'shared', ref: 'A1:B2', si: '0', dynamic: false },
      { text: 'A$9+C2', kind: 'shared', si: '0', dynamic: false },
      { text: '', kind: 'shared', si: '1', dynamic: false },
    ]);
  });

  test('one cell alone', () => {
    const sheet = read(
      book(
        '<row r="3"><c r="B3"><f t="shared" ref="B3:C3" si="0">A3</f></c><c r="C3"><f t="shared" si="0"/><v>7</v></c></row>',
      ),
    ).sheets[0]!;
    expect(sheet.cell('C3')?.formula?.text).toBe('B3');
    expect(sheet.cell('C3')?.value).toBe(7);
    expect(sheet.cell('D3')).toBeUndefined();
    expect(sheet.cell('C4')).toBeUndefined();
    expect(sheet.cell('nowhere')).toBeUndefined();
  });
});

describe('the book around the cells', () => {
  test('a file that another program saved, with our formulas', () => {
    const saved = read(fixture('office-suite.xlsx'));
    expect(saved.sheets.map(({ name, state }) => [name, state])).toEqual([
      ['Jackets', 'visible'],
      ['Cut list', 'visible'],
      ['Old', 'hidden'],
    ]);
    expect(saved.names).toEqual([
      { name: 'weights', text: 'Jackets!$E$2:$E$7', hidden: false },
      { name: 'places', text: 'Jackets!$J$2:$J$7', sheet: 'Jackets', hidden: false },
    ]);
    expect([saved.date1904, saved.macros, saved.tables]).toEqual([false, false, []]);
    const jackets = saved.sheet('JACKETS')!;
    expect(jackets.cell('G5')).toMatchObject({
      value: 2,
      formula: { text: '_xldudf_JACKET_SHELL_AREA(B5,C5,D5)', kind: 'shared' },
    });
    expect(jackets.cell('J6')?.value).toBe('Floor <left>');
    expect(saved.numberFormat(jackets.cell('I2')!.style)).toBe('0.0" kg"');
    expect(saved.numberFormat(0)).toBe('General');
    expect(saved.numberFormat(jackets.cell('F2')!.style)).toBe('0.00');
    expect(saved.sheet('Cut list')?.cell('A3')).toMatchObject({ value: 'edge strip' });
    expect(saved.sheet('cut')).toBeUndefined();
  });

  test('a file with prefixes, sizes behind the data and days from 1904', () => {
    const prefixed = read(fixture('prefixed.xlsx'));
    expect(prefixed.date1904).toBe(true);
    expect(prefixed.names).toEqual([{ name: 'layers', text: '4', hidden: false }]);
    const sheet = prefixed.sheet('Tusk & bone')!;
    expect([...sheet.cells()].slice(6, 12).map(({ value }) => value)).toEqual(['Tanner Beck tusk', 110, 24, 21, 1, 5]);
    expect(prefixed.numberFormat(sheet.cell('E2')!.style)).toBe('0.00" m²"');
    expect(sheet.cell('A7')?.formula).toEqual({
      text: '_xldudf_JACKET_CUT_LIST(B2,C2,D2,layers)',
      kind: 'array',
      ref: 'A7:B8',
      dynamic: true,
    });
  });

  test('tables, chart sheets, macros', () => {
    const parts = bookParts('<sheetData/><tableParts count="1"/>', {
      'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><workbookPr date1904="true"/><sheets><sheet name="Chart" sheetId="2" r:id="rId8"/><sheet name="Sheet" sheetId="1" state="veryHidden" r:id="rId1"/></sheets><definedNames><definedName name="near" localSheetId="1" hidden="1">Sheet!$A$1</definedName></definedNames></workbook>`,
      'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId8" Type="${OFFICE}/chartsheet" Target="chartsheets/sheet1.xml"/><Relationship Id="rId9" Type="http://schemas.microsoft.com/office/2006/relationships/vbaProject" Target="vbaProject.bin"/></Relationships>`,
      'xl/chartsheets/sheet1.xml': `<chartsheet xmlns="${MAIN}"/>`,
      'xl/vbaProject.bin': 'never run',
      'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/table" Target="../tables/table1.xml"/><Relationship Id="rId2" Type="${OFFICE}/hyperlink" Target="https://example.org/" TargetMode="External"/></Relationships>`,
      'xl/tables/table1.xml': `<table xmlns="${MAIN}" id="1" name="t" displayName="Jackets" ref="B2:C9" totalsRowCount="1"><tableColumns count="2"><tableColumn id="1" name="Area"/><tableColumn id="2" name="Two_x000a_lines"/></tableColumns></table>`,
    });
    const withTable = read(zipParts(parts));
    expect(withTable.sheets.map(({ name, state }) => [name, state])).toEqual([['Sheet', 'veryHidden']]);
    expect(withTable.names).toEqual([{ name: 'near', text: 'Sheet!$A$1', sheet: 'Sheet', hidden: true }]);
    expect(withTable.tables).toEqual([
      { name: 'Jackets', sheet: 'Sheet', ref: 'B2:C9', columns: ['Area', 'Two\nlines'], headerRows: 1, totalsRows: 1 },
    ]);
    expect([withTable.macros, withTable.date1904, withTable.signed]).toEqual([true, true, false]);
  });

  test('a digital signature', () => {
    const type = `${PACKAGE}/relationships/digital-signature/origin`;
    const parts = bookParts('<sheetData/>');
    const signature = `<Relationship Id="rId9" Type="${type}" Target="_xmlsignatures/origin.sigs"/></Relationships>`;
    const signed = parts['_rels/.rels']!.replace('</Relationships>', signature);
    expect(read(zipParts({ ...parts, '_rels/.rels': signed })).signed).toBe(true);
  });

  test('the strict edition', () => {
    const strict = Object.fromEntries(
      Object.entries(
        bookParts('<sheetData><row r="1"><c r="A1" t="d"><v>2026-11-25T12:00:00</v></c></row></sheetData>'),
      ).map(([name, text]) => [
        name,
        text
          .replaceAll(MAIN, 'http://purl.oclc.org/ooxml/spreadsheetml/main')
          .replaceAll(OFFICE, 'http://purl.oclc.org/ooxml/officeDocument/relationships'),
      ]),
    );
    const workbook = read(zipParts(strict));
    expect([...workbook.sheets[0]!.cells()].map(({ value }) => value)).toEqual([46351.5]);
  });
});

describe('refused in one line', () => {
  const with_ = (more: Record<string, string>) => zipParts(bookParts('<sheetData/>', more));
  test.each<[string, () => Uint8Array, string]>([
    ['a zip of something else', () => zipSync({ 'a.txt': strToU8('a') }), 'book.xlsx is not a .xlsx or .xlsm workbook'],
    [
      'a text document',
      () =>
        with_({
          'xl/workbook.xml': '<document xmlns="http://schemas.openxmlformats.org/wordprocessingml/2006/main"/>',
        }),
      'book.xlsx is not a .xlsx or .xlsm workbook',
    ],
    [
      'no workbook part',
      () => {
        const { 'xl/workbook.xml': _, ...rest } = bookParts('<sheetData/>');
        return zipParts(rest);
      },
      'book.xlsx is not a .xlsx or .xlsm workbook',
    ],
    [
      'a binary workbook',
      () =>
        with_({
          '_rels/.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.bin"/></Relationships>`,
          'xl/workbook.bin': 'x',
        }),
      'book.xlsx is a binary workbook (.xlsb). Save it as .xlsx',
    ],
    [
      'a document type',
      () => with_({ 'xl/workbook.xml': `<!DOCTYPE workbook [<!ENTITY a "b">]><workbook xmlns="${MAIN}"/>` }),
      'book.xlsx is damaged: its part xl/workbook.xml cannot be read',
    ],
    [
      'a sheet that is not there',
      () => {
        const { 'xl/worksheets/sheet1.xml': _, ...rest } = bookParts('<sheetData/>');
        return zipParts(rest);
      },
      'book.xlsx is damaged: its part xl/workbook.xml cannot be read',
    ],
  ])('%s', (_, bytes, line) => {
    expect(refusal(() => read(bytes()))).toBe(line);
  });

  test.each([
    ['<row r="1"><c r="A1"></row>', 'book.xlsx is damaged: its part xl/worksheets/sheet1.xml cannot be read'],
    ['<row r="1"><c r="A2"/></row>', 'book.xlsx is damaged: A2 of its part xl/worksheets/sheet1.xml cannot be read'],
    [
      '<row r="1"><c r="here"/></row>',
      'book.xlsx is damaged: here of its part xl/worksheets/sheet1.xml cannot be read',
    ],
    ['<row r="0"/>', 'book.xlsx is damaged: row 0 of its part xl/worksheets/sheet1.xml cannot be read'],
    [
      '<row r="1"><c r="A1"><v>&bone;</v></c></row>',
      'book.xlsx is damaged: its part xl/worksheets/sheet1.xml cannot be read',
    ],
  ])('a sheet with %s', (rows, line) => {
    expect(refusal(() => cells(rows))).toBe(line);
  });

  test('a part that is not in UTF-8', () => {
    const line =
      'book.xlsx has a part that is not in UTF-8: xl/worksheets/sheet1.xml. Open it in a spreadsheet and save it anew';
    const latin = bookParts('<sheetData/>');
    latin['xl/worksheets/sheet1.xml'] = `<?xml version="1.0" encoding="ISO-8859-1"?><worksheet xmlns="${MAIN}"/>`;
    expect(refusal(() => [...read(zipParts(latin)).sheets[0]!.cells()])).toBe(line);
    const raw = Object.fromEntries(
      Object.entries(bookParts('<sheetData/>')).map(([name, text]) => [name, strToU8(text)]),
    );
    raw['xl/worksheets/sheet1.xml'] = Uint8Array.of(0xff, 0xfe, 0x3c, 0x00);
    expect(refusal(() => [...read(zipSync(raw)).sheets[0]!.cells()])).toBe(line);
  });

  test('without a name, the line still reads well', () => {
    expect(refusal(() => Workbook.read(new Uint8Array(3)))).toBe('This file is not a .xlsx or .xlsm workbook');
  });
});

test('100,000 rows of 10 cells are read in a few seconds', () => {
  const rows = Array.from({ length: 100_000 }, (_, i) => {
    const row = Array.from(
      'ABCDEFGHIJ',
      (column) => `<c r="${column}${i + 1}" s="1"><f>A${i + 1}*2</f><v>${i / 7}</v></c>`,
    );
    return `<row r="${i + 1}">${row.join('')}</row>`;
  });
  const workbook = read(book(rows.join('')));
  const start = performance.now();
  let count = 0;
  let formulas = 0;
  for (const cell of workbook.sheets[0]!.cells()) {
    count++;
    if (cell.formula) formulas++;
  }
  expect([count, formulas]).toEqual([1_000_000, 1_000_000]);
  // Takes 2 to 3 s on two shared cores; ten times that would mean a search through the whole text for each cell.
  expect(performance.now() - start).toBeLessThan(25_000);
}, 60_000);
