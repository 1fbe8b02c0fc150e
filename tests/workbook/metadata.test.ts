import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { Workbook } from '../../src/workbook/workbook.ts';
import { bookParts, MAIN, OFFICE, PACKAGE, refusal, zipParts } from './make-book.ts';

const rows = '<sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>';
const type = (name: string) => `<metadataType name="${name}" minSupportedVersion="120000"/>`;

/** A workbook with a metadata part of its own. */
const withMetadata = (inside: string) =>
  bookParts(rows, {
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${OFFICE}/sheetMetadata" Target="metadata.xml"/></Relationships>`,
    'xl/metadata.xml': `<metadata xmlns="${MAIN}">${inside}</metadata>`,
  });

function spillInto(parts: Record<string, string>): Record<string, string> {
  const workbook = Workbook.read(zipParts(parts), 'book.xlsx');
  workbook.patch(
    'Sheet',
    new Map([
      ['A1', { value: 1, formula: 'PLAN(1)', arrayRef: 'A1:A2' }],
      ['A2', { value: 2, spill: true }],
      ['B1', { value: 2, formula: 'PLAN(2)', arrayRef: 'B1' }],
    ]),
  );
  return Object.fromEntries(Object.entries(unzipSync(workbook.bytes())).map(([name, part]) => [name, strFromU8(part)]));
}

/** Which type each cell block points to, by its place; and the names of the types. */
function readMetadata(xml: string) {
  const types: string[] = [];
  const blocks: string[] = [];
  const order: string[] = [];
  const counts: Record<string, string | undefined> = {};
  const parser = new SaxesParser({ xmlns: true });
  let depth = 0;
  let section = '';
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', (tag) => {
    depth++;
    if (depth === 2) {
      section = tag.local;
      order.push(tag.local);
      counts[tag.local] = tag.attributes.count?.value;
    }
    if (tag.local === 'metadataType') types.push(tag.attributes.name!.value);
    if (section === 'cellMetadata' && tag.local === 'rc') blocks.push(types[Number(tag.attributes.t!.value) - 1]!);
  });
  parser.on('closetag', () => {
    depth--;
  });
  parser.write(xml).close();
  return { types, blocks, order, counts };
}

test('a workbook without metadata gets the part, its type and its relationship', () => {
  const parts = spillInto(bookParts(rows));
  expect(parts['xl/worksheets/sheet1.xml']).toContain(
    '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A2">PLAN(1)</f><v>1</v></c><c r="B1" cm="1"><f t="array" ref="B1">PLAN(2)</f><v>2</v></c></row><row r="2"><c r="A2"><v>2</v></c></row>',
  );
  expect(readMetadata(parts['xl/metadata.xml']!)).toEqual({
    types: ['XLDAPR'],
    blocks: ['XLDAPR'],
    order: ['metadataTypes', 'futureMetadata', 'cellMetadata'],
    counts: { metadataTypes: '1', futureMetadata: '1', cellMetadata: '1' },
  });
  expect(parts['[Content_Types].xml']).toContain(
    '<Override PartName="/xl/metadata.xml" ContentType="application/vnd.openxmlformats-officedocument.spreadsheetml.sheetMetadata+xml"/></Types>',
  );
  // The relationship of the order of calculation, rId3, is gone; the new number is one that is free.
  expect(parts['xl/_rels/workbook.xml.rels']).toMatch(
    new RegExp(`<Relationship Id="rId4" Type="${OFFICE}/sheetMetadata" Target="/xl/metadata.xml"/></Relationships>$`),
  );
  expect(Object.keys(parts).at(-1)).toBe('xl/metadata.xml');
});

describe('a workbook with metadata', () => {
  test('an entry that is there is used, and the part keeps its bytes', () => {
    const before = withMetadata(
      `<metadataTypes count="2">${type('XLRICHVALUE')}${type('XLDAPR')}</metadataTypes><futureMetadata name="XLDAPR" count="1"><bk/></futureMetadata><cellMetadata count="2"><bk><rc t="1" v="0"/></bk><bk><rc t="2" v="0"/></bk></cellMetadata>`,
    );
    const parts = spillInto(before);
    expect(parts['xl/worksheets/sheet1.xml']).toContain('<c r="A1" cm="2">');
    expect(parts['xl/metadata.xml']).toBe(before['xl/metadata.xml']);
  });

  test('an entry is added beside others', () => {
    const parts = spillInto(
      withMetadata(
        `<metadataTypes count="1">${type('XLRICHVALUE')}</metadataTypes><futureMetadata name="XLRICHVALUE" count="1"><bk/></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata>`,
      ),
    );
    expect(parts['xl/worksheets/sheet1.xml']).toContain('<c r="A1" cm="2">');
    expect(readMetadata(parts['xl/metadata.xml']!)).toEqual({
      types: ['XLRICHVALUE', 'XLDAPR'],
      blocks: ['XLRICHVALUE', 'XLDAPR'],
      order: ['metadataTypes', 'futureMetadata', 'futureMetadata', 'cellMetadata', 'valueMetadata'],
      counts: { metadataTypes: '2', futureMetadata: '1', cellMetadata: '2', valueMetadata: '1' },
    });
  });

  test('cell metadata is added before what must follow it', () => {
    const parts = spillInto(
      withMetadata(
        `<metadataTypes count="1">${type('XLRICHVALUE')}</metadataTypes><valueMetadata count="1"><bk><rc t="1" v="0"/></bk></valueMetadata>`,
      ),
    );
    expect(parts['xl/worksheets/sheet1.xml']).toContain('<c r="A1" cm="1">');
    expect(readMetadata(parts['xl/metadata.xml']!)).toMatchObject({
      blocks: ['XLDAPR'],
      order: ['metadataTypes', 'futureMetadata', 'cellMetadata', 'valueMetadata'],
    });
  });

  test('a part that is none is refused', () => {
    expect(refusal(() => spillInto(withMetadata('')))).toBe(
      'book.xlsx is damaged: its part xl/metadata.xml cannot be read',
    );
  });
});
