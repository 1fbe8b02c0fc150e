import { strFromU8, unzipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import type { CellUpdate } from '../../src/workbook/types.ts';
import { Workbook } from '../../src/workbook/workbook.ts';
import { book, bookParts, MAIN, OFFICE, PACKAGE, refusal, zipParts } from './make-book.ts';

interface Patched {
  readonly rows: string;
  readonly changed: string[];
  readonly parts: Record<string, string>;
}

/** Patches a sheet and answers what then stands inside its worksheet element. */
function patchBook(bytes: Uint8Array, updates: Record<string, CellUpdate>): Patched {
  const workbook = Workbook.read(bytes, 'book.xlsx');
  const changed = workbook.patch('Sheet', new Map(Object.entries(updates)));
  const parts = Object.fromEntries(
    Object.entries(unzipSync(workbook.bytes())).map(([name, part]) => [name, strFromU8(part)]),
  );
  const inside = /^<\?xml[^>]*>\n<[^>]*>(.*)<\/[^>]*>$/s.exec(parts['xl/worksheets/sheet1.xml']!)![1]!;
  return { rows: /^<sheetData>(.*)<\/sheetData>$/s.exec(inside)?.[1] ?? inside, changed, parts };
}
const patch = (rows: string, updates: Record<string, CellUpdate>) => patchBook(book(rows), updates);

describe('values', () => {
  test.each<[string, CellUpdate['value'], string]>([
    ['a number', 0.1, '<c r="A1" s="4"><v>0.1</v></c>'],
    ['the longest number', 0.1 + 0.2, '<c r="A1" s="4"><v>0.30000000000000004</v></c>'],
    ['a tiny number', 5e-324, '<c r="A1" s="4"><v>5e-324</v></c>'],
    ['a huge number', 1.7976931348623157e308, '<c r="A1" s="4"><v>1.7976931348623157e+308</v></c>'],
    ['zero below', -0, '<c r="A1" s="4"><v>0</v></c>'],
    ['no number', Number.NaN, '<c r="A1" s="4" t="e"><v>#NUM!</v></c>'],
    ['a text', 'a < b', '<c r="A1" s="4" t="inlineStr"><is><t>a &lt; b</t></is></c>'],
    ['a text with spaces', ' a', '<c r="A1" s="4" t="inlineStr"><is><t xml:space="preserve"> a</t></is></c>'],
    ['a bell', '\x07', '<c r="A1" s="4" t="inlineStr"><is><t>_x0007_</t></is></c>'],
    ['true', true, '<c r="A1" s="4" t="b"><v>1</v></c>'],
    ['an error', { error: '#N/A' }, '<c r="A1" s="4" t="e"><v>#N/A</v></c>'],
    ['an error newer than the format', { error: '#SPILL!' }, '<c r="A1" s="4" t="e"><v>#VALUE!</v></c>'],
    ['nothing', null, '<c r="A1" s="4"/>'],
  ])('%s', (_, value, cell) => {
    const result = patch('<row r="1"><c r="A1" s="4" t="s"><v>0</v></c><c r="B1"><v>1</v></c></row>', {
      A1: { value },
    });
    expect(result.rows).toBe(`<row r="1">${cell}<c r="B1"><v>1</v></c></row>`);
    expect(result.changed).toEqual(['A1']);
  });

  test('a formula keeps its element; its text is a result', () => {
    const formula = '<f  aca="false" >A2 &amp; "x"</f >';
    const result = patch(
      `<row r="1"><c s='4' r = "A1" ph="1">${formula}<v>1</v><extLst><ext uri="u"/></extLst></c></row>`,
      { A1: { value: ' a' } },
    );
    expect(result.rows).toBe(
      `<row r="1"><c s='4' r = "A1" ph="1" t="str">${formula}<v> a</v><extLst><ext uri="u"/></extLst></c></row>`,
    );
  });

  test('what the file says already changes nothing', () => {
    const rows =
      '<row r="1"><c r="A1"><v>1.50</v></c><c r="B1" t="s"><v>0</v></c><c r="C1" t="e" vm="1"><f>A1</f><v>#VALUE!</v></c><c r="D1"/><c r="E1" t="str"><f>"a"</f><v/></c></row>';
    const bytes = book(rows);
    const workbook = Workbook.read(bytes);
    const same = {
      A1: { value: 1.5 },
      B1: { value: 'shared' },
      C1: { value: { error: '#CALC!' }, formula: 'A1' },
      D1: { value: null },
      E1: { value: '' },
      F9: { value: null },
      G1: { value: null, formula: null },
    };
    expect(workbook.patch('Sheet', new Map(Object.entries(same)))).toEqual([]);
    expect(workbook.bytes()).toBe(bytes);
  });

  test('the note on an old value goes with it', () => {
    const result = patch('<row r="1"><c r="A1" t="e" vm="1"><f>A2</f><v>#VALUE!</v></c></row>', { A1: { value: 3 } });
    expect(result.rows).toBe('<row r="1"><c r="A1"><f>A2</f><v>3</v></c></row>');
  });

  test('addresses in small letters and with $', () => {
    expect(patch('<row r="1"><c r="A1"><v>1</v></c></row>', { $a$1: { value: 2 } }).changed).toEqual(['A1']);
  });
});

describe('new cells', () => {
  test('in the order of columns and rows, inside and around what is there', () => {
    const rows =
      '<row r="3" spans="2:4" x="1"><c r="B3"><v>1</v></c> <c r="D3"><v>2</v></c></row>\n<row r="5"/><row r="7"></row>';
    const value = 9;
    const result = patch(rows, {
      F3: { value },
      A3: { value },
      C3: { value },
      B5: { value },
      A5: { value },
      A7: { value },
      Z1: { value },
      A4: { value: 'typed' },
      B4: { value: 'spilled', spill: true },
      A9: { value },
      A8: { value },
    });
    expect(result.rows).toBe(
      [
        '<row r="1"><c r="Z1"><v>9</v></c></row>',
        '<row r="3" spans="2:4" x="1"><c r="A3"><v>9</v></c><c r="B3"><v>1</v></c> <c r="C3"><v>9</v></c><c r="D3"><v>2</v></c><c r="F3"><v>9</v></c></row>\n',
        '<row r="4"><c r="A4" t="inlineStr"><is><t>typed</t></is></c><c r="B4" t="str"><v>spilled</v></c></row>',
        '<row r="5"><c r="A5"><v>9</v></c><c r="B5"><v>9</v></c></row>',
        '<row r="7"><c r="A7"><v>9</v></c></row>',
        '<row r="8"><c r="A8"><v>9</v></c></row><row r="9"><c r="A9"><v>9</v></c></row>',
      ].join(''),
    );
    expect(result.changed).toEqual(['Z1', 'A3', 'C3', 'F3', 'A4', 'B4', 'A5', 'B5', 'A7', 'A8', 'A9']);
  });

  test('into a sheet without rows', () => {
    expect(patch('<dimension ref="A1"/><sheetData /><pageMargins/>', { B2: { value: 1 } }).rows).toBe(
      '<dimension ref="A1"/><sheetData><row r="2"><c r="B2"><v>1</v></c></row></sheetData><pageMargins/>',
    );
    expect(patch('<sheetData></sheetData>', { B2: { value: 1 } }).rows).toBe('<row r="2"><c r="B2"><v>1</v></c></row>');
  });

  test('take the style of their row, or else of their column', () => {
    const sheet =
      '<cols><col min="2" max="3" width="9" style="5"/></cols><sheetData><row r="1" s="7" customFormat="1"/><row r="2" s="7"/></sheetData>';
    expect(patch(sheet, { B1: { value: 1 }, C2: { value: 1 }, D2: { value: 1 }, B3: { value: 1 } }).rows).toBe(
      '<cols><col min="2" max="3" width="9" style="5"/></cols><sheetData><row r="1" s="7" customFormat="1"><c r="B1" s="7"><v>1</v></c></row><row r="2" s="7"><c r="C2" s="5"><v>1</v></c><c r="D2"><v>1</v></c></row><row r="3"><c r="B3" s="5"><v>1</v></c></row></sheetData>',
    );
  });

  test('take the prefix of the sheet', () => {
    const parts = bookParts('');
    const x = (rows: string) => `<?xml version="1.0"?>\n<x:worksheet xmlns:x="${MAIN}">${rows}</x:worksheet>`;
    parts['xl/worksheets/sheet1.xml'] = x(
      '<x:sheetData><x:row r="1"><x:c r="A1"><x:v>1</x:v></x:c></x:row></x:sheetData>',
    );
    const result = patchBook(zipParts(parts), {
      A1: { value: 'a' },
      B1: { value: 2, formula: '1+1' },
      A2: { value: true },
    });
    expect(result.rows).toBe(
      '<x:sheetData><x:row r="1"><x:c r="A1" t="inlineStr"><x:is><x:t>a</x:t></x:is></x:c><x:c r="B1"><x:f>1+1</x:f><x:v>2</x:v></x:c></x:row><x:row r="2"><x:c r="A2" t="b"><x:v>1</x:v></x:c></x:row></x:sheetData>',
    );
  });
});

describe('formulas', () => {
  const plain = '<row r="1"><c r="A1"><v>1</v></c><c r="B1" s="2"><f>A1</f><v>1</v></c></row>';

  test('added, replaced, removed', () => {
    expect(patch(plain, { A1: { value: 3, formula: '1<2' } }).rows).toContain('<c r="A1"><f>1&lt;2</f><v>3</v></c>');
    expect(patch(plain, { B1: { value: 'a', formula: '"a"' } }).rows).toContain(
      '<c r="B1" s="2" t="str"><f>"a"</f><v>a</v></c>',
    );
    expect(patch(plain, { B1: { value: 'a', formula: null } }).rows).toContain(
      '<c r="B1" s="2" t="inlineStr"><is><t>a</t></is></c>',
    );
    expect(patch(plain, { B1: { value: null, formula: null } }).rows).toContain('<c r="B1" s="2"/>');
  });

  test.each<[string, Record<string, CellUpdate>, boolean]>([
    ['a value alone', { B1: { value: 2 } }, true],
    ['the same formula', { B1: { value: 2, formula: 'A1' } }, true],
    ['a formula more', { A1: { value: 2, formula: '2' } }, false],
    ['a new cell with a formula', { C1: { value: 2, formula: '2' } }, false],
    ['a formula less', { B1: { value: 1, formula: null } }, false],
    ['another formula', { B1: { value: 1, formula: 'A1+0' } }, false],
  ])('the order of calculation after %s', (_, updates, stays) => {
    const { parts } = patch(plain, updates);
    const before = bookParts('');
    expect('xl/calcChain.xml' in parts).toBe(stays);
    expect(parts['[Content_Types].xml']).toBe(
      stays
        ? before['[Content_Types].xml']
        : before['[Content_Types].xml']!.replace(/<Override PartName="\/xl\/calcChain[^>]*>/, ''),
    );
    expect(parts['xl/_rels/workbook.xml.rels']).toBe(
      stays
        ? before['xl/_rels/workbook.xml.rels']
        : before['xl/_rels/workbook.xml.rels']!.replace(/<Relationship Id="rId3"[^>]*>/, ''),
    );
    expect(parts['xl/workbook.xml']).toBe(before['xl/workbook.xml']);
    expect(parts['xl/sharedStrings.xml']).toBe(before['xl/sharedStrings.xml']);
  });

  describe('shared', () => {
    const group =
      '<row r="1"><c r="B1"><f t="shared" ref="B1:B3" si="0">A1*2</f><v>2</v></c></row><row r="2"><c r="B2"><f t="shared" si="0"/><v>4</v></c></row><row r="3"><c r="B3"><f t="shared" si="0"></f><v>6</v></c></row>';

    test('a new value leaves them alone', () => {
      expect(patch(group, { B2: { value: 5 } }).rows).toBe(group.replace('<v>4</v>', '<v>5</v>'));
      expect(patch(group, { B2: { value: 5, formula: 'A2*2' } }).rows).toBe(group.replace('<v>4</v>', '<v>5</v>'));
    });

    test('a member with another formula leaves the group', () => {
      expect(patch(group, { B2: { value: 5, formula: '5' } }).rows).toBe(
        group.replace('<f t="shared" si="0"/><v>4</v>', '<f>5</f><v>5</v>'),
      );
    });

    test('when the first cell leaves, the next takes its place', () => {
      const result = patch(group, { B1: { value: 5, formula: null } });
      expect(result.rows).toBe(
        group
          .replace('<f t="shared" ref="B1:B3" si="0">A1*2</f><v>2</v>', '<v>5</v>')
          .replace('<f t="shared" si="0"/>', '<f t="shared" si="0" ref="B2:B3">A2*2</f>'),
      );
      expect(result.changed).toEqual(['B1', 'B2']);
      const both = patch(group, { B1: { value: 5, formula: '5' }, B2: { value: 6, formula: '6' }, B3: { value: 7 } });
      expect(both.rows).toContain('<c r="B3"><f t="shared" si="0" ref="B3">A3*2</f><v>7</v></c>');
    });

    test('read again, every formula is what it was', () => {
      const workbook = Workbook.read(book(group));
      workbook.patch('Sheet', new Map([['B1', { value: 5, formula: null }]]));
      const again = Workbook.read(workbook.bytes()).sheets[0]!;
      expect([...again.cells()].map(({ formula }) => formula?.text)).toEqual([undefined, 'A2*2', 'A3*2']);
    });
  });

  test('a what-if table stays', () => {
    const table = '<f t="dataTable" ref="A1:A2" dt2D="0" dtr="0" r1="B1"/>';
    expect(patch(`<row r="1"><c r="A1">${table}<v>1</v></c></row>`, { A1: { value: 2 } }).rows).toBe(
      `<row r="1"><c r="A1">${table}<v>2</v></c></row>`,
    );
  });
});

describe('spilling', () => {
  const spill =
    '<row r="1"><c r="A1" s="1" cm="3"><f ca="1" t="array" ref="A1:B2">PLAN(C1)</f><v>1</v></c><c r="B1"><v>2</v></c></row><row r="2"><c r="A2" s="2"><v>3</v></c><c r="B2" t="str"><v>4</v></c></row>';

  test('a larger answer: the area grows, its cells are filled', () => {
    const result = patch(spill, {
      A1: { value: 1, arrayRef: 'A1:B3' },
      A3: { value: 'five', spill: true },
      B3: { value: 6, spill: true },
    });
    expect(result.rows).toBe(
      `${spill.replace('ref="A1:B2"', 'ref="A1:B3"')}<row r="3"><c r="A3" t="str"><v>five</v></c><c r="B3"><v>6</v></c></row>`,
    );
    expect('xl/calcChain.xml' in result.parts).toBe(true);
  });

  test('a smaller answer: cells that it no longer fills are cleared', () => {
    const result = patch(spill, { A1: { value: 7, arrayRef: 'A1:B1' } });
    expect(result.rows).toBe(
      '<row r="1"><c r="A1" s="1" cm="3"><f ca="1" t="array" ref="A1:B1">PLAN(C1)</f><v>7</v></c><c r="B1"><v>2</v></c></row><row r="2"><c r="A2" s="2"/><c r="B2"/></row>',
    );
    expect(result.changed).toEqual(['A1', 'A2', 'B2']);
  });

  test('a cleared cell that gets a value, and one with its own formula', () => {
    const withOwn = spill.replace('<c r="B2" t="str"><v>4</v></c>', '<c r="B2"><f>9</f><v>9</v></c>');
    expect(patch(withOwn, { A1: { value: 7, arrayRef: 'A1' }, A2: { value: 8 } }).rows).toBe(
      '<row r="1"><c r="A1" s="1" cm="3"><f ca="1" t="array" ref="A1">PLAN(C1)</f><v>7</v></c><c r="B1"/></row><row r="2"><c r="A2" s="2"><v>8</v></c><c r="B2"><f>9</f><v>9</v></c></row>',
    );
  });

  test('the formula goes, and all it filled', () => {
    expect(patch(spill, { A1: { value: 7, formula: null } }).rows).toBe(
      '<row r="1"><c r="A1" s="1"><v>7</v></c><c r="B1"/></row><row r="2"><c r="A2" s="2"/><c r="B2"/></row>',
    );
  });

  test('the same formula with the same area keeps its mark', () => {
    expect(patch(spill, { A1: { value: 9, formula: 'PLAN(C1)', arrayRef: 'A1:B2' } }).rows).toBe(
      spill.replace('<v>1</v>', '<v>9</v>'),
    );
  });
});

describe('refused, and nothing is changed', () => {
  const bytes = zipParts(
    bookParts(
      '<sheetData><row r="1"><c r="A1" t="inlineStr"><is><t>Area</t></is></c><c r="B1"><v>1</v></c></row></sheetData>',
      {
        'xl/worksheets/_rels/sheet1.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/table" Target="/xl/tables/table1.xml"/></Relationships>`,
        'xl/tables/table1.xml': `<table xmlns="${MAIN}" name="Jackets" displayName="Jackets" ref="A1:A9"><tableColumns><tableColumn id="1" name="Area"/></tableColumns></table>`,
      },
    ),
  );

  test.each<[string, Record<string, CellUpdate>, string]>([
    ['no such sheet', {}, 'book.xlsx has no sheet called Other'],
    ['no such cell', { XFE1: { value: 1 } }, 'book.xlsx has no cell XFE1'],
    ['no such area', { A3: { value: 1, formula: '1', arrayRef: 'A3:' } }, 'book.xlsx has no cell A3:'],
    [
      'a heading of a table',
      { B1: { value: 2 }, C1: { value: 1, formula: 'PLAN(1)', arrayRef: 'C1' }, A1: { value: 'Surface' } },
      'book.xlsx keeps “Area” as a heading of its table Jackets. Change headings in a spreadsheet',
    ],
  ])('%s', (name, updates, line) => {
    const workbook = Workbook.read(bytes, 'book.xlsx');
    const sheet = name === 'no such sheet' ? 'Other' : 'Sheet';
    expect(refusal(() => workbook.patch(sheet, new Map(Object.entries(updates))))).toBe(line);
    expect(workbook.bytes()).toBe(bytes);
  });

  test('a heading that stays as it is, and cells beside the heading', () => {
    const workbook = Workbook.read(bytes);
    const updates = new Map<string, CellUpdate>([
      ['A1', { value: 'Area' }],
      ['A2', { value: 1 }],
      ['B1', { value: 2 }],
    ]);
    expect(workbook.patch('sheet', updates)).toEqual(['B1', 'A2']);
  });

  test.each(['<row r="2"/><row r="1"/>', '<row r="1"><c r="B1"/><c r="A1"/></row>'])('%s is not in order', (rows) => {
    const line =
      'book.xlsx has rows or cells that are not in order: xl/worksheets/sheet1.xml. Save it anew from a spreadsheet';
    expect(refusal(() => patch(rows, { A1: { value: 1 } }))).toBe(line);
  });
});
