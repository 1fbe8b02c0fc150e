/** Small workbooks for the tests, written by a library and by hand rather than by what is tested. */

import { strToU8, type Zippable, zipSync } from 'fflate';
import { WorkbookError } from '../../src/workbook/workbook-error.ts';

export const MAIN = 'http://schemas.openxmlformats.org/spreadsheetml/2006/main';
export const OFFICE = 'http://schemas.openxmlformats.org/officeDocument/2006/relationships';
export const PACKAGE = 'http://schemas.openxmlformats.org/package/2006';
const TYPE = 'application/vnd.openxmlformats-officedocument.spreadsheetml';

/** The parts of a workbook with one sheet called `Sheet`, as texts. `sheet` is what stands inside the worksheet element. */
export function bookParts(sheet: string, more: Readonly<Record<string, string>> = {}): Record<string, string> {
  return {
    '[Content_Types].xml': `<Types xmlns="${PACKAGE}/content-types"><Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/><Default Extension="xml" ContentType="application/xml"/><Override PartName="/xl/workbook.xml" ContentType="${TYPE}.sheet.main+xml"/><Override PartName="/xl/calcChain.xml" ContentType="${TYPE}.calcChain+xml"/></Types>`,
    '_rels/.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/officeDocument" Target="xl/workbook.xml"/></Relationships>`,
    'xl/workbook.xml': `<workbook xmlns="${MAIN}" xmlns:r="${OFFICE}"><sheets><sheet name="Sheet" sheetId="1" r:id="rId1"/></sheets></workbook>`,
    'xl/_rels/workbook.xml.rels': `<Relationships xmlns="${PACKAGE}/relationships"><Relationship Id="rId1" Type="${OFFICE}/worksheet" Target="worksheets/sheet1.xml"/><Relationship Id="rId2" Type="${OFFICE}/sharedStrings" Target="sharedStrings.xml"/><Relationship Id="rId3" Type="${OFFICE}/calcChain" Target="calcChain.xml"/></Relationships>`,
    'xl/worksheets/sheet1.xml': `<?xml version="1.0" encoding="UTF-8"?>\n<worksheet xmlns="${MAIN}">${sheet}</worksheet>`,
    'xl/sharedStrings.xml': `<sst xmlns="${MAIN}"><si><t>shared</t></si><si><r><t>rich </t></r><r><rPr><b/></rPr><t>text</t></r><rPh sb="0" eb="1"><t>aid</t></rPh></si><si><t>tab_x0009_and _x005F_x0041_</t></si></sst>`,
    'xl/calcChain.xml': `<calcChain xmlns="${MAIN}"><c r="A1"/></calcChain>`,
    ...more,
  };
}

export const zipParts = (parts: Readonly<Record<string, string>>): Uint8Array =>
  zipSync(Object.fromEntries(Object.entries(parts).map(([name, text]) => [name, strToU8(text)])) as Zippable, {
    mtime: new Date(2026, 0, 2, 3, 4, 6),
    level: 1,
  });

/** A workbook whose sheet holds these rows. */
export const book = (rows: string, more: Readonly<Record<string, string>> = {}): Uint8Array =>
  zipParts(bookParts(rows.includes('sheetData') ? rows : `<sheetData>${rows}</sheetData>`, more));

/** The line with which something is refused. Fails when it is not refused, or not with a `WorkbookError` of one line. */
export function refusal(run: () => unknown): string {
  try {
    run();
  } catch (error) {
    if (!(error instanceof WorkbookError)) throw error;
    if (error.message.includes('\n')) throw new Error('more than one line');
    return error.message;
  }
  throw new Error('not refused');
}
