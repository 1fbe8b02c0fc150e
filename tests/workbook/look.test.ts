import { strToU8, zipSync } from 'fflate';
import { describe, expect, test } from 'vitest';
import { readLook } from '../../src/workbook/look.ts';

const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
const RELS = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
const PACKAGE = 'http://schemas.openxmlformats.org/package/2006/relationships';

const relationships = (...targets: readonly (readonly [type: string, target: string])[]): string =>
  `<Relationships xmlns="${PACKAGE}">${targets
    .map(([type, target], i) => `<Relationship Id="rId${i + 1}" Type="${RELS}/${type}" Target="${target}"/>`)
    .join('')}</Relationships>`;

const STYLES = `<styleSheet xmlns="${MAIN}">
<numFmts count="1"><numFmt numFmtId="164" formatCode="0.0&quot; kg&quot;"/></numFmts>
<fonts count="2"><font><sz val="10"/><name val="Arial"/></font><font><b/><i val="0"/><u/><sz val="12"/><color rgb="FF8A4B2F"/><name val="Arial"/></font></fonts>
<fills count="3"><fill><patternFill patternType="none"/></fill><fill><patternFill patternType="gray125"/></fill><fill><patternFill patternType="solid"><fgColor rgb="FFFAF8F4"/><bgColor indexed="64"/></patternFill></fill></fills>
<borders count="2"><border><left/><right/><top/><bottom/></border><border><left/><right/><top style="thin"><color rgb="FFD8D2C7"/></top><bottom style="double"/></border></borders>
<cellXfs count="2"><xf numFmtId="0" fontId="0" fillId="0" borderId="0"/><xf numFmtId="164" fontId="1" fillId="2" borderId="1"><alignment horizontal="right" vertical="top" wrapText="1" indent="2" textRotation="120"/></xf></cellXfs>
<dxfs count="1"><dxf><font><color rgb="FF7A5200"/></font><fill><patternFill><bgColor rgb="FFFFF3D6"/></patternFill></fill></dxf></dxfs>
</styleSheet>`;

const SHEET = `<worksheet xmlns="${MAIN}" xmlns:r="${RELS}">
<sheetViews><sheetView workbookViewId="0" showGridLines="0"/></sheetViews><sheetFormatPr defaultRowHeight="18" defaultColWidth="12.5"/>
<cols><col min="2" max="3" width="20" style="1"/></cols><sheetData><row r="1"><c r="A1"><v>1</v></c></row></sheetData>
<conditionalFormatting sqref="A1:A9 C1"><cfRule type="cellIs" dxfId="0" priority="1" operator="greaterThan" stopIfTrue="1"><formula>25</formula></cfRule><cfRule type="colorScale" priority="2"><colorScale><cfvo type="min"/><cfvo type="num" val="5"/><color rgb="FFFFFFFF"/><color rgb="FF8A4B2F"/></colorScale></cfRule></conditionalFormatting>
<dataValidations count="1"><dataValidation type="list" allowBlank="1" showErrorMessage="1" error="Pick one" sqref="B4"><formula1>"felt,foam"</formula1></dataValidation></dataValidations>
<drawing r:id="rId1"/></worksheet>`;

const parts: Record<string, string> = {
  '[Content_Types].xml': '<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"/>',
  '_rels/.rels': relationships(['officeDocument', 'xl/workbook.xml']),
  'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${RELS}"><sheets><sheet name="S" sheetId="1" r:id="rId1"/></sheets></workbook>`,
  'xl/_rels/workbook.xml.rels': relationships(['worksheet', 'worksheets/sheet1.xml'], ['styles', 'styles.xml']),
  'xl/styles.xml': STYLES,
  'xl/worksheets/sheet1.xml': SHEET,
  'xl/worksheets/_rels/sheet1.xml.rels': relationships(
    ['drawing', '../drawings/drawing1.xml'],
    ['comments', '../comments1.xml'],
  ),
  'xl/drawings/drawing1.xml': '<d/>',
  'xl/drawings/_rels/drawing1.xml.rels': relationships(['chart', '../charts/chart1.xml'], ['image', '../media/a.png']),
  'xl/comments1.xml': '<c/>',
};

const look = readLook(zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)]))));

describe('styles', () => {
  test('the general one', () => {
    expect(look.styles.cells[0]).toEqual({
      font: { name: 'Arial', size: 10 },
      borders: {},
      numberFormat: 'General',
      alignment: {},
    });
  });

  test('one with everything', () => {
    expect(look.styles.cells[1]).toEqual({
      font: { name: 'Arial', size: 12, bold: true, italic: false, underline: true, colour: '#8A4B2F' },
      fill: '#FAF8F4',
      borders: { top: { style: 'thin', colour: '#D8D2C7' }, bottom: { style: 'double' } },
      numberFormat: '0.0" kg"',
      // 120 stands for 30 degrees downwards.
      alignment: { horizontal: 'right', vertical: 'top', wrap: true, indent: 2, rotation: -30 },
    });
  });

  test('what a conditional format lays over a cell: its fill is the back colour', () => {
    expect(look.styles.overlays).toEqual([{ font: { colour: '#7A5200' }, fill: '#FFF3D6' }]);
  });
});

describe('a sheet', () => {
  const sheet = look.sheets[0]!;

  test('lines, sizes and styles of columns', () => {
    expect(sheet).toMatchObject({ gridLines: false, rightToLeft: false, rowHeight: 18, columnWidth: 12.5 });
    expect(sheet.columnStyles).toEqual([{ first: 2, last: 3, style: 1 }]);
  });

  test('validations', () => {
    expect(sheet.validations).toEqual([
      {
        areas: ['B4'],
        type: 'list',
        operator: 'between',
        allowBlank: true,
        showsList: true,
        refusal: 'stop',
        message: 'Pick one',
        first: '"felt,foam"',
      },
    ]);
  });

  test('conditional formats', () => {
    expect(sheet.conditionalRules).toHaveLength(2);
    expect(sheet.conditionalRules[0]).toMatchObject({
      areas: ['A1:A9', 'C1'],
      type: 'cellIs',
      operator: 'greaterThan',
      formulas: ['25'],
      overlay: 0,
      stops: true,
    });
    expect(sheet.conditionalRules[1]).toMatchObject({
      type: 'colorScale',
      thresholds: [{ type: 'min' }, { type: 'num', value: '5' }],
      colours: ['#FFFFFF', '#8A4B2F'],
    });
  });

  test('what is kept and not drawn', () => {
    expect([...sheet.notDrawn].sort()).toEqual(['a chart', 'a picture', 'notes']);
  });
});
