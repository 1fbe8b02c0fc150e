import { describe, expect, test } from 'vitest';
import { isType, Parts } from '../../src/workbook/parts.ts';
import { bookParts, OFFICE, PACKAGE, zipParts } from './make-book.ts';

const parts = (more: Record<string, string> = {}) => new Parts(zipParts(bookParts('<sheetData/>', more)), 'book.xlsx');
const relationships = (...entries: string[]) =>
  `<Relationships xmlns="${PACKAGE}/relationships">${entries.join('')}</Relationships>`;

describe('relationships', () => {
  test.each([
    ['table.xml', 'xl/worksheets/table.xml'],
    ['../tables/table1.xml', 'xl/tables/table1.xml'],
    ['./a/../b.xml', 'xl/worksheets/b.xml'],
    ['/xl/c.xml', 'xl/c.xml'],
    ['../../../../d.xml', 'd.xml'],
  ])('target %s', (target, path) => {
    const rels = relationships(`<Relationship Id="rId1" Type="${OFFICE}/table" Target="${target}"/>`);
    const [found] = parts({ 'xl/worksheets/_rels/sheet1.xml.rels': rels }).relationships('xl/worksheets/sheet1.xml');
    expect(found?.target).toBe(path);
    expect(found && isType(found, 'table')).toBe(true);
    expect(found && isType(found, 'able')).toBe(false);
  });

  test('outside of the file, and none at all', () => {
    const rels = relationships(
      `<Relationship Id="rId1" Type="${OFFICE}/hyperlink" Target="https://example.org/a" TargetMode="External"/>`,
    );
    expect(parts({ 'xl/_rels/a.xml.rels': rels }).relationships('xl/a.xml')[0]?.target).toBeUndefined();
    expect(parts().relationships('xl/sharedStrings.xml')).toEqual([]);
  });
});

test('parts added and removed; what lists them keeps the rest', () => {
  const spaced = relationships(`\n  <Relationship Id="rId2" Type="${OFFICE}/a" Target="a.xml"></Relationship>\n`);
  const book = parts({ 'xl/_rels/workbook.xml.rels': spaced, 'xl/a.xml': '<a/>' });
  const types = book.text('[Content_Types].xml');
  book.addPart('xl/workbook.xml', { path: 'xl/b.xml', text: '<b/>', type: `${OFFICE}/b`, content: 'type/b' });
  expect(book.text('xl/b.xml')).toBe('<b/>');
  expect(book.contentType('xl/B.xml')).toBe('type/b');
  expect(book.contentType('xl/c.xml')).toBe('application/xml');
  expect(book.relationships('xl/workbook.xml').map(({ id, target }) => [id, target])).toEqual([
    ['rId2', 'xl/a.xml'],
    ['rId3', 'xl/b.xml'],
  ]);
  book.removePart('xl/workbook.xml', book.relationships('xl/workbook.xml')[1]!);
  expect([book.has('xl/b.xml'), book.text('[Content_Types].xml'), book.text('xl/_rels/workbook.xml.rels')]).toEqual([
    false,
    types,
    spaced,
  ]);
});

test('into a list that closes itself', () => {
  const book = parts({ 'xl/_rels/workbook.xml.rels': `<p:Relationships xmlns:p="${PACKAGE}/relationships" />` });
  book.addPart('xl/workbook.xml', { path: 'xl/b.xml', text: '<b/>', type: 'u:b', content: 'type/b' });
  expect(book.text('xl/_rels/workbook.xml.rels')).toBe(
    `<p:Relationships xmlns:p="${PACKAGE}/relationships"><p:Relationship Id="rId1" Type="u:b" Target="/xl/b.xml"/></p:Relationships>`,
  );
});
